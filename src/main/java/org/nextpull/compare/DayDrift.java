package org.nextpull.compare;

import java.util.List;
import org.nextpull.math.Series;
import org.nextpull.math.regression.Covariance;

/**
 * The drift of a day, which no label explains, as a sum of parts whose likely sizes are known beforehand as standard deviations (common
 * practice, no source): it goes straight, bows and wanders, and where the first pulls show it the engine warms up. What the pulls can
 * tell from the labels is read off them and costs next to nothing; what they cannot tell stays in the interval, and there with
 * {@link #ALLOWANCE}: at 1.6 times its likely size.
 */
final class DayDrift {
    /** Times the likely variance that an interval allows for. */
    static final double ALLOWANCE = 2.5;

    private static final double STRAIGHT_PERCENT = 0.05;
    private static final double BOW_PERCENT = 0.6;
    private static final double WALK_PERCENT = 0.05;
    /** What weather, fuel, tyres and the dyno itself move a level by from day to day. */
    private static final double DAY_PERCENT = 1.5;
    /** Any size: only a warm-up that shows is in the drift at all. */
    private static final double WARM_UP_PERCENT = 3;
    /** Pulls after which the warm-up has fallen to 37 %. */
    private static final double WARM_UP_PULLS = 3;

    private DayDrift() {}

    /**
     * Covariance of pulls in square percent of the level.
     *
     * @param orders places, counted on over several days
     * @param days day of each pull; a day stands at a level of its own
     * @param warmUp whether the first pulls show one
     */
    static Covariance squarePercent(Series orders, List<Integer> days, boolean warmUp) {
        double first = orders.min();
        List<Part> parts = warmUp
                ? List.of(straight(orders), bow(orders), warmUp(orders))
                : List.of(straight(orders), bow(orders));
        boolean isSeveral = days.stream().distinct().count() > 1;
        double[][] matrix = new double[orders.size()][orders.size()];
        for (int row = 0; row < matrix.length; row++) {
            for (int column = 0; column < matrix.length; column++) {
                double pulls = Math.min(orders.get(row), orders.get(column)) - first;
                matrix[row][column] = WALK_PERCENT * WALK_PERCENT * pulls;
                if (isSeveral && days.get(row).equals(days.get(column))) {
                    matrix[row][column] += DAY_PERCENT * DAY_PERCENT;
                }
                for (Part part : parts) {
                    matrix[row][column] += part.variance()
                            * part.column().get(row)
                            * part.column().get(column);
                }
            }
        }
        return Covariance.of(matrix);
    }

    /**
     * One part.
     *
     * @param column what each pull gets from it at a coefficient of 1 %; on average nothing
     * @param variance of the coefficient, in square percent
     */
    record Part(Series column, double variance) {}

    /** So much a pull. */
    static Part straight(Series orders) {
        return new Part(centred(orders), STRAIGHT_PERCENT * STRAIGHT_PERCENT);
    }

    /** So much in mid-day from the straight line between the first pull and the last. */
    private static Part bow(Series orders) {
        double first = orders.min();
        double span = orders.max() > first ? orders.max() - first : 1;
        return new Part(
                centred(orders.map(order -> 4 * (order - first) / span * (1 - (order - first) / span))),
                BOW_PERCENT * BOW_PERCENT);
    }

    /** So much at the first pull, dying out within some pulls. */
    static Part warmUp(Series orders) {
        double first = orders.min();
        return new Part(
                centred(orders.map(order -> Math.exp((first - order) / WARM_UP_PULLS))),
                WARM_UP_PERCENT * WARM_UP_PERCENT);
    }

    private static Series centred(Series column) {
        double mean = column.mean();
        return column.map(value -> value - mean);
    }
}
