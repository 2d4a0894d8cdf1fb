package org.nextpull.compare;

import java.util.List;
import java.util.stream.IntStream;
import org.nextpull.math.Series;
import org.nextpull.math.regression.GroupedFit;
import org.nextpull.math.regression.ReadingErrors;

/** Standard errors of a difference at each row from the residuals of the rows, with a scatter for each label. */
final class RowErrors {
    private final List<Integer> labelOfPull;
    private final GroupedFit fit;
    private final Series influence;
    private final Series weights;
    private final List<ReadingErrors.VariancePart> scatters;
    private final double pooled;
    private final double shared;

    RowErrors(List<Integer> labelOfPull, DayFit day, Series contrast) {
        this.labelOfPull = labelOfPull;
        this.fit = day.fit();
        this.influence = day.fit().influence(contrast);
        this.weights = day.fit().weights();
        this.shared = Math.sqrt(day.fit().sharedVariance(contrast)) * day.toPercent();
        this.scatters = day.fit().scatters();
        this.pooled = day.fit().pooled().variance();
    }

    /** Standard deviation, in percent, that the drift of the day leaves in the difference at every row alike. */
    double shared() {
        return shared;
    }

    /** Scatter of a pull's label over that of all, 1 when there is none to tell. */
    double relativeScatter(int pull) {
        return pooled > 0 ? Math.sqrt(scatters.get(labelOfPull.get(pull)).variance() / pooled) : 1;
    }

    /** Degrees of freedom of the residuals of all pulls. */
    double freedom() {
        return IntStream.range(0, scatters.size())
                .mapToDouble(fit::freedomOfResiduals)
                .sum();
    }

    /** From weighted residuals, a line a pull and a column a row. */
    double[] of(double[][] residuals) {
        int rows = residuals[0].length;
        double[] variances = new double[rows];
        for (int label = 0; label < scatters.size(); label++) {
            double share = 0;
            for (int pull = 0; pull < residuals.length; pull++) {
                if (labelOfPull.get(pull) == label) {
                    share += influence.get(pull) * influence.get(pull) / weights.get(pull);
                }
            }
            double[] own = scatter(residuals, label);
            double mean = 0;
            for (double variance : own) {
                mean += variance / rows;
            }
            for (int row = 0; row < rows; row++) {
                variances[row] += share * (own[row] + mean) / 2;
            }
        }
        for (int row = 0; row < rows; row++) {
            variances[row] = Math.sqrt(variances[row] + shared * shared);
        }
        return variances;
    }

    /** The same with one scatter for all labels, which rests on all degrees of freedom. */
    double[] ofAlike(double[][] residuals) {
        int rows = residuals[0].length;
        double freedom = freedom();
        double share = 0;
        double[] own = new double[rows];
        double mean = 0;
        for (int pull = 0; pull < residuals.length; pull++) {
            share += influence.get(pull) * influence.get(pull) / weights.get(pull);
            for (int row = 0; row < rows; row++) {
                double square = residuals[pull][row] * residuals[pull][row] / freedom;
                own[row] += square;
                mean += square / rows;
            }
        }
        for (int row = 0; row < rows; row++) {
            own[row] = Math.sqrt(share * (own[row] + mean) / 2 + shared * shared);
        }
        return own;
    }

    private double[] scatter(double[][] residuals, int label) {
        double[] squares = new double[residuals[0].length];
        double freedom = fit.freedomOfResiduals(label);
        for (int pull = 0; pull < residuals.length; pull++) {
            if (labelOfPull.get(pull) == label) {
                for (int row = 0; row < squares.length; row++) {
                    squares[row] += residuals[pull][row] * residuals[pull][row] / freedom;
                }
            }
        }
        return squares;
    }

    /** Difference that noise alone makes at a row; the noise is weighted like the residuals. */
    double difference(double[][] noise, int row) {
        double sum = 0;
        for (int pull = 0; pull < noise.length; pull++) {
            sum += influence.get(pull) / Math.sqrt(weights.get(pull)) * noise[pull][row];
        }
        return sum;
    }
}
