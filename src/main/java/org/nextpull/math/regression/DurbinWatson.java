package org.nextpull.math.regression;

import org.nextpull.math.Series;

/** Whether residuals in time order follow their neighbours: near 2 they do not, near 0 they drift, near 4 they alternate. */
public final class DurbinWatson {
    private DurbinWatson() {}

    /**
     * The statistic of Durbin and Watson (Biometrika 37, 1950).
     *
     * @throws IllegalArgumentException with fewer than two residuals or with no scatter at all
     */
    public static double of(Series residuals) {
        double squares = residuals.map(value -> value * value).sum();
        if (residuals.size() < 2 || squares == 0) {
            throw new IllegalArgumentException("needs two residuals that are not all zero");
        }
        Series later = residuals.slice(1, residuals.size());
        return later.minus(residuals.slice(0, residuals.size() - 1))
                        .map(value -> value * value)
                        .sum()
                / squares;
    }
}
