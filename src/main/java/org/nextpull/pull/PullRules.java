package org.nextpull.pull;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.plan.Band;
import org.nextpull.plan.DynoFacts;
import org.nextpull.plan.PullFacts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.unit.SpeedBand;

/**
 * What counts as a pull: the part of a plan that the finder needs.
 *
 * @param band speed range that a pull must span; without it every sweep long enough counts
 * @param pulls kind, full load, times, and how many of the first good candidates to refuse as warming pulls
 * @param lambdaDelayS how late the lambda sensor shows what is burnt, s, 0 to 5; empty to have it estimated
 * @param knockLevel knock level above which a row is taken for knock; empty where a level says nothing
 * @param gearing how roller and engine turn together
 */
public record PullRules(
        Optional<SpeedBand> band,
        PullFacts pulls,
        OptionalDouble lambdaDelayS,
        OptionalDouble knockLevel,
        DynoFacts.Gearing gearing) {
    private static final double LONGEST_LAMBDA_DELAY_S = 5;

    /**
     * Accepts any delay that a lambda sensor in an exhaust can have, up to 5 s.
     *
     * @throws IllegalArgumentException when the delay is NaN, negative or longer
     */
    public PullRules {
        double delay = lambdaDelayS.orElse(0);
        if (!(delay >= 0 && delay <= LONGEST_LAMBDA_DELAY_S)) {
            throw new IllegalArgumentException("lambda delay must be 0 to 5 s: " + delay);
        }
    }

    /**
     * The rules of a plan.
     *
     * @throws IllegalArgumentException when the plan has a lambda delay that is not 0 to 5 s, which its reader refuses
     */
    public static PullRules of(SweepPlan plan) {
        return new PullRules(
                plan.band().map(Band::speeds),
                plan.pull(),
                plan.log().lambdaDelayS(),
                plan.limits().knockLevel(),
                plan.dyno().gearing());
    }

    public int throwAwayFirst() {
        return pulls.throwAwayFirst();
    }

    public PullRules withThrowAwayFirst(int count) {
        return new PullRules(band, pulls.withThrowAwayFirst(count), lambdaDelayS, knockLevel, gearing);
    }
}
