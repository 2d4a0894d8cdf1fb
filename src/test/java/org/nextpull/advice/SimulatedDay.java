package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.nextpull.channel.EngineSetting;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** A day in which a simple engine with a known truth answers every proposal until the advice is to stop. */
final class SimulatedDay {
    private static final int PATIENCE = 60;

    private final SweepPlan plan;
    private final Truth truth;
    private final Random random;
    private final Pulls pulls = new Pulls();
    private final List<Advice> said = new ArrayList<>();

    /**
     * The truth of an engine.
     *
     * @param bestDeg peak of torque over advance at lambda 0.87
     * @param bestLambda peak of torque over lambda
     * @param knockDeg advance from which it knocks
     * @param scatterPercent scatter from pull to pull
     * @param heard whether knock is listened for
     */
    record Truth(double bestDeg, double bestLambda, double knockDeg, double scatterPercent, boolean heard) {
        static Truth usual() {
            return new Truth(28, 0.87, 99, 0.2, true);
        }

        double torque(double advanceDeg, double lambda) {
            double x = advanceDeg - bestDeg;
            double z = 100 * (lambda - bestLambda);
            return 200 * (1 - 4e-4 * x * x - 2e-4 * z * z);
        }
    }

    SimulatedDay(SweepPlan plan, Truth truth, long seed) {
        this.plan = plan;
        this.truth = truth;
        this.random = new Random(seed);
    }

    SimulatedDay run() {
        while (said.size() < PATIENCE) {
            Advice advice = judge(plan, pulls.list()).advice();
            said.add(advice);
            if (advice.action() == Action.STOP) {
                return this;
            }
            pull(advice.setting().orElseThrow());
        }
        throw new AssertionError("no stop in " + PATIENCE + " pulls: " + said);
    }

    private void pull(EngineSetting setting) {
        double advance = setting.advance().map(Advance::deg).orElse(truth.bestDeg() - 3);
        double lambda = setting.lambda().map(Lambda::value).orElse(truth.bestLambda());
        double torque = truth.torque(advance, lambda) * (1 + truth.scatterPercent() / 100 * random.nextGaussian());
        if (advance >= truth.knockDeg()) {
            pulls.knocked(advance, lambda, torque);
        } else if (truth.heard()) {
            pulls.clean(advance, lambda, torque);
        } else {
            pulls.unheard(advance, lambda, torque);
        }
    }

    static Verdict judge(SweepPlan plan, List<MeasuredPull> pulls) {
        return judge(plan, pulls, Set.of(), PresentConditions.unknown());
    }

    static Verdict judge(SweepPlan plan, List<MeasuredPull> pulls, Set<Integer> lifted, PresentConditions now) {
        return Advisor.judge(new Day(plan, pulls, lifted, Optional.empty(), now));
    }

    /** A live day, on which an operator can be asked and has said to watch these limits alone. */
    static Verdict live(SweepPlan plan, List<MeasuredPull> pulls, Limit... ownWatch) {
        return Advisor.judge(new Day(
                plan,
                pulls,
                Set.of(),
                Optional.empty(),
                PresentConditions.unknown(),
                NextConfiguration.same(),
                Set.of(ownWatch)));
    }

    List<MeasuredPull> pulls() {
        return pulls.list();
    }

    List<Advice> said() {
        return List.copyOf(said);
    }

    Advice last() {
        return said.get(said.size() - 1);
    }
}
