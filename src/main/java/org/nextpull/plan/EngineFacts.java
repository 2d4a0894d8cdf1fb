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

    /** Two ways of writing one displacement, 1.998 or 2.0 litres, are nearer than this share. */
    private static final double SAME_SIZE = 0.02;

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

    /**
     * Whether this can only be another engine: another name, number of cylinders or way of breathing, or a displacement that differs by
     * over 2 %. What one of the two does not say tells nothing.
     */
    public boolean isOther(EngineFacts other) {
        boolean named = name.isPresent()
                && other.name.isPresent()
                && !name.get().strip().equalsIgnoreCase(other.name.get().strip());
        boolean built = cylinders.isPresent() && other.cylinders.isPresent() && !cylinders.equals(other.cylinders);
        boolean sized = displacementM3.isPresent()
                && other.displacementM3.isPresent()
                && Math.abs(displacementM3.getAsDouble() / other.displacementM3.getAsDouble() - 1) > SAME_SIZE;
        return named || built || sized || induction != other.induction;
    }

    public boolean isBoosted() {
        return induction == Induction.BOOSTED;
    }
}
