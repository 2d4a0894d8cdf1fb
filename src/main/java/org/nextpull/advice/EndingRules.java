package org.nextpull.advice;

/**
 * When a day ends.
 *
 * @param expectedLeftPercent expected torque left at which it is settled
 * @param chanceOfMuch and the chance that much more is left, at most
 * @param nearBestPercent what the map that stays in the engine may give away for less advance; 0 to leave the peak itself
 * @param noGainPercent expected gain of one more pull below which it is not worth it
 * @param leastPulls pulls before it may be settled
 * @param mostPulls pulls that the plan allows
 */
public record EndingRules(
        double expectedLeftPercent,
        double chanceOfMuch,
        double nearBestPercent,
        double noGainPercent,
        int leastPulls,
        int mostPulls) {
    private static final int LEAST_PULLS_AT_ONE_SPARK = 5;

    /** Chosen in simulation: a lower bar costs pulls, a higher one leaves more torque. */
    public static EndingRules usual(double nearBestPercent, int mostPulls) {
        return new EndingRules(0.11, 0.015, nearBestPercent, 0.02, 3, mostPulls);
    }

    /** A mixture alone moves torque by little, so it is not settled on three pulls. */
    EndingRules ofMixtureAlone() {
        return new EndingRules(
                expectedLeftPercent, chanceOfMuch, nearBestPercent, noGainPercent, LEAST_PULLS_AT_ONE_SPARK, mostPulls);
    }
}
