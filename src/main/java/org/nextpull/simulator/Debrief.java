package org.nextpull.simulator;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.engine.bench.FullLoadCurve;
import org.nextpull.engine.bench.TruthFinder;
import org.nextpull.plan.MixturePlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/**
 * What was found, beside what is true: what no operator of a real engine ever sees.
 *
 * @param seed that the engine was made from
 * @param pulls pulls that were run
 * @param knockingPulls pulls in which the knock sensor counted knock within the band
 * @param left the setting that the advice leaves in the engine; empty when nothing clean was run
 * @param truth what is best
 * @param torqueLeftPercent torque over the band that the setting left gives away against the best one that the plan allows and that does
 *     not knock, in percent of it; of a map against the best map, knock aside
 * @param scatterPercent true scatter from pull to pull, one standard deviation
 */
public record Debrief(
        long seed,
        int pulls,
        int knockingPulls,
        Optional<Left> left,
        TrueBest truth,
        OptionalDouble torqueLeftPercent,
        double scatterPercent) {
    /**
     * The setting that is left.
     *
     * @param advanceDeg the same at every speed, of a map its mean over the band; an offset counts from the present map
     * @param lambda mixture
     */
    public record Left(double advanceDeg, double lambda) {}

    /**
     * What is best over the band in the air of that morning, with a warm engine.
     *
     * @param timing advances
     * @param lambda best mixture that the plan allows; where the plan leaves the mixture alone, the one that the engine ran at
     * @param torqueNm torque of the best allowed setting in reference air; at the spark of the present map where the plan leaves that alone
     */
    public record TrueBest(Timing timing, double lambda, double torqueNm) {}

    /**
     * Advances, the same at every speed.
     *
     * @param peakDeg of the highest torque
     * @param goodDeg least advance within 0.2 % of it, or the plan's margin below knock where that is less
     * @param onsetDeg knock is to be expected once a pull; empty when it is not within ten degrees beyond the peak
     */
    public record Timing(double peakDeg, double goodDeg, OptionalDouble onsetDeg) {}

    /** How far the advance that is left lies above the least good one, in degrees; negative on the retarded side. */
    public OptionalDouble degreesOff() {
        return left.map(found ->
                        OptionalDouble.of(found.advanceDeg() - truth.timing().goodDeg()))
                .orElse(OptionalDouble.empty());
    }

    /** How far the mixture that is left lies above the best one, in lambda; negative on the rich side. */
    public OptionalDouble lambdaOff() {
        return left.map(found -> OptionalDouble.of(found.lambda() - truth.lambda()))
                .orElse(OptionalDouble.empty());
    }

    /**
     * Works it out. Takes a second or two.
     *
     * @param leave the setting that the advice leaves in the engine
     */
    static Debrief of(SimulatedEngine rig, int pulls, int knockingPulls, Optional<EngineSetting> leave) {
        Lambda mixture = rig.plan()
                .mixture()
                .map(allowed -> nearest(allowed, rig.truth().mixture()))
                .orElseGet(() -> rig.startLambda());
        double every = rig.setsMap()
                ? rig.plan().band().orElseThrow().rowsEveryRpm()
                : 2 * rig.band().width();
        TruthFinder.Truth truth = TruthFinder.find(rig.engine(), point(rig, mixture), rig.band(), every);
        double permitted = rig.plan()
                .timing()
                .map(timing -> Math.min(truth.peak().deg(), Math.min(mostDeg(rig, timing), onsetDeg(truth))))
                .orElseGet(rig::presentMapDeg);
        SparkMap allowed = rig.setsMap() ? bestMap(rig, truth) : SparkMap.flat(permitted);
        double best = torque(rig, allowed, mixture, rig.day().settled());
        Optional<Left> left = leave.map(
                setting -> new Left(rig.advanceDeg(setting), rig.lambda(setting).value()));
        OptionalDouble given = leave.map(setting -> OptionalDouble.of(Math.max(
                        0,
                        100
                                * (1
                                        - torque(
                                                        rig,
                                                        rig.spark(setting),
                                                        rig.lambda(setting),
                                                        rig.day().settled())
                                                / best))))
                .orElse(OptionalDouble.empty());
        return new Debrief(
                rig.seed(),
                pulls,
                knockingPulls,
                left,
                new TrueBest(
                        new Timing(truth.peak().deg(), rig.goodDeg(truth), truth.onset()),
                        mixture.value(),
                        torque(rig, allowed, mixture, OperatingPoint.Surroundings.reference())),
                given,
                100 * rig.day().scatter().torque());
    }

    private static double onsetDeg(TruthFinder.Truth truth) {
        return truth.onset().orElse(Double.POSITIVE_INFINITY);
    }

    private static double mostDeg(SimulatedEngine rig, TimingPlan timing) {
        double most = timing.most().deg();
        return rig.setsOffset() ? rig.presentMapDeg() + most : most;
    }

    private static Lambda nearest(MixturePlan allowed, Lambda wanted) {
        return Lambda.of(
                Math.max(allowed.richest().value(), Math.min(allowed.leanest().value(), wanted.value())));
    }

    private static OperatingPoint point(SimulatedEngine rig, Lambda lambda) {
        return new OperatingPoint(
                rig.band().low(),
                Advance.ofDeg(0),
                lambda,
                rig.fuel(),
                rig.day().settled());
    }

    /** The best advance of each speed that the plan allows, knock aside. */
    private static SparkMap bestMap(SimulatedEngine rig, TruthFinder.Truth truth) {
        double most = mostDeg(rig, rig.plan().timing().orElseThrow());
        return new SparkMap(truth.rows().stream()
                .map(row -> new SparkMap.Cell(
                        row.rpm(), Advance.ofDeg(Math.min(most, row.peak().deg()))))
                .toList());
    }

    private static double torque(
            SimulatedEngine rig, SparkMap spark, Lambda lambda, OperatingPoint.Surroundings around) {
        Span band = rig.band();
        return FullLoadCurve.of(rig.engine(), spark, point(rig, lambda).in(around), band)
                .value()
                .orElseThrow()
                .meanTorque(band);
    }
}
