package org.nextpull.fit;

/** How far below its peak a row may stand and yet lose no more than a given share against the best that a cap leaves it. */
final class NearBest {
    private static final double PER_TEN = 0.1;
    private static final double LEAST_SHARE = 0.3;
    private static final int STEPS = 40;
    private static final double FARTHEST_DEG = 30;

    private NearBest() {}

    /**
     * @param capped degrees that the cap lies below the peak; 0 where it does not
     * @param percent what may be lost against the best under the cap
     */
    static double degBelow(SolvedCell cell, int row, double capped, double percent) {
        double allowed = fall(cell, row, capped) + percent;
        double low = capped;
        double high = FARTHEST_DEG;
        for (int i = 0; i < STEPS; i++) {
            double middle = (low + high) / 2;
            if (fall(cell, row, middle) < allowed) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double fall(SolvedCell cell, int row, double below) {
        double near = Math.min(SurfaceTangent.FARTHEST_DEG, below);
        return cell.curvature[row] * below * below * Math.max(LEAST_SHARE, 1 + cell.asymmetry[row] * near * PER_TEN);
    }
}
