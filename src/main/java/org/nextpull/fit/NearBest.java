package org.nextpull.fit;

/** The least advance of a row that loses no more on the mean fitted curve than a given share. */
final class NearBest {
    private static final double PER_TEN = 0.1;
    private static final double LEAST_SHARE = 0.3;
    private static final int HALVINGS = 30;
    private static final double FARTHEST_DEG = 30;

    private NearBest() {}

    /** A row, and hundredths of lambda from the guess. */
    record Place(int row, double hundredths) {}

    /**
     * The least advance, degrees.
     *
     * @param best best advance that the row may have, degrees
     * @param percent what may be lost against it
     */
    static double least(SurfacePosterior posterior, Place place, double best, double percent) {
        double allowed = fall(posterior, place, best) + percent;
        double low = best - FARTHEST_DEG;
        double high = best;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (fall(posterior, place, middle) > allowed) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static double fall(SurfacePosterior posterior, Place place, double deg) {
        return posterior.mean(cell -> {
            double x = deg - SparkMixture.peak(posterior.columns(), cell, place.row, place.hundredths);
            double near = Math.max(-SurfaceTangent.FARTHEST_DEG, Math.min(SurfaceTangent.FARTHEST_DEG, x));
            double share = Math.max(LEAST_SHARE, 1 - cell.asymmetry[place.row] * near * PER_TEN);
            return cell.curvature[place.row] * x * x * share;
        });
    }
}
