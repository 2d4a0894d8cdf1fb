package org.nextpull.engine.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SparkMap;
import org.nextpull.engine.ModelEngine;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.engine.gas.EngineFuel;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/**
 * A day on the simulated brake: pull after pull, each a little later, warmer and under other weather than the last. Repeatable from
 * its seed: the same settings in the same order give the same samples. Keeps count of its pulls, so not for use by several threads.
 */
public final class Bench {
    private static final double BELOW_RANGE_RPM = 100;
    private static final double SLOWEST_RPM = 900;
    private static final double TILT_SHARE = 0.15;
    /** A charger's control does not hold the same pressure twice (common practice, no source; the size is the project's own choice). */
    private static final double BOOST_SPREAD = 0.008;

    private final Brake brake;
    private final Instruments instruments;
    private final WeatherDay day;
    private final Noise noise;
    private int pulls;
    private double logS;

    public Bench(Brake brake, Instruments instruments, WeatherDay day, long seed) {
        this.brake = brake;
        this.instruments = instruments;
        this.day = day;
        this.noise = new Noise(seed);
    }

    public Instruments instruments() {
        return instruments;
    }

    /** Makes the next pull of the day; fails with the engine's findings when the engine cannot run so. */
    public Outcome<Pull> pull(Setting setting, Brake.Program program) {
        return prepare(setting, program).map(ready -> {
            List<Driver.Moment> moments = ready.drive(program, program.range().low());
            Samples log = ready.sensors(
                            new Sensors.State(Sensors.loadAt(moments.get(0).throttle())))
                    .log(moments, logS);
            logS += moments.size() / instruments.sampleHz();
            return new Pull(ready.conditions().number(), setting, log);
        });
    }

    /** All that the next pull needs; the pull counts from here on. */
    Outcome<PreparedPull> prepare(Setting setting, Brake.Program program) {
        Outcome<PreparedPull> prepared = prepared(pulls + 1, noise.branch(), setting, program);
        pulls += prepared.isFailed() ? 0 : 1;
        return prepared;
    }

    /** The same pull with another spark, as an ignition that is set while the engine runs. */
    Outcome<PreparedPull> again(PreparedPull running, Setting setting, Brake.Program program) {
        List<SparkMap> sparks = sparks(setting, program);
        return curves(setting, setting.engine(), sparks, running.conditions(), program.range())
                .map(curves ->
                        new PreparedPull(running.conditions(), curves, sparks, brake, instruments, running.chance()));
    }

    /** The next pull as it might be, with chance of its own; nothing counts. */
    Outcome<PreparedPull> preview(Setting setting, Brake.Program program) {
        return prepared(pulls + 1, new Noise(0), setting, program);
    }

    private Outcome<PreparedPull> prepared(int number, Noise chance, Setting setting, Brake.Program program) {
        Lambda lambda =
                Lambda.of(setting.lambda().value() + chance.normal(day.scatter().lambda()));
        OperatingPoint.Surroundings around = new OperatingPoint.Surroundings(
                day.airAt(number), day.warmth().coolant(), day.warmth().oilAt(number));
        double sd = day.scatter().torque();
        double drift = (number - 1) * day.scatter().drift().perPull();
        PreparedPull.Conditions conditions = new PreparedPull.Conditions(
                number,
                around,
                lambda,
                setting.fuel().name(),
                setting.label(),
                setting.engine().design().cylinders(),
                new PreparedPull.Conditions.PullScatter(1 + drift + chance.normal(sd), chance.normal(TILT_SHARE * sd)));
        List<SparkMap> sparks = sparks(setting, program);
        ModelEngine engine = setting.engine().design().boost().isNone()
                ? setting.engine()
                : setting.engine().boostedBy(1 + chance.normal(BOOST_SPREAD));
        return curves(setting, engine, sparks, conditions, program.range())
                .map(curves -> new PreparedPull(conditions, curves, sparks, brake, instruments, chance));
    }

    private static List<SparkMap> sparks(Setting setting, Brake.Program program) {
        if (program instanceof Brake.Program.SparkSteps steps) {
            return steps.advances().stream()
                    .map(advance -> SparkMap.flat(advance))
                    .toList();
        }
        return List.of(setting.spark());
    }

    private static Outcome<List<FullLoadCurve>> curves(
            Setting setting,
            ModelEngine engine,
            List<SparkMap> sparks,
            PreparedPull.Conditions conditions,
            Span range) {
        List<FullLoadCurve> curves = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        OperatingPoint point = new OperatingPoint(
                range.low(), Advance.ofDeg(0), conditions.lambda(), setting.fuel(), conditions.surroundings());
        Span wider = Span.of(Math.max(SLOWEST_RPM, range.low() - BELOW_RANGE_RPM), range.high() + BELOW_RANGE_RPM);
        for (SparkMap spark : sparks) {
            Outcome<FullLoadCurve> curve = FullLoadCurve.of(engine, spark, point, wider);
            curve.value().ifPresent(curves::add);
            findings.addAll(curve.findings());
        }
        return curves.size() == sparks.size() ? Outcome.of(curves, findings) : Outcome.failed(findings);
    }

    /**
     * A pull on the simulated brake.
     *
     * @param number order in the day, from 1
     * @param setting what was set
     * @param samples what was logged
     */
    public record Pull(int number, Setting setting, Samples samples) {}

    /**
     * What is set for a pull on the simulated brake.
     *
     * @param engine the engine as it is fitted out
     * @param spark spark advance over speed
     * @param lambda mixture asked for
     * @param fuel fuel
     * @param label configuration; empty where there is only one
     */
    public record Setting(ModelEngine engine, SparkMap spark, Lambda lambda, EngineFuel fuel, Optional<String> label) {
        public Setting withAdvance(double deg) {
            return new Setting(engine, SparkMap.flat(deg), lambda, fuel, label);
        }

        public Setting withLambda(double value) {
            return new Setting(engine, spark, Lambda.of(value), fuel, label);
        }
    }
}
