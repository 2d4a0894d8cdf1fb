package org.nextpull.engine.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SparkMap;
import org.nextpull.engine.ExampleEngines;
import org.nextpull.engine.ModelEngine;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.engine.gas.TestFuels;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;
import org.nextpull.unit.Temperature;

class BenchTest {
    private static final List<Role> ROLES = List.of(
            Role.TIME,
            Role.ENGINE_SPEED,
            Role.TORQUE,
            Role.THROTTLE,
            Role.LAMBDA,
            Role.ADVANCE,
            Role.KNOCK_EVENTS,
            Role.KNOCK_LEVEL,
            Role.EXHAUST_TEMPERATURE);
    private static final Brake.Program PULL = new Brake.Program.Acceleration(Span.of(3000, 6500), 300);
    private static final ModelEngine ENGINE =
            ModelEngine.of(ExampleEngines.hillClimb()).value().orElseThrow();
    private static final Bench.Setting SETTING =
            new Bench.Setting(ENGINE, SparkMap.flat(24), Lambda.of(0.88), TestFuels.E10, Optional.empty());

    private static Instruments perfect(double sampleHz) {
        return new Instruments(
                sampleHz, ROLES, new Instruments.Wideband(0.25, 0), 0, 0, new Instruments.Imperfections(1.5, 0));
    }

    private static WeatherDay still() {
        WeatherDay usual = WeatherDay.usual();
        Temperature warm = usual.warmth().oilWarm();
        return new WeatherDay(
                usual.morning(),
                new WeatherDay.Change(0, 0),
                new WeatherDay.Warmth(warm, warm, usual.warmth().coolant()),
                new WeatherDay.Scatter(0, 0, new WeatherDay.Scatter.Drift(0)));
    }

    private static Samples pull(Bench bench, Bench.Setting setting, Brake.Program program) {
        return bench.pull(setting, program).value().orElseThrow().samples();
    }

    private static Bench quiet(double inertia, boolean inLog) {
        return new Bench(Brake.engineBrake(inertia, inLog), perfect(20), still(), 1);
    }

    private static double meanTorque(Samples samples, Span band) {
        double sum = 0;
        int count = 0;
        for (int row = 0; row < samples.rows(); row++) {
            double rpm = samples.value(Channel.of(Role.ENGINE_SPEED), row);
            if (samples.value(Channel.of(Role.THROTTLE), row) > 0.95 && band.contains(rpm)) {
                sum += samples.value(Channel.of(Role.TORQUE), row);
                count++;
            }
        }
        return sum / count;
    }

    private static double sum(Samples samples, Role role) {
        return Arrays.stream(samples.presentValues(Channel.of(role))).sum();
    }

    @Test
    void theSameSeedGivesTheSameDay() {
        List<Double> first = new ArrayList<>();
        List<Double> second = new ArrayList<>();
        for (List<Double> seen : List.of(first, second)) {
            Bench bench =
                    new Bench(Brake.engineBrake(0.15, true), Instruments.usual(20, ROLES), WeatherDay.usual(), 42);
            for (int pull = 0; pull < 2; pull++) {
                Arrays.stream(pull(bench, SETTING, PULL).presentValues(Channel.of(Role.TORQUE)))
                        .forEach(seen::add);
            }
        }
        assertThat(first).isEqualTo(second);
        Bench other = new Bench(Brake.engineBrake(0.15, true), Instruments.usual(20, ROLES), WeatherDay.usual(), 43);
        assertThat(pull(other, SETTING, PULL).presentValues(Channel.of(Role.TORQUE))[100])
                .isNotEqualTo(first.get(100));
    }

    @Test
    void boostVariesFromPullToPull() {
        ModelEngine charged = ModelEngine.of(ExampleEngines.boosted()).value().orElseThrow();
        Bench.Setting setting =
                new Bench.Setting(charged, SparkMap.flat(10), Lambda.of(0.85), TestFuels.E10, Optional.empty());
        Bench bench = new Bench(
                Brake.engineBrake(0.15, true),
                Instruments.usual(20, List.of(Role.TIME, Role.ENGINE_SPEED, Role.MANIFOLD_PRESSURE)),
                still(),
                3);
        double[] highest = new double[6];
        for (int pull = 0; pull < highest.length; pull++) {
            highest[pull] = Arrays.stream(pull(bench, setting, PULL).presentValues(Channel.of(Role.MANIFOLD_PRESSURE)))
                    .max()
                    .orElseThrow();
        }
        double spread = Arrays.stream(highest).max().orElseThrow()
                - Arrays.stream(highest).min().orElseThrow();
        assertThat(spread).isBetween(400.0, 4000.0);
    }

