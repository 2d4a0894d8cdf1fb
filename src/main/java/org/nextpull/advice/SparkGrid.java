package org.nextpull.advice;

import org.nextpull.channel.SparkMap;
import org.nextpull.unit.Advance;

/**
 * The values of advance that can be set.
 *
 * @param originDeg one of them
 * @param resolutionDeg distance between two
 */
record SparkGrid(double originDeg, double resolutionDeg) {
    /** A value this close to the next one counts as that, in steps. */
    private static final double ON_STEP = 1e-6;
    /** A measured value this near to one that can be set was set to it, in steps. */
    private static final double MEANT = 0.2;

    private static final double PER_DEG = 1e9;
    private static final double HUNDREDTHS = 100;

    /** The nearest that is not more advanced. */
    double down(double deg) {
        return at(Math.floor(steps(deg) + ON_STEP));
    }

    /** The nearest that is not more retarded. */
    double up(double deg) {
        return at(Math.ceil(steps(deg) - ON_STEP));
    }

    /** The nearest. */
    double near(double deg) {
        return at(Math.rint(steps(deg)));
    }

    /** What a measured value was meant to be: one that is all but one that can be set was set to that. */
    double meant(double deg) {
        double near = near(deg);
        return Math.abs(deg - near) <= MEANT * resolutionDeg ? near : deg;
    }

    SparkMap near(SparkMap map) {
        return new SparkMap(map.cells().stream()
                .map(cell -> new SparkMap.Cell(
                        cell.rpm(), Advance.ofDeg(near(cell.advance().deg()))))
                .toList());
    }

    /** Without what is too little to be set. */
    static double toHundredths(double deg) {
        return Math.rint(deg * HUNDREDTHS) / HUNDREDTHS;
    }

    private double steps(double deg) {
        return (deg - originDeg) / resolutionDeg;
    }

    /** Without the last bits that a multiplication leaves, so that steps of 0.1 print as such. */
    private double at(double steps) {
        return Math.rint((originDeg + steps * resolutionDeg) * PER_DEG) / PER_DEG;
    }
}
