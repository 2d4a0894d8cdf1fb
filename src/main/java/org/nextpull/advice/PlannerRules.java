package org.nextpull.advice;

/**
 * When a sweep is over and what a pull costs.
 *
 * @param pulls least and most pulls of a sweep
 * @param enough when the answer is good enough
 * @param pastPeak how far past the peak a pull may go
 * @param prices what is set against the worth of a pull
 * @param nearBest share of the best permitted response that may be given away
 */
public record PlannerRules(Pulls pulls, Enough enough, PastPeak pastPeak, Prices prices, double nearBest) {

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
    }

    /** Timing, in degrees. */
    public static PlannerRules timing() {
        return new PlannerRules(
                new Pulls(4, 16),
                new Enough(0.001, new Chance(0.02), 1.8, new Guard(0.0025)),
                new PastPeak(3, 99),
                Prices.usual(),
                0.002);
    }

    /** Mixture, in hundredths of lambda. */
    public static PlannerRules mixture() {
        return new PlannerRules(
                new Pulls(4, 16),
                new Enough(0.001, new Chance(0.02), 3, new Guard(0.004)),
                new PastPeak(4, 99),
                Prices.usual(),
                0.001);
    }

    public PlannerRules withPastPeak(PastPeak newPastPeak) {
        return new PlannerRules(pulls, enough, newPastPeak, prices, nearBest);
    }

    public PlannerRules withNearBest(double newNearBest) {
        return new PlannerRules(pulls, enough, pastPeak, prices, newNearBest);
    }

    public PlannerRules withPulls(Pulls newPulls) {
        return new PlannerRules(newPulls, enough, pastPeak, prices, nearBest);
    }

    public PlannerRules withEnough(Enough newEnough) {
        return new PlannerRules(pulls, newEnough, pastPeak, prices, nearBest);
    }
}
