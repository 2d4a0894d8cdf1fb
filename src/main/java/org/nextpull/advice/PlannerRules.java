package org.nextpull.advice;

/**
 * When a sweep is over and what a pull costs.
 *
 * @param pulls least and most pulls of a sweep
 * @param enough when the answer is good enough
 * @param pastPeak how far past the peak a pull may go
 * @param climb how far a pull may go beyond the most daring clean one where nothing foretells knock
 * @param prices what is set against the worth of a pull
 * @param nearBest share of the best permitted response that may be given away
 */
public record PlannerRules(Pulls pulls, Enough enough, PastPeak pastPeak, Climb climb, Prices prices, double nearBest) {

    /** Least pulls before a sweep can be settled, and most that it may take. */
    public record Pulls(int least, int most) {}

    /**
     * When the answer is good enough.
     *
     * @param decisionLoss greatest expected decision loss of the recommended setting, as a share
     * @param chanceOfBad greatest probability that it leaves over half a percent
     * @param halfWidth greatest half-width of the 90 % interval of the least setting
     * @param guardLoss greatest expected decision loss when any one pull is left out
     */
    public record Enough(double decisionLoss, Chance chanceOfBad, double halfWidth, Guard guardLoss) {}

    /**
     * How far past the peak a pull beyond the most daring clean one may go, in settings.
     *
     * @param likely with a chance of one half
     * @param unlikely with a chance of one in ten
     */
    public record PastPeak(double likely, double unlikely) {}

    /**
     * How far a pull may go beyond the most daring clean one. If it knocks, what lies between stays out of reach, since nothing says
     * where in between knock begins.
     *
     * @param rise most that a step may be expected to gain, as a share of the response
     * @param leastStep a step of this, in settings, is always allowed
     */
    public record Climb(double rise, double leastStep) {
        /** No limit beside the plan's own step. */
        public static Climb free() {
            return new Climb(1, 0);
        }
    }

    /** A probability, 0 to 1. */
    public record Chance(double value) {}

    /** A share of the response. */
    public record Guard(double share) {}

    /**
     * Prices, in shares of the response.
     *
     * @param pull of a pull
     * @param pullBelowKnock of a pull once knock was met
     * @param knock of knock that nothing foretold
     * @param knockMet of knock once it was met higher up
     */
    public record Prices(Pull pull, Pull pullBelowKnock, Knock knock, Knock knockMet) {
        /** Price of a pull. */
        public record Pull(double share) {}

        /** Price of hearing knock. */
        public record Knock(double share) {}

        static Prices usual() {
            return new Prices(new Pull(1e-5), new Pull(1e-4), new Knock(0.001), new Knock(0.003));
        }

        /** With a price on hearing knock again that no pull is worth: one that is heard ends the climb. */
        static Prices ofOneKnock() {
            return new Prices(new Pull(1e-5), new Pull(1e-4), new Knock(0.001), new Knock(0.05));
        }
    }

    /** Timing with a knock channel that tells levels, in degrees. */
    public static PlannerRules timing() {
        return new PlannerRules(
                new Pulls(4, 16),
                new Enough(0.001, new Chance(0.02), 1.8, new Guard(0.0025)),
                new PastPeak(3, 99),
                Climb.free(),
                Prices.usual(),
                0.002);
    }

    /**
     * Timing where knock is only heard or not heard, in degrees: less far past the peak, small steps while they gain much, and no second
     * climb once it was heard.
     */
    public static PlannerRules flaggedTiming() {
        PlannerRules graded = timing();
        return new PlannerRules(
                graded.pulls,
                graded.enough,
                new PastPeak(2.5, 99),
                new Climb(0.0075, 1.5),
                Prices.ofOneKnock(),
                graded.nearBest);
    }

    /** Mixture, in hundredths of lambda. */
    public static PlannerRules mixture() {
        return new PlannerRules(
                new Pulls(4, 16),
                new Enough(0.001, new Chance(0.02), 3, new Guard(0.004)),
                new PastPeak(4, 99),
                Climb.free(),
                Prices.usual(),
                0.001);
    }

    public PlannerRules withPastPeak(PastPeak newPastPeak) {
        return new PlannerRules(pulls, enough, newPastPeak, climb, prices, nearBest);
    }

    public PlannerRules withNearBest(double newNearBest) {
        return new PlannerRules(pulls, enough, pastPeak, climb, prices, newNearBest);
    }

    public PlannerRules withPulls(Pulls newPulls) {
        return new PlannerRules(newPulls, enough, pastPeak, climb, prices, nearBest);
    }

    public PlannerRules withClimb(Climb newClimb) {
        return new PlannerRules(pulls, enough, pastPeak, newClimb, prices, nearBest);
    }

    public PlannerRules withEnough(Enough newEnough) {
        return new PlannerRules(pulls, newEnough, pastPeak, climb, prices, nearBest);
    }
}
