package org.nextpull.compare;

import org.nextpull.math.Series;
import org.nextpull.math.regression.GroupedFit;

/** The matrix that takes weighted readings to their weighted residuals; it hangs on the order of the pulls and their weights. */
final class ResidualMaker {
    private ResidualMaker() {}

    static double[][] of(GroupedFit fit) {
        Series weights = fit.weights();
        int size = weights.size();
        double[][] maker = new double[size][size];
        for (int reading = 0; reading < size; reading++) {
            int one = reading;
            Series residuals =
                    fit.residuals(Series.generate(size, row -> row == one ? 1 / Math.sqrt(weights.get(row)) : 0));
            for (int row = 0; row < size; row++) {
                maker[row][reading] = residuals.get(row) * Math.sqrt(weights.get(row));
            }
        }
        return maker;
    }

    static double[][] apply(double[][] maker, double[][] readings) {
        double[][] residuals = new double[readings.length][readings[0].length];
        for (int row = 0; row < maker.length; row++) {
            for (int reading = 0; reading < readings.length; reading++) {
                for (int column = 0; column < readings[0].length; column++) {
                    residuals[row][column] += maker[row][reading] * readings[reading][column];
                }
            }
        }
        return residuals;
    }
}
