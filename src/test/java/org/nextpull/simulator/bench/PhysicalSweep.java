package org.nextpull.simulator.bench;

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
import org.nextpull.unit.Span;

/**
 * How a sweep on a physical engine ended.
 *
 * @param pulls pulls used
 * @param leftPercent torque left at the recommended setting, against the best that does not knock; zero for one beyond knock
 * @param leftBelowMarginPercent the same against the best that keeps the usual margin below knock; zero for one beyond that
 * @param excursions pulls beyond knock onset
 * @param beyondOnset whether the recommended setting lies beyond onset
 * @param interval stated 90 % interval of the peak; empty for the trade's rule
 * @param printed whether that interval would be printed
 * @param peak true peak
 * @param limited whether knock lies below the peak
 */
record PhysicalSweep(
        int pulls,
        double leftPercent,
        double leftBelowMarginPercent,
        int excursions,
        boolean beyondOnset,
        Optional<Span> interval,
        boolean printed,
        double peak,
        boolean limited) {
    /** The margin below knock that a plan takes when it does not say, in degrees. */
    private static final double USUAL_MARGIN = 2;

    private static final double LARGE_STEP = 4;
    private static final double TRADE_STEP = 2;
    private static final double ROOM_BELOW = 10;
    private static final double ROOM_ABOVE = 10;

    boolean covers() {
        return interval.map(span -> span.contains(peak)).orElse(false);
    }

    boolean isFalseStop() {
        return leftPercent > 0.5;
    }

    boolean isFalseStopWithMargin() {
        return leftBelowMarginPercent > 0.5;
    }

    /** The planner with steps of up to 4 deg and, like the trade's rule, no margin below knock. */
    static PhysicalSweep planned(PhysicalEngine engine) {
        return planned(engine, PlannerRules.flaggedTiming(), new Caution(LARGE_STEP, PhysicalEngine.RESOLUTION));
    }

    /** The planner with the steps and the margin of a plan that says neither; knock forbids the margin itself. */
    static PhysicalSweep plannedAsUsual(PhysicalEngine engine) {
        return planned(
                engine,
                PlannerRules.flaggedTiming().withClimb(PlannerRules.Climb.free()),
                new Caution(engine.usualStep, USUAL_MARGIN + PhysicalEngine.RESOLUTION));
    }

    /**
     * How careful a plan is.
     *
     * @param step largest step beyond the most advanced clean setting
     * @param below the highest setting that may be left lies this far below one that knocked
     */
    private record Caution(double step, double below) {}

    /** The planner with a knock flag and scatter known from six degrees of freedom. */
    private static PhysicalSweep planned(PhysicalEngine engine, PlannerRules rules, Caution caution) {
        SweepPriors usual = SweepPriors.timing(engine.guess);
        SweepPriors priors = usual.withPeak(
                        new Belief(engine.guess, usual.peak().sd()))
                .withPooled(PooledScatter.of(engine.pooledPercent, 6));
        List<TriedSetting> tried = new ArrayList<>();
        OptionalDouble ceiling = OptionalDouble.empty();
        Span allowed = Span.of(engine.start - ROOM_BELOW, engine.guess + ROOM_ABOVE);
        double setting = engine.start;
        int excursions = 0;
        while (true) {
            boolean knocks = engine.knocks(setting);
            excursions += knocks ? 1 : 0;
            int order = tried.size();
            tried.add(new TriedSetting(
                    setting,
                    OptionalDouble.of(engine.pull(setting, order)),
                    !knocks,
                    OptionalDouble.empty(),
                    order + 1,
                    order));
            if (knocks) {
                ceiling = OptionalDouble.of(Math.min(ceiling.orElse(Double.MAX_VALUE), setting - caution.below()));
            }
            SweepRoom room = new SweepRoom(
                    allowed,
                    engine.start,
                    new SweepRoom.Resolution(PhysicalEngine.RESOLUTION),
                    caution.step(),
                    ceiling);
            SweepDecision decision =
                    SweepPlanner.decide(new SweepQuestion(tried, priors, room, rules, Optional.empty()));
            if (decision instanceof SweepDecision.Pull pull) {
                setting = pull.candidate().setting();
                continue;
            }
            SweepDecision.Numbers numbers = decision.numbers();
            double left = numbers.leave().orElse(numbers.wanted()).setting();
            return new PhysicalSweep(
                    tried.size(),
                    engine.lossPercent(left, 0),
                    engine.lossPercent(left, USUAL_MARGIN),
                    excursions,
                    left > engine.onset,
                    Optional.of(numbers.peak()),
                    numbers.chances().bracketed() >= 0.95,
                    engine.peak,
                    engine.onset < engine.peak);
        }
    }

    /** The trade's rule (common practice, no source): two degrees more until the torque has fallen twice or it knocks. */
    static PhysicalSweep traded(PhysicalEngine engine) {
        double setting = engine.start;
        double best = setting;
        double bestReading = 0;
        double last = 0;
        int falls = 0;
        int pulls = 0;
        int excursions = 0;
        while (setting <= engine.guess + ROOM_ABOVE && falls < 2 && excursions == 0) {
            double reading = engine.pull(setting, pulls);
            pulls++;
            if (engine.knocks(setting)) {
                excursions++;
            } else {
                falls = reading < last ? falls + 1 : 0;
                last = reading;
                if (reading > bestReading) {
                    bestReading = reading;
                    best = setting;
                }
                setting += TRADE_STEP;
            }
        }
        return new PhysicalSweep(
                pulls,
                engine.lossPercent(best, 0),
                engine.lossPercent(best, USUAL_MARGIN),
                excursions,
                best > engine.onset,
                Optional.empty(),
                false,
                engine.peak,
                engine.onset < engine.peak);
    }
}
