package org.nextpull.advice;

import java.util.Optional;
import org.nextpull.unit.Lambda;

/**
 * What the planner goes by.
 *
 * @param spark limits and steps of the spark
 * @param mixture limits and steps of the mixture, where it is swept too
 * @param ending when a day ends
 * @param looksAgain whether a lone knock flag is looked at again, as far as the operator allows it
 */
public record PlannerRules(Spark spark, Optional<Mixture> mixture, Ending ending, boolean looksAgain) {

    /**
     * How far a plan lets the spark go, degrees.
     *
     * @param leastDeg least advance in any cell
     * @param mostDeg most advance in any cell
     * @param largestStepDeg largest step toward advance beyond the furthest clean advance at a speed
     * @param resolutionDeg smallest step that can be set
     * @param knockMarginDeg distance that is kept from knock
     */
    public record Spark(
            double leastDeg, double mostDeg, double largestStepDeg, double resolutionDeg, double knockMarginDeg) {
        public Spark {
            if (!(leastDeg <= mostDeg) || !(largestStepDeg > 0) || !(resolutionDeg > 0) || !(knockMarginDeg >= 0)) {
                throw new IllegalArgumentException(
                        "spark from " + leastDeg + " to " + mostDeg + " deg by " + largestStepDeg);
            }
        }
    }

    /**
     * How far a plan lets the mixture go.
     *
     * @param richest least lambda
     * @param leanest greatest lambda
     * @param largestStep largest step toward lean beyond the leanest clean pull, in lambda
     * @param resolution smallest step that can be set, in lambda
     */
    public record Mixture(Lambda richest, Lambda leanest, double largestStep, double resolution) {
        public Mixture {
            if (richest.value() > leanest.value() || !(largestStep > 0) || !(resolution > 0)) {
                throw new IllegalArgumentException("mixture from " + richest + " to " + leanest + " by " + largestStep);
            }
        }
    }

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
    public record Ending(
            double expectedLeftPercent,
            double chanceOfMuch,
            double nearBestPercent,
            double noGainPercent,
            int leastPulls,
            int mostPulls) {
        private static final int LEAST_PULLS_AT_ONE_SPARK = 5;

        /** Chosen in simulation: a lower bar costs pulls, a higher one leaves more torque. */
        public static Ending usual(double nearBestPercent, int mostPulls) {
            return new Ending(0.11, 0.015, nearBestPercent, 0.02, 3, mostPulls);
        }

        /** A mixture alone moves torque by little, so it is not settled on three pulls. */
        Ending ofMixtureAlone() {
            return new Ending(
                    expectedLeftPercent,
                    chanceOfMuch,
                    nearBestPercent,
                    noGainPercent,
                    LEAST_PULLS_AT_ONE_SPARK,
                    mostPulls);
        }
    }
}
