package org.nextpull.fit;

/**
 * How far the best-torque map may lie from its guess, as standard deviations of four independent parts.
 *
 * @param levelDeg of the map as a whole, degrees
 * @param slopeDegPerKrpm of its slope, degrees per 1000 rpm
 * @param waveDeg of a smooth wave over speed, degrees
 * @param waveLengthKrpm distance over which the wave keeps its sign, 1000 rpm
 * @param nuggetDeg of each row for itself, degrees
 */
record MapSpread(double levelDeg, double slopeDegPerKrpm, double waveDeg, double waveLengthKrpm, double nuggetDeg) {
    private static final double NONE_DEG = 1e-3;

    /** An operator's guess, good to about 3 degrees as a whole and 12 degrees of rise over a band. */
    public static MapSpread ofGuess() {
        return new MapSpread(3, 1.7, 1.8, 1, 0.2);
    }

    /** What is left of doubt about the map of another fuel, or of another day. */
    public static MapSpread ofCarry() {
        return new MapSpread(4, 0.5, 0.8, 1, 0.2);
    }

    /** No doubt that could move anything. */
    static MapSpread none() {
        return new MapSpread(NONE_DEG, 0, 0, 1, NONE_DEG);
    }

    /** Covariance over the rows, row by row, with every part but the nugget scaled. */
    double[] covariance(SpeedRows rows, double scale) {
        int size = rows.size();
        double[] covariance = new double[size * size];
        for (int r = 0; r < size; r++) {
            for (int s = 0; s < size; s++) {
                double dr = rows.krpmFromMean(r);
                double ds = rows.krpmFromMean(s);
                double apart = (dr - ds) / waveLengthKrpm;
                double smooth = levelDeg * levelDeg
                        + slopeDegPerKrpm * slopeDegPerKrpm * dr * ds
                        + waveDeg * waveDeg * Math.exp(-apart * apart / 2);
                covariance[r * size + s] = scale * scale * smooth + (r == s ? nuggetDeg * nuggetDeg : 0);
            }
        }
        return covariance;
    }
}
