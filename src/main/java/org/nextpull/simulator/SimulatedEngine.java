package org.nextpull.simulator;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.channel.Channel;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SparkMap;
import org.nextpull.engine.EngineDesign;
import org.nextpull.engine.ModelEngine;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.engine.bench.Bench;
import org.nextpull.engine.bench.TruthFinder;
import org.nextpull.engine.bench.WeatherDay;
import org.nextpull.engine.gas.EngineFuel;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.Band;
import org.nextpull.plan.FuelChoice;
import org.nextpull.plan.MixturePlan;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/**
 * The model engine that a plan describes, on the dyno that the plan describes, with a hidden truth that a seed decides. Immutable.
 *
 * @param plan the plan
 * @param seed where all chance comes from
 * @param engine the engine
 * @param fuel its fuel
 * @param day scatter, drift and weather of the day
 * @param kit brake and instruments
 * @param truth what is best on that day at the mixture that the plan starts with, over the band
 * @param benchSeed where the chance of the pulls comes from
 */
record SimulatedEngine(
        SweepPlan plan,
        long seed,
        ModelEngine engine,
        EngineFuel fuel,
        WeatherDay day,
        SimulatedDyno kit,
        TruthFinder.Truth truth,
        long benchSeed) {
    /** The present map of a plan that sets offsets lies this far on the retarded side of best, and is flat. */
    private static final double MAP_BELOW_BEST_DEG = 6;

    private static final double USUAL_LAMBDA = 0.87;
    private static final double HALF_DEG = 0.5;
    private static final double[] CORNER_LAMBDAS = {0.72, 1.08};

    static Outcome<SimulatedEngine> of(SweepPlan plan, long seed) {
        return of(plan, seed, plan.fuel());
    }

    /** The same engine on the same day for each candidate of the plan, on the fuel of that, by label; for a plan without any, on its own. */
    static Outcome<Map<String, SimulatedEngine>> candidates(SweepPlan plan, long seed) {
        if (!plan.decides()) {
            return of(plan, seed).map(rig -> Map.of("", rig));
        }
        Outcome<Map<String, SimulatedEngine>> all = Outcome.of(new LinkedHashMap<>());
        for (SweepPlan.Candidate candidate : plan.candidates()) {
            FuelChoice fuel = new FuelChoice(
                    candidate.fuel().or(() -> plan.fuel().blend()), plan.fuel().own());
            all = all.then(rigs -> of(plan, seed, fuel).map(rig -> {
                rigs.put(candidate.label(), rig);
                return rigs;
            }));
        }
        return all;
    }

    private static Outcome<SimulatedEngine> of(SweepPlan plan, long seed, FuelChoice choice) {
        if (plan.timing().isEmpty() && plan.mixture().isEmpty()) {
            return Outcome.failed(Finding.error(FindingCode.NOTHING_TO_SWEEP, Place.nowhere()));
        }
        if (plan.band().isEmpty()) {
            return Outcome.failed(Finding.error(
                    FindingCode.RIG_NEEDS, Place.nowhere(), Detail.of("name", "[band] from_rpm, to_rpm")));
        }
        Span band = span(plan.band().get());
        Variety variety = new Variety(seed);
        EngineDesign design = variety.vary(PlanDesign.of(plan.engine(), band));
        Outcome<EngineFuel> listed =
                choice.inTank().map(tank -> tank.then(EngineFuel::of)).orElseGet(() -> EngineFuel.named("e10"));
        return SimulatedDyno.of(plan, band).then(kit -> {
            List<Finding> unlikely =
                    PlanDesign.check(design, kit, startLambda(plan).value());
            return unlikely.isEmpty()
                    ? ModelEngine.of(design)
                            .then(engine -> listed.then(fuel -> assemble(plan, seed, engine, fuel, kit, variety)))
                    : Outcome.failed(unlikely);
        });
    }

    private static Outcome<SimulatedEngine> assemble(
            SweepPlan plan, long seed, ModelEngine engine, EngineFuel listed, SimulatedDyno kit, Variety variety) {
        Span band = span(plan.band().orElseThrow());
        EngineFuel fuel = variety.vary(listed);
        WeatherDay day = variety.day()
                .under(plan.air().baro(), plan.air().air(), plan.air().humidity());
        OperatingPoint start = new OperatingPoint(band.low(), Advance.ofDeg(0), startLambda(plan), fuel, day.settled());
        Optional<List<Finding>> wrong = cannotRun(engine, start, kit.program().range());
        if (wrong.isPresent()) {
            return Outcome.failed(wrong.get());
        }
        TruthFinder.Truth truth =
                TruthFinder.find(engine, start, band, plan.band().orElseThrow().rowsEveryRpm());
        List<Finding> unlikely =
                PlanDesign.checkRun(kit.brake(), band, truth.torque().newtonMetres());
        if (!unlikely.isEmpty()) {
            return Outcome.failed(unlikely);
        }
        return Outcome.of(new SimulatedEngine(plan, seed, engine, fuel, day, kit, truth, variety.benchSeed()));
    }

    private static Optional<List<Finding>> cannotRun(ModelEngine engine, OperatingPoint start, Span range) {
        for (double rpm : new double[] {range.low(), range.high()}) {
            for (double lambda : CORNER_LAMBDAS) {
                List<Finding> findings =
                        engine.at(start.atRpm(rpm).atLambda(lambda)).findings();
                if (!findings.isEmpty()) {
                    return Optional.of(findings);
                }
            }
        }
        return Optional.empty();
    }

    SimulatedEngine withKit(SimulatedDyno other) {
        return new SimulatedEngine(plan, seed, engine, fuel, day, other, truth, benchSeed);
    }

    Bench bench() {
        return new Bench(kit.brake(), kit.instruments(), day, benchSeed);
    }

    Span band() {
        return span(plan.band().orElseThrow());
    }

    boolean setsOffset() {
        return plan.timing()
                .map(timing -> timing.sets() == TimingPlan.Sets.OFFSET)
                .orElse(false);
    }

    /** Whether the log alone does not tell what was set, so that a settings file must. */
    boolean needsSettings() {
        return plan.timing().isPresent() && (setsOffset() || !kit.logsAdvance());
    }

    /** The spark that a proposal means: the present map where it says nothing of it. */
    SparkMap spark(EngineSetting setting) {
        return setting.spark()
                .orElseGet(() -> presentMap()
                        .shiftedBy(setting.offset().map(Advance::deg).orElse(0.0)));
    }

    /** The advance of a proposal: of a map its mean over the rows of the truth. */
    double advanceDeg(EngineSetting setting) {
        SparkMap spark = spark(setting);
        return spark.isFlat()
                ? spark.degAt(0)
                : truth.rows().stream()
                        .mapToDouble(row -> spark.degAt(row.rpm()))
                        .average()
                        .orElseThrow();
    }

    /** The map that is in the engine before the day: the plan's, else a flat one. */
    private SparkMap presentMap() {
        return plan.timing().flatMap(timing -> timing.map().present()).orElseGet(() -> SparkMap.flat(presentMapDeg()));
    }

    /** The advance of a flat map that is in the engine before the day. */
    double presentMapDeg() {
        double good = goodDeg(truth);
        double below = plan.timing().isPresent() ? MAP_BELOW_BEST_DEG : 0;
        return Math.floor((good - below) / HALF_DEG) * HALF_DEG;
    }

    boolean setsMap() {
        return plan.timing().map(timing -> timing.sets() == TimingPlan.Sets.MAP).orElse(false);
    }

    /** The least advance that is as good as the best, as far as the plan's margin keeps it from knock. */
    double goodDeg(TruthFinder.Truth found) {
        double limit =
                found.onset().orElse(Double.POSITIVE_INFINITY) - plan.limits().knockMarginDeg();
        return Math.min(found.near().deg(), limit);
    }

    Lambda lambda(EngineSetting setting) {
        return setting.lambda().orElseGet(this::startLambda);
    }

    /** The mixture that the day starts at. */
    Lambda startLambda() {
        return startLambda(plan);
    }

    /** The setting that the day starts at. */
    EngineSetting startSetting() {
        Optional<Advance> start = setsMap() ? Optional.empty() : plan.timing().map(TimingPlan::start);
        return EngineSetting.ofNumbers(
                setsOffset() ? Optional.empty() : start,
                setsOffset() ? start : Optional.empty(),
                plan.mixture().map(MixturePlan::start));
    }

    Bench.Setting benchSetting(EngineSetting setting, Optional<String> label) {
        return new Bench.Setting(engine, spark(setting), lambda(setting), fuel, label);
    }

    private static Lambda startLambda(SweepPlan plan) {
        return plan.mixture().map(MixturePlan::start).orElse(Lambda.of(USUAL_LAMBDA));
    }

    private static Span span(Band band) {
        return Span.of(band.fromRpm(), band.toRpm());
    }

    /** Counts what the knock sensor counts within the band of a pull. For one pull and one thread. */
    static final class KnockCount {
        private static final Channel EVENTS = Channel.of(Role.KNOCK_EVENTS);
        private static final Channel SPEED = Channel.of(Role.ENGINE_SPEED);

        private final Span band;
        private final double mostEvents;
        private double events;

        KnockCount(SimulatedEngine rig) {
            this.band = rig.band();
            this.mostEvents = rig.plan().limits().knockEventsThatCount();
        }

        void add(Samples samples) {
            for (int row = 0; row < samples.rows(); row++) {
                if (samples.isPresent(EVENTS, row)
                        && samples.isPresent(SPEED, row)
                        && band.contains(samples.value(SPEED, row))) {
                    events += samples.value(EVENTS, row);
                }
            }
        }

        /** Whether the pull knocked as far as the plan is concerned. */
        boolean isHeard() {
            return events >= mostEvents;
        }
    }
}
