package org.nextpull.pull;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.unit.SpeedBand;

/**
 * What counts as a pull.
 *
 * @param band speed range that a pull must span; without it every sweep long enough counts
 * @param wanted kind to look for
 * @param fullLoadFraction throttle at or above which the engine is at full load, above 0 and at most 1
 * @param times settling and holding times
 * @param throwAwayFirst how many of the first good candidates to refuse as warming pulls
 * @param lambdaDelayS how late the lambda sensor shows what is burnt, s; empty to have it estimated
 * @param gearing how roller and engine turn together
 */
public record PullRules(
        Optional<SpeedBand> band,
        WantedKind wanted,
        double fullLoadFraction,
        PullTimes times,
        int throwAwayFirst,
        OptionalDouble lambdaDelayS,
        Gearing gearing) {
    private static final double LONGEST_LAMBDA_DELAY_S = 5;

    public PullRules {
        if (!(fullLoadFraction > 0 && fullLoadFraction <= 1)) {
            throw new IllegalArgumentException("full load is a fraction of the throttle: " + fullLoadFraction);
        }
        if (throwAwayFirst < 0) {
            throw new IllegalArgumentException("pulls to throw away cannot be negative: " + throwAwayFirst);
        }
        double delay = lambdaDelayS.orElse(0);
        if (!(delay >= 0 && delay <= LONGEST_LAMBDA_DELAY_S)) {
            throw new IllegalArgumentException("lambda delay must be 0 to 5 s: " + delay);
        }
    }

    /** The rules of a plan that says nothing: any kind, 95 % throttle, 2 s to settle, 3 s a plateau, nothing thrown away. */
    public static PullRules standard() {
        return new PullRules(
                Optional.empty(),
                WantedKind.AUTO,
                0.95,
                PullTimes.STANDARD,
                0,
                OptionalDouble.empty(),
                Gearing.UNKNOWN);
    }

    public PullRules withBand(SpeedBand newBand) {
        return new PullRules(
                Optional.of(newBand), wanted, fullLoadFraction, times, throwAwayFirst, lambdaDelayS, gearing);
    }

    public PullRules withWanted(WantedKind newWanted) {
        return new PullRules(band, newWanted, fullLoadFraction, times, throwAwayFirst, lambdaDelayS, gearing);
    }

    public PullRules withFullLoadFraction(double newFraction) {
        return new PullRules(band, wanted, newFraction, times, throwAwayFirst, lambdaDelayS, gearing);
    }

    public PullRules withTimes(PullTimes newTimes) {
        return new PullRules(band, wanted, fullLoadFraction, newTimes, throwAwayFirst, lambdaDelayS, gearing);
    }

    public PullRules withThrowAwayFirst(int newCount) {
        return new PullRules(band, wanted, fullLoadFraction, times, newCount, lambdaDelayS, gearing);
    }

    public PullRules withLambdaDelayS(double newDelayS) {
        return new PullRules(
                band, wanted, fullLoadFraction, times, throwAwayFirst, OptionalDouble.of(newDelayS), gearing);
    }

    public PullRules withGearing(Gearing newGearing) {
        return new PullRules(band, wanted, fullLoadFraction, times, throwAwayFirst, lambdaDelayS, newGearing);
    }
}
