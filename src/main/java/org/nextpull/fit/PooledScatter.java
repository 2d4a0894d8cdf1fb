package org.nextpull.fit;

/**
 * Pull-to-pull scatter known from repeats outside the sweep.
 *
 * @param percent standard deviation in percent of the level; positive
 * @param degreesOfFreedom degrees of freedom behind it; 0 when nothing is known
 */
public record PooledScatter(double percent, double degreesOfFreedom) {
    /**
     * Two identical readings say little: a rounded display repeats itself. Below this the scatter of repeats is not believed.
     */
    private static final double FLOOR_PERCENT = 0.05;

    public PooledScatter {
        if (!(percent > 0) || !(degreesOfFreedom >= 0)) {
            throw new IllegalArgumentException(percent + " % with " + degreesOfFreedom + " degrees of freedom");
        }
    }

    public static PooledScatter none() {
        return new PooledScatter(0.30, 0);
    }

    /** Scatter of repeats, kept off zero. */
    public static PooledScatter of(double percent, double degreesOfFreedom) {
        return new PooledScatter(Math.max(percent, FLOOR_PERCENT), degreesOfFreedom);
    }

    /** Log density of a node, up to a constant: the repeats as a scaled chi-square. */
    double logDensity(double nodePercent) {
        double ratio = percent / nodePercent;
        return -degreesOfFreedom * (Math.log(nodePercent) + ratio * ratio / 2);
    }
}
