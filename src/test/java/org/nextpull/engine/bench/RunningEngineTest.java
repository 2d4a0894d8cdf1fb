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
import org.nextpull.engine.gas.TestFuels;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

class RunningEngineTest {
    private static final long SEED = 11;
    private static final Brake.Program PULL = new Brake.Program.Acceleration(Span.of(3000, 4000), 300);
    private static final Brake.Program LONG = new Brake.Program.Acceleration(Span.of(3000, 6500), 300);
    private static final ModelEngine ENGINE =
            ModelEngine.of(ExampleEngines.hillClimb()).value().orElseThrow();
    private static final Bench.Setting SETTING =
            new Bench.Setting(ENGINE, SparkMap.flat(24), Lambda.of(0.88), TestFuels.E10, Optional.empty());
    private static final double OIL_JUMP_K = 1;

    private static Bench bench() {
        List<Role> roles = List.of(
                Role.TIME, Role.ENGINE_SPEED, Role.TORQUE, Role.THROTTLE, Role.OIL_TEMPERATURE, Role.MANIFOLD_PRESSURE);
        return new Bench(Brake.engineBrake(0, true), Instruments.usual(20, roles), WeatherDay.usual(), SEED);
    }

    private static RunningEngine start() {
        return RunningEngine.start(bench(), SETTING, LONG, SEED).value().orElseThrow();
    }

    private static List<Samples> idle(RunningEngine engine, int rows) {
        List<Samples> result = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            result.add(engine.row());
        }
        return result;
    }

    private static List<Samples> pull(RunningEngine engine) {
        return pull(engine, PULL);
    }

    private static List<Samples> pull(RunningEngine engine, Brake.Program program) {
        List<Samples> result = new ArrayList<>();
        assertThat(engine.pull(SETTING, program).isFailed()).isFalse();
        while (engine.isPulling()) {
            result.add(engine.row());
        }
        return result;
    }

    private static double[] values(List<Samples> rows, Role role) {
        return rows.stream()
                .flatMapToDouble(row -> Arrays.stream(row.presentValues(Channel.of(role))))
                .toArray();
    }

    /** Mean torque while the throttle is open and the speed within the band. */
    private static double torque(List<Samples> rows) {
        return rows.stream()
                .filter(row -> row.rows() == 1
                        && row.value(Channel.of(Role.THROTTLE), 0) > 0.98
                        && row.value(Channel.of(Role.ENGINE_SPEED), 0) > 3200)
                .mapToDouble(row -> row.value(Channel.of(Role.TORQUE), 0))
                .average()
                .orElseThrow();
    }

    @Test
    void anIdlingEngineGivesTheBrakeNothing() {
        List<Samples> rows = idle(start(), 200);
        assertThat(Arrays.stream(values(rows, Role.TORQUE)).average().orElseThrow())
                .isCloseTo(0, within(1.0));
        assertThat(Arrays.stream(values(rows, Role.ENGINE_SPEED))).allMatch(rpm -> rpm > 1050 && rpm < 1150);
        assertThat(values(rows, Role.TIME)).isSorted();
    }

    @Test
    void howLongItIdlesChangesNoPull() {
        RunningEngine hurried = start();
        List<Samples> first = pull(hurried);
        List<Samples> second = pull(hurried);
        RunningEngine patient = start();
        idle(patient, 100);
        assertThat(torque(pull(patient))).isCloseTo(torque(first), within(0.5));
        idle(patient, 700);
        assertThat(torque(pull(patient))).isCloseTo(torque(second), within(0.5));
    }

    @Test
    void itsPullsAreThoseOfTheBench() {
        Bench bench = bench();
        RunningEngine engine = start();
        for (int number = 1; number <= 3; number++) {
            Samples logged = bench.pull(SETTING, PULL).value().orElseThrow().samples();
            List<Samples> rows = new ArrayList<>();
            for (int row = 0; row < logged.rows(); row++) {
                rows.add(logged.slice(row, row + 1));
            }
            assertThat(torque(pull(engine))).isCloseTo(torque(rows), within(0.5));
        }
    }

    @Test
    void oilNeitherJumpsAtAPullNorStaysHotAfterIt() {
        RunningEngine engine = start();
        List<Samples> day = idle(engine, 20);
        day.addAll(pull(engine, LONG));
        day.addAll(idle(engine, 40));
        day.addAll(pull(engine, LONG));
        double[] oil = values(day, Role.OIL_TEMPERATURE);
        for (int row = 1; row < oil.length; row++) {
            assertThat(Math.abs(oil[row] - oil[row - 1])).isLessThan(OIL_JUMP_K);
        }
        double hot = oil[oil.length - 1];
        double[] after = values(idle(engine, 20 * 60), Role.OIL_TEMPERATURE);
        assertThat(after[after.length - 1]).isLessThan(hot - 0.5);
    }

    @Test
    void aThrottleThatClosesInAPullLetsTheEngineDown() {
        RunningEngine engine = start();
        engine.pull(SETTING, PULL);
        idle(engine, 120);
        engine.lift();
        assertThat(engine.isPulling()).isFalse();
        double[] speeds = values(idle(engine, 200), Role.ENGINE_SPEED);
        assertThat(speeds[0]).isGreaterThan(2500);
        assertThat(speeds[speeds.length - 1]).isLessThan(1200);
        double[] vacuum = values(idle(engine, 20), Role.MANIFOLD_PRESSURE);
        assertThat(Arrays.stream(vacuum)).allMatch(pascals -> pascals < 60e3 && pascals > 20e3);
    }
}
