package org.nextpull.fit;

import java.util.Optional;
import org.nextpull.channel.SparkMap;

/**
 * What is thought of the best-torque map before the pulls.
 *
 * @param guess expected map
 * @param spread how far it may be off
 * @param carried doubt about its shape that stays from earlier pulls, where it was learned from them
 * @param wideShare weight of a second prior with the spread doubled, against 1 for the first; 0 for none. A coarse form of heavy tails
 */
public record MapPrior(SparkMap guess, Spread spread, Optional<CarriedShape> carried, double wideShare) {
    /** Scale of the second prior. */
    static final double WIDE_SCALE = 2;
    /** What held the intervals where a single prior was off. */
    public static final double USUAL_WIDE_SHARE = 0.2;

    public MapPrior {
        if (!(wideShare >= 0 && wideShare <= 1)) {
            throw new IllegalArgumentException("share of the wide prior " + wideShare);
        }
    }

    /** An operator's guess. */
    public static MapPrior ofGuess(SparkMap guess) {
        return new MapPrior(guess, Spread.ofGuess(), Optional.empty(), USUAL_WIDE_SHARE);
    }

    /** A spark that is not set: the best is counted from where it stands. */
    public static MapPrior standing(SparkMap stands) {
        return new MapPrior(stands, Spread.none(), Optional.empty(), 0);
    }

    double[] mean(SpeedRows rows) {
        return guess.degAt(rows.rpm());
    }

    double[] covariance(SpeedRows rows, double scale) {
        double[] covariance = spread.covariance(rows, scale);
        carried.ifPresent(shape -> {
            double[] added = shape.covariance(rows);
            for (int i = 0; i < added.length; i++) {
                covariance[i] += added[i];
            }
        });
        return covariance;
    }

    /**
     * How far the best-torque map may lie from its guess, as standard deviations of four independent parts.
     *
     * @param levelDeg of the map as a whole, degrees
     * @param slopeDegPerKrpm of its slope, degrees per 1000 rpm
     * @param waveDeg of a smooth wave over speed, degrees
     * @param waveLengthKrpm distance over which the wave keeps its sign, 1000 rpm
     * @param nuggetDeg of each row for itself, degrees
     */
    record Spread(double levelDeg, double slopeDegPerKrpm, double waveDeg, double waveLengthKrpm, double nuggetDeg) {
        private static final double NONE_DEG = 1e-3;

        /** An operator's guess, good to about 3 degrees as a whole and 12 degrees of rise over a band. */
        public static Spread ofGuess() {
            return new Spread(3, 1.7, 1.8, 1, 0.2);
        }

        /** What is left of doubt about the map of another fuel, or of another day. */
        public static Spread ofCarry() {
            return new Spread(4, 0.5, 0.8, 1, 0.2);
        }

        /** No doubt that could move anything. */
        static Spread none() {
            return new Spread(NONE_DEG, 0, 0, 1, NONE_DEG);
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
}