    @Test
    void withoutImperfectionsTheLogIsTheEngine() {
        Samples samples = pull(quiet(0.15, true), SETTING, PULL);
        double rpm = 5000;
        OperatingPoint point = new OperatingPoint(
                rpm,
                Advance.ofDeg(24),
                SETTING.lambda(),
                SETTING.fuel(),
                new OperatingPoint.Surroundings(
                        still().airAt(1),
                        still().warmth().coolant(),
                        still().warmth().oilAt(1)));
        double torque = ENGINE.at(point).value().orElseThrow().torque().newtonMetres();
        double logged = meanTorque(samples, Span.of(rpm - 25, rpm + 25));
        // the mixture of a log ripples a little over speed
        assertThat(logged).isCloseTo(torque, within(0.003 * torque));
    }

    /** J dw/dt: 0.2 kg.m2 at 300 rpm/s (31.4 rad/s2) take 6.28 N.m. */
    @Test
    void inertiaThatIsNotInTheLogIsMissingFromTheTorque() {
        Span band = Span.of(4000, 6000);
        double with = meanTorque(pull(quiet(0.2, true), SETTING, PULL), band);
        double without = meanTorque(pull(quiet(0.2, false), SETTING, PULL), band);
        assertThat(with - without).isCloseTo(0.2 * 300 * Math.PI / 30, within(1e-9));
    }

    @Test
    void speedRisesAtTheSetRate() {
        Samples samples = pull(quiet(0.15, true), SETTING, PULL);
        Channel speed = Channel.of(Role.ENGINE_SPEED);
        Channel time = Channel.of(Role.TIME);
        int row = 0;
        while (samples.value(speed, row) < 4000) {
            row++;
        }
        double rate = (samples.value(speed, row + 20) - samples.value(speed, row))
                / (samples.value(time, row + 20) - samples.value(time, row));
        assertThat(rate).isCloseTo(300, within(1e-6));
    }

    @Test
    void lambdaIsReadLate() {
        Samples samples = pull(quiet(0.15, true), SETTING, PULL);
        Channel throttle = Channel.of(Role.THROTTLE);
        Channel lambda = Channel.of(Role.LAMBDA);
        int opened = 0;
        while (samples.value(throttle, opened) < 0.95) {
            opened++;
        }
        // 0.25 s at 20 Hz are five rows: the reading still stands at part load
        assertThat(samples.value(lambda, opened + 4)).isCloseTo(1.0, within(1e-12));
        assertThat(samples.value(lambda, opened + 5)).isLessThan(0.97);
        assertThat(samples.value(lambda, opened + 20)).isCloseTo(0.88, within(0.003));
    }

    @Test
    void theThermocoupleStillRisesWhenTheThrottleIsOpen() {
        double[] exhaust = pull(quiet(0.15, true), SETTING, PULL).presentValues(Channel.of(Role.EXHAUST_TEMPERATURE));
        // 1.6 s of part throttle, a quarter to open; half a second later against three seconds later
        assertThat(exhaust[47]).isLessThan(exhaust[97] - 50);
    }

    @Test
    void lateSparkDoesNotKnockAndEarlySparkDoes() {
        Bench bench = quiet(0.15, true);
        Samples late = pull(bench, SETTING.withAdvance(20), PULL);
        Samples early = pull(bench, SETTING.withAdvance(36), PULL);
        assertThat(sum(late, Role.KNOCK_EVENTS)).isZero();
        assertThat(sum(early, Role.KNOCK_EVENTS)).isGreaterThan(20);
        assertThat(sum(early, Role.KNOCK_LEVEL)).isGreaterThan(1.3 * sum(late, Role.KNOCK_LEVEL));
    }

    /** Standard deviation of 120 pulls: within 4 standard errors (one in 16,000) of what the day was told. */
    @Test
    void pullsScatterAsTheDaySays() {
        WeatherDay day = new WeatherDay(
                still().morning(),
                still().change(),
                still().warmth(),
                new WeatherDay.Scatter(0.004, 0, new WeatherDay.Scatter.Drift(0)));
        Bench bench = new Bench(Brake.engineBrake(0.15, true), perfect(20), day, 7);
        Brake.Program hold = new Brake.Program.SparkSteps(5000, List.of(Advance.ofDeg(24)), 1);
        int pulls = 120;
        double[] means = new double[pulls];
        for (int pull = 0; pull < pulls; pull++) {
            means[pull] = meanTorque(pull(bench, SETTING, hold), Span.of(4900, 5100));
        }
        double mean = Arrays.stream(means).average().orElseThrow();
        double sd =
                Math.sqrt(Arrays.stream(means).map(x -> (x - mean) * (x - mean)).sum() / (pulls - 1));
        double error = 0.004 / Math.sqrt(2.0 * (pulls - 1));
        assertThat(sd / mean).isCloseTo(0.004, within(4 * error));
    }

