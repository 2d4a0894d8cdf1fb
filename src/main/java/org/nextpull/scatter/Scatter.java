package org.nextpull.scatter;

import java.util.List;
import java.util.Optional;
import org.nextpull.math.Series;
import org.nextpull.math.StudentT;

/**
 * Standard deviation of the response from pull to pull, with what it rests on.
 *
 * @param percent one standard deviation, in percent of the level; not negative
 * @param degreesOfFreedom dimensionless, positive; need not be whole
 */
public record Scatter(double percent, double degreesOfFreedom) {
    private static final double PERCENT = 100;

    /**
     * Accepts a scatter of 0, as of figures rounded alike.
     *
     * @throws IllegalArgumentException when the scatter is negative or NaN, or the degrees of freedom are 0, negative or NaN
     */
    public Scatter {
        if (!(percent >= 0) || !(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "scatter " + percent + " % on " + degreesOfFreedom + " degrees of freedom");
        }
    }

    /**
     * The scatter of figures that are alike, by their standard deviation.
     *
     * @param figures in any one unit, above 0
     * @return empty for fewer than two
     */
    public static Optional<Scatter> of(List<Double> figures) {
        if (figures.size() < 2) {
            return Optional.empty();
        }
        Series series = Series.of(figures.stream().mapToDouble(one -> one));
        return Optional.of(new Scatter(PERCENT * Math.sqrt(series.variance()) / series.mean(), figures.size() - 1));
    }

    /**
     * Half the width of the interval of a difference of two means, in percent of the level: Student's t, textbook knowledge.
     *
     * @param share probability that the interval holds, such as 0.9
     * @param before pulls of the one mean, from 1
     * @param after pulls of the other, from 1
     */
    public double differencePercent(double share, int before, int after) {
        return StudentT.of(degreesOfFreedom).quantile((1 + share) / 2)
                * percent
                * Math.sqrt(1.0 / before + 1.0 / after);
    }
}
