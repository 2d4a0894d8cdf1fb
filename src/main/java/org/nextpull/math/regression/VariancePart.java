package org.nextpull.math.regression;

import java.util.List;

/**
 * One of the independent parts that the variance of an estimate adds up from.
 *
 * @param variance the part, at least 0
 * @param degreesOfFreedom that it was estimated with, above 0
 */
public record VariancePart(double variance, double degreesOfFreedom) {
    /**
     * Accepts a part of 0, and infinite degrees of freedom.
     *
     * @throws IllegalArgumentException when the variance is negative or NaN, or the degrees of freedom are 0, negative or NaN
     */
    public VariancePart {
        if (!(variance >= 0) || !(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("not a variance part: " + variance + " on " + degreesOfFreedom);
        }
    }

    /**
     * Degrees of freedom of the sum (Satterthwaite, Biometrics 2, 1946). With no variance at all, those of the smallest part.
     *
     * @throws IllegalArgumentException when there are no parts
     */
    public static double satterthwaite(List<VariancePart> parts) {
        double total = 0;
        double spread = 0;
        for (VariancePart part : parts) {
            total += part.variance;
            spread += part.variance * part.variance / part.degreesOfFreedom;
        }
        if (spread > 0) {
            return total * total / spread;
        }
        return parts.stream()
                .mapToDouble(VariancePart::degreesOfFreedom)
                .min()
                .orElseThrow(() -> new IllegalArgumentException("no variance parts"));
    }
}
