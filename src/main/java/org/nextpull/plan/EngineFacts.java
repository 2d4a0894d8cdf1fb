package org.nextpull.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The engine, table {@code [engine]}.
 *
 * @param name what the operator calls it
 * @param displacementM3 swept volume of all cylinders in m3
 * @param cylinders number of cylinders
 * @param compressionRatio geometric compression ratio, above 1
 * @param induction whether a compressor fills it
 */
public record EngineFacts(
        Optional<String> name,
        OptionalDouble displacementM3,
        OptionalInt cylinders,
        OptionalDouble compressionRatio,
        Induction induction) {

    /** How the engine breathes. */
    public enum Induction {
        NATURAL,
        BOOSTED
    }

    public static EngineFacts defaults() {
        return new EngineFacts(
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                Induction.NATURAL);
    }

    public boolean isBoosted() {
        return induction == Induction.BOOSTED;
    }
}