    @Test
    void oilWarmsFromPullToPullAndTorqueWithIt() {
        Bench bench = new Bench(
                Brake.engineBrake(0.15, true),
                perfect(20),
                new WeatherDay(
                        still().morning(),
                        still().change(),
                        new WeatherDay.Warmth(
                                Temperature.ofCelsius(60), Temperature.ofCelsius(95), Temperature.ofCelsius(86)),
                        still().scatter()),
                3);
        Span band = Span.of(4000, 6000);
        double first = meanTorque(pull(bench, SETTING, PULL), band);
        double second = meanTorque(pull(bench, SETTING, PULL), band);
        double third = meanTorque(pull(bench, SETTING, PULL), band);
        assertThat(second).isGreaterThan(first);
        assertThat(third).isGreaterThan(second);
        assertThat(third - second).isLessThan(second - first);
    }

    @Test
    void rowsAreDroppedAsOftenAsTold() {
        Instruments leaky = new Instruments(
                50, ROLES, new Instruments.Wideband(0.25, 0), 0, 0, new Instruments.Imperfections(1.5, 0.05));
        Bench bench = new Bench(Brake.engineBrake(0.15, true), leaky, still(), 5);
        Bench whole = new Bench(Brake.engineBrake(0.15, true), perfect(50), still(), 5);
        double all = pull(whole, SETTING, PULL).rows();
        double kept = pull(bench, SETTING, PULL).rows();
        double error = Math.sqrt(0.05 * 0.95 / all);
        assertThat(1 - kept / all).isCloseTo(0.05, within(4 * error));
    }

    @Test
    void steppedPullsStandOnTheirPlateaus() {
        Samples samples = pull(quiet(0.15, true), SETTING, new Brake.Program.Steps(Span.of(3000, 5000), 500, 3));
        double[] speeds = samples.presentValues(Channel.of(Role.ENGINE_SPEED));
        for (double plateau = 3000; plateau <= 5000; plateau += 500) {
            double wanted = plateau;
            long rows = Arrays.stream(speeds)
                    .filter(rpm -> Math.abs(rpm - wanted) < 1e-6)
                    .count();
            assertThat(rows).isGreaterThanOrEqualTo(60);
        }
    }

    @Test
    void sparkStepsAreLoggedAndFelt() {
        Samples samples = pull(
                quiet(0.15, true),
                SETTING,
                new Brake.Program.SparkSteps(4500, List.of(Advance.ofDeg(14), Advance.ofDeg(24)), 4));
        Channel advance = Channel.of(Role.ADVANCE);
        Channel torque = Channel.of(Role.TORQUE);
        int row = 0;
        while (samples.value(advance, row) != 24) {
            row++;
        }
        assertThat(samples.value(advance, row - 1)).isEqualTo(14);
        assertThat(samples.value(torque, row + 30)).isGreaterThan(samples.value(torque, row - 1) * 1.015);
    }

    /** On a roller the energy gained by roller and engine is what the engine gave less what gears and tyres kept. */
    @Test
    void aRollerRunObeysTheEnergyBalance() {
        Brake.Roller roller = new Brake.Roller(60, 4.2, new Brake.Losses(0, 0));
        Brake brake = new Brake(0.1, false, Optional.of(roller));
        List<Role> roles = List.of(Role.TIME, Role.ROLLER_SPEED, Role.TORQUE, Role.ENGINE_SPEED, Role.THROTTLE);
        Instruments instruments =
                new Instruments(100, roles, new Instruments.Wideband(0, 0), 0, 0, new Instruments.Imperfections(1, 0));
        Samples samples = pull(
                new Bench(brake, instruments, still(), 2), SETTING, new Brake.Program.RollerRun(Span.of(3000, 6000)));
        Channel speed = Channel.of(Role.ENGINE_SPEED);
        int from = 0;
        while (samples.value(speed, from) <= 3500) {
            from++;
        }
        int to = from;
        double work = 0;
        while (samples.value(speed, to) < 5500) {
            // the reading is short of what the engine's own inertia takes up: add it again
            double rate = (samples.value(speed, to + 1) - samples.value(speed, to)) * 100 * Math.PI / 30;
            double made = samples.value(Channel.of(Role.TORQUE), to) + 0.1 * rate;
            work += made * samples.value(speed, to) * Math.PI / 30 / 100;
            to++;
        }
        double inertia = 0.1 + 60 / (4.2 * 4.2);
        double gained = inertia / 2 * (square(samples.value(speed, to)) - square(samples.value(speed, from)));
        assertThat(work / gained).isCloseTo(1, within(0.01));
        assertThat(samples.value(Channel.of(Role.ROLLER_SPEED), to))
                .isCloseTo(samples.value(speed, to) / 4.2, within(1e-9));
    }

    private static double square(double rpm) {
        double radians = rpm * Math.PI / 30;
        return radians * radians;
    }

    @Test
    void aPullThatTheEngineCannotRunIsRefused() {
        assertThat(quiet(0.15, true).pull(SETTING.withLambda(2), PULL).isFailed())
                .isTrue();
    }
}
