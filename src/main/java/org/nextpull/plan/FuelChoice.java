package org.nextpull.plan;

import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fuel.Blends;
import org.nextpull.fuel.Fuel;

/**
 * The fuel in the tank and the blends that the operator describes: tables {@code [fuel]} and {@code [[blend]]}.
 *
 * @param blend name of a listed blend or of one of {@code own}
 * @param own the plan's own blends; each may be mixed from listed ones and from those before it
 */
public record FuelChoice(Optional<String> blend, List<OwnBlend> own) {
    public FuelChoice {
        own = List.copyOf(own);
    }

    public static FuelChoice defaults() {
        return new FuelChoice(Optional.empty(), List.of());
    }

    /** The listed blends with the plan's own. A plan that was read without an error always has them. */
    public Outcome<Blends> blends() {
        Outcome<Blends> known = Outcome.of(Blends.listed());
        for (OwnBlend blend : own) {
            known = known.then(
                    blends -> blend.fuel(blends, Place.nowhere()).then(fuel -> blends.with(fuel, Place.nowhere())));
        }
        return known;
    }

    /** The fuel in the tank; empty when the plan names none. */
    public Optional<Outcome<Fuel>> inTank() {
        return blend.map(name -> blends().then(known -> known.find(name, Place.nowhere())));
    }
}
