package org.nextpull.plan;

import java.util.List;
import java.util.Optional;

/**
 * The fuel in the tank and the blends that the operator describes: tables {@code [fuel]} and {@code [[blend]]}.
 *
 * @param blend name of a listed blend or of one of {@code own}
 * @param own the plan's own blends, names differing
 */
public record FuelChoice(Optional<String> blend, List<OwnBlend> own) {
    public FuelChoice {
        own = List.copyOf(own);
    }

    public static FuelChoice defaults() {
        return new FuelChoice(Optional.empty(), List.of());
    }

    /** The plan's own blend of that name. */
    public Optional<OwnBlend> own(String name) {
        return own.stream().filter(candidate -> candidate.name().equals(name)).findFirst();
    }
}
