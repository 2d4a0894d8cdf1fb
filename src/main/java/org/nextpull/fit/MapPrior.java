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
public record MapPrior(SparkMap guess, MapSpread spread, Optional<CarriedShape> carried, double wideShare) {
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
        return new MapPrior(guess, MapSpread.ofGuess(), Optional.empty(), USUAL_WIDE_SHARE);
    }

    /** A spark that is not set: the best is counted from where it stands. */
    public static MapPrior standing(SparkMap stands) {
        return new MapPrior(stands, MapSpread.none(), Optional.empty(), 0);
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
}
