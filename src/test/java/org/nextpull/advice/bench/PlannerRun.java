package org.nextpull.advice.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.advice.PlannerRules;
import org.nextpull.advice.SweepDecision;
import org.nextpull.advice.SweepPlanner;
import org.nextpull.advice.SweepQuestion;
import org.nextpull.advice.SweepRoom;
import org.nextpull.advice.TriedSetting;
import org.nextpull.fit.Belief;
import org.nextpull.fit.PooledScatter;
import org.nextpull.fit.SweepPriors;

/** The planner on a bench engine. */
record PlannerRun(
        PlannerRules rules,
        double largestStep,
        SweepPriors priors,
        boolean pooled,
        Optional<BenchEngine.KnockSensor> sensor) {

    SweepOutcome run(BenchEngine engine) {
        List<TriedSetting> tried = new ArrayList<>();
        OptionalDouble ceiling = OptionalDouble.empty();
        double setting = engine.start;
        double highest = setting;
        int excursions = 0;
        SweepPriors own = priors.withPeak(new Belief(engine.guess, priors.peak().sd()));
        if (pooled) {
            own = own.withPooled(PooledScatter.of(engine.pooledPercent, BenchEngine.POOLED_DOF));
        }
        while (true) {
            boolean knocks = engine.knocks(setting);
            excursions += knocks && !tried.isEmpty() ? 1 : 0;
            highest = Math.max(highest, setting);
            int order = tried.size();
            OptionalDouble level = OptionalDouble.empty();
            if (sensor.isPresent()) {
                level = OptionalDouble.of(engine.lnKnock(setting, sensor.get()));
            }
            tried.add(new TriedSetting(
                    setting, OptionalDouble.of(engine.pull(setting, order)), !knocks, level, order + 1, order));
            if (knocks) {
                ceiling = OptionalDouble.of(Math.min(ceiling.orElse(Double.MAX_VALUE), setting - engine.resolution));
            }
            SweepRoom room = new SweepRoom(
                    engine.allowed, engine.start, new SweepRoom.Resolution(engine.resolution), largestStep, ceiling);
            SweepDecision decision = SweepPlanner.decide(new SweepQuestion(
                    tried, own, room, rules, sensor.map(s -> new SweepQuestion.KnockGauge(s.floor(), 0))));
            if (decision instanceof SweepDecision.Pull pull) {
                setting = pull.candidate().setting();
                continue;
            }
            SweepDecision.Numbers numbers = decision.numbers();
            double left = numbers.leave().orElse(numbers.wanted()).setting();
            double peak = numbers.peakMean();
            return new SweepOutcome(
                    tried.size(),
                    100 * engine.loss(left),
                    100 * engine.loss(Math.min(peak, engine.permitted())),
                    peak - engine.peak,
                    highest - engine.peak,
                    numbers.peak(),
                    numbers.chances().bracketed() >= 0.95,
                    engine.peak,
                    excursions,
                    left > engine.knockAt,
                    engine.curvature < 6e-4 && engine.scatterPercent > 0.35);
        }
    }
}
