package org.nextpull.advice;

/**
 * Rounds a proposal to what the operator can set. Down is toward retard for spark advance and toward rich for lambda, so both factors
 * round the same way.
 */
final class Rounding {
    /** A value this close below a step counts as being on it, in steps. */
    private static final double ON_STEP = 1e-6;

    private Rounding() {}

    static double down(double value, double resolution) {
        return clean(Math.floor(value / resolution + ON_STEP) * resolution);
    }

    static double nearest(double value, double resolution) {
        return clean(Math.rint(value / resolution) * resolution);
    }

    /** Takes off the last bits that a multiplication leaves, so that 0.1 steps print as such. */
    private static double clean(double value) {
        return Math.rint(value * 1e9) / 1e9;
    }
}
