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

/** Puts the truth of a rig engine beside what a day on it found. */
record Debriefing(RigEngine rig) {
    Debrief of(int pulls, int knockingPulls, Optional<EngineSetting> leave) {
        Lambda mixture = rig.plan()
                .mixture()
                .map(allowed -> nearest(allowed, rig.truth().mixture()))
                .orElseGet(() -> rig.startLambda());
        double every = rig.setsMap()
                ? rig.plan().band().orElseThrow().rowsEveryRpm()
                : 2 * rig.band().width();
        TruthFinder.Truth truth = TruthFinder.find(rig.engine(), point(mixture), rig.band(), every);
        double permitted = rig.plan()
                .timing()
                .map(timing -> Math.min(truth.peak().deg(), Math.min(mostDeg(timing), onsetDeg(truth))))
                .orElseGet(rig::presentMapDeg);
        SparkMap allowed = rig.setsMap() ? bestMap(truth) : SparkMap.flat(permitted);
        double best = torque(allowed, mixture, rig.day().settled());
        Optional<Debrief.Left> left = leave.map(setting ->
                new Debrief.Left(rig.advanceDeg(setting), rig.lambda(setting).value()));
        OptionalDouble given = leave.map(setting -> OptionalDouble.of(Math.max(
                        0,
                        100
                                * (1
                                        - torque(
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
                new Debrief.TrueBest(
                        new Debrief.Timing(truth.peak().deg(), rig.goodDeg(truth), truth.onset()),
                        mixture.value(),
                        torque(allowed, mixture, OperatingPoint.Surroundings.reference())),
                given,
                100 * rig.day().scatter().torque());
    }

    private static double onsetDeg(TruthFinder.Truth truth) {
        return truth.onset().orElse(Double.POSITIVE_INFINITY);
    }

    private double mostDeg(TimingPlan timing) {
        double most = timing.most().deg();
        return rig.setsOffset() ? rig.presentMapDeg() + most : most;
    }

    private static Lambda nearest(MixturePlan allowed, Lambda wanted) {
        return Lambda.of(
                Math.max(allowed.richest().value(), Math.min(allowed.leanest().value(), wanted.value())));
    }

    private OperatingPoint point(Lambda lambda) {
        return new OperatingPoint(
                rig.band().low(),
                Advance.ofDeg(0),
                lambda,
                rig.fuel(),
                rig.day().settled());
    }

    /** The best advance of each speed that the plan allows, knock aside. */
    private SparkMap bestMap(TruthFinder.Truth truth) {
        double most = mostDeg(rig.plan().timing().orElseThrow());
        return new SparkMap(truth.rows().stream()
                .map(row -> new SparkMap.Cell(
                        row.rpm(), Advance.ofDeg(Math.min(most, row.peak().deg()))))
                .toList());
    }

    private double torque(SparkMap spark, Lambda lambda, OperatingPoint.Surroundings around) {
        Span band = rig.band();
        return FullLoadCurve.of(rig.engine(), spark, point(lambda).in(around), band)
                .value()
                .orElseThrow()
                .meanTorque(band);
    }
}
