package org.nextpull.pull;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.plan.DynoFacts;
import org.nextpull.plan.PullFacts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.unit.SpeedBand;

/** Rules of plans that say a single thing. */
public final class Rules {
    private Rules() {}

    /** Those of an empty plan. */
    public static PullRules usual() {
        return PullRules.of(SweepPlan.defaults());
    }

    public static PullRules over(SpeedBand band) {
        return new PullRules(
                Optional.of(band), usual().pulls(), usual().lambdaDelayS(), usual().knockLevel(), usual().gearing());
    }

    public static PullRules with(PullRules rules, PullFacts.Kind kind) {
        PullFacts usual = rules.pulls();
        return pulls(
                rules,
                new PullFacts(
                        kind, usual.fullLoad(), usual.throwAwayFirst(), usual.settleS(), usual.holdS(), usual.held()));
    }

    public static PullRules with(PullRules rules, DynoFacts.Gearing gearing) {
        return new PullRules(rules.band(), rules.pulls(), rules.lambdaDelayS(), rules.knockLevel(), gearing);
    }

    static PullRules withFullLoad(PullRules rules, double fraction) {
        PullFacts usual = rules.pulls();
        return pulls(
                rules,
                new PullFacts(
                        usual.kind(), fraction, usual.throwAwayFirst(), usual.settleS(), usual.holdS(), usual.held()));
    }

    static PullRules withLambdaDelayS(PullRules rules, double delayS) {
        return new PullRules(
                rules.band(), rules.pulls(), OptionalDouble.of(delayS), rules.knockLevel(), rules.gearing());
    }

    private static PullRules pulls(PullRules rules, PullFacts pulls) {
        return new PullRules(rules.band(), pulls, rules.lambdaDelayS(), rules.knockLevel(), rules.gearing());
    }
}
