package org.nextpull.fit;

import java.util.List;
import org.nextpull.math.Normal;

/**
 * How a graded knock level grows with advance: its logarithm is a straight line in the setting, with a prior on the slope and a
 * known scatter. Readings at or below the sensor's floor say only that the level was there or lower.
 */
public final class KnockTrend {
    /** Growth of ln(level) a degree and how well it is known; from the bench study of the planner, no published source. */
    private static final Belief SLOPE = new Belief(0.35, 0.12);

    private static final double SCATTER = 0.28;

    private final double middle;
    private final Belief levelAtMiddle;
    private final Belief slope;

    private KnockTrend(double middle, Belief levelAtMiddle, Belief slope) {
        this.middle = middle;
        this.levelAtMiddle = levelAtMiddle;
        this.slope = slope;
    }

    /**
     * One graded reading.
     *
     * @param setting advance in degrees
     * @param lnLevel natural log of the level
     */
    public record Reading(double setting, double lnLevel) {}

    /**
     * Fits the readings, of which there must be one.
     *
     * @param lnFloor natural log of the level that the sensor shows without knock
     */
    public static KnockTrend of(List<Reading> readings, double lnFloor) {
        List<Reading> above =
                readings.stream().filter(reading -> reading.lnLevel() > lnFloor).toList();
        if (above.isEmpty()) {
            double highest =
                    readings.stream().mapToDouble(Reading::setting).max().orElseThrow();
            above = List.of(new Reading(highest, lnFloor));
        }
        double count = above.size();
        double middle = above.stream().mapToDouble(Reading::setting).sum() / count;
        double mean = above.stream().mapToDouble(Reading::lnLevel).sum() / count;
        double spread = 0;
        double product = 0;
        for (Reading reading : above) {
            double away = reading.setting() - middle;
            spread += away * away;
            product += away * (reading.lnLevel() - mean);
        }
        double variance = SCATTER * SCATTER;
        double priorPrecision = 1 / (SLOPE.sd() * SLOPE.sd());
        double precision = spread / variance + priorPrecision;
        Belief slope = new Belief(
                (product / variance + priorPrecision * SLOPE.centre()) / precision, 1 / Math.sqrt(precision));
        return new KnockTrend(middle, new Belief(mean, SCATTER / Math.sqrt(count)), slope);
    }

    /** Probability that the next reading at a setting exceeds the limit. */
    public double chanceAbove(double setting, double lnLimit) {
        double away = setting - middle;
        double mean = levelAtMiddle.centre() + slope.centre() * away;
        double spread = Math.sqrt(
                SCATTER * SCATTER + levelAtMiddle.sd() * levelAtMiddle.sd() + away * away * slope.sd() * slope.sd());
        return Normal.above((lnLimit - mean) / spread);
    }
}
