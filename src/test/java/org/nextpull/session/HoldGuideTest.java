package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.nextpull.advice.HoldNow;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;
import org.nextpull.channel.SparkMap;
import org.nextpull.engine.EngineDesign;
import org.nextpull.engine.ExampleEngines;
import org.nextpull.engine.ModelEngine;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.engine.bench.Bench;
import org.nextpull.engine.bench.Brake;
import org.nextpull.engine.bench.Instruments;
import org.nextpull.engine.bench.RunningEngine;
import org.nextpull.engine.bench.WeatherDay;
import org.nextpull.engine.gas.EngineFuel;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/** Held speeds on the model engine, with somebody who does what is said a second later. */
class HoldGuideTest {
    private static final double HZ = 20;
    private static final double REACTION_S = 1;

    private static SweepPlan plan(String change, String to) throws IOException {
        String text = Files.readString(Path.of("sweep-plans", "hillclimb-e10-hold.toml"));
        return PlanText.read(text.replace(change, to), "hold.toml").value().orElseThrow();
    }

    /** What somebody did and saw. */
    private static final class Day {
        final TreeMap<Double, Double> bestByRpm = new TreeMap<>();
        final Set<HoldNow.Step> said = EnumSet.noneOf(HoldNow.Step.class);
        final ModelEngine engine;
        final EngineFuel fuel = EngineFuel.named("e10").value().orElseThrow();
        double loadedS;
        double longestS;
        int plateaus;
        double mostDeg;

        Day(SweepPlan plan, EngineDesign design) {
            engine = ModelEngine.of(design).value().orElseThrow();
            Bench bench = new Bench(
                    Brake.engineBrake(0.16, true),
                    Instruments.usual(
                            HZ,
                            List.of(
                                    Role.TIME,
                                    Role.ENGINE_SPEED,
                                    Role.TORQUE,
                                    Role.THROTTLE,
                                    Role.ADVANCE,
                                    Role.KNOCK_EVENTS,
                                    Role.EXHAUST_TEMPERATURE)),
                    WeatherDay.usual(),
                    7);
            Bench.Setting setting =
                    new Bench.Setting(engine, SparkMap.flat(15), Lambda.of(0.87), fuel, Optional.empty());
            RunningEngine running = RunningEngine.start(
                            bench, setting, new Brake.Program.Acceleration(Span.of(3500, 6750), 300), 7)
                    .value()
                    .orElseThrow();
            run(HoldGuide.of(plan).orElseThrow(), running, setting);
        }

        private void run(HoldGuide guide, RunningEngine running, Bench.Setting setting) {
            HoldNow before = guide.now();
            double saidAtS = 0;
            double loadS = 0;
            while (guide.now().step() != HoldNow.Step.PROVE && running.timeS() < 1500) {
                guide.take(running.row(), running.timeS());
                HoldNow now = guide.now();
                said.add(now.step());
                loadS = running.isHolding() ? loadS + 1 / HZ : 0;
                longestS = Math.max(longestS, loadS);
                loadedS += running.isHolding() ? 1 / HZ : 0;
                if (now.plateaus() > before.plateaus()) {
                    plateaus++;
                }
                boolean isNew = now.step() != before.step()
                        || now.rpm() != before.rpm()
                        || !now.advanceDeg().equals(before.advanceDeg());
                saidAtS = isNew ? running.timeS() : saidAtS;
                before = now;
                if (running.timeS() - saidAtS >= REACTION_S) {
                    doIt(now, running, setting);
                }
            }
        }

        private void doIt(HoldNow now, RunningEngine running, Bench.Setting setting) {
            if (now.step().isClose()) {
                running.lift();
            } else if ((now.step() == HoldNow.Step.GO && !running.isHolding()) || now.step() == HoldNow.Step.SET) {
                double deg = now.advanceDeg().orElseThrow();
                mostDeg = Math.max(mostDeg, deg);
                bestByRpm.merge(now.rpm(), deg, Math::max);
                running.hold(setting.withAdvance(deg), now.rpm());
            }
        }

        double truePeakDeg(double rpm) {
            double best = 0;
            double top = 0;
            for (double deg = 10; deg < 45; deg += 0.25) {
                OperatingPoint point = new OperatingPoint(
                        rpm,
                        Advance.ofDeg(deg),
                        Lambda.of(0.87),
                        fuel,
                        WeatherDay.usual().settled());
                double torque = engine.at(point).value().orElseThrow().torque().newtonMetres();
                best = torque > top ? deg : best;
                top = Math.max(top, torque);
            }
            return best;
        }
    }

    private static EngineDesign calm() {
        return ExampleEngines.hillClimb().withCompressionRatio(9.5);
    }

    @Test
    void threeSpeedsTurnOverInTwoMinutesAtLoad() throws IOException {
        Day day = new Day(plan("", ""), calm());
        assertThat(day.said).contains(HoldNow.Step.CLOSE_DONE).doesNotContain(HoldNow.Step.CLOSE_KNOCK);
        assertThat(day.bestByRpm.keySet()).containsExactly(3750.0, 5000.0, 6250.0);
        assertThat(day.plateaus).isBetween(12, 24);
        assertThat(day.loadedS).isBetween(60.0, 135.0);
        assertThat(day.longestS).isLessThan(47);
        day.bestByRpm.forEach((rpm, deg) -> assertThat(deg - day.truePeakDeg(rpm))
                .as("beyond the peak of " + rpm + " rpm, by a step and what torque hides")
                .isBetween(0.0, 9.0));
    }

    @Test
    void knockEndsTheHoldAtOnceAndTheNextSpeedGoesOn() throws IOException {
        Day day = new Day(plan("", ""), ExampleEngines.hillClimb().withCompressionRatio(12.5));
        assertThat(day.said).contains(HoldNow.Step.CLOSE_KNOCK);
        assertThat(day.bestByRpm.keySet()).containsExactly(3750.0, 5000.0, 6250.0);
        assertThat(day.bestByRpm.get(3750.0)).isLessThanOrEqualTo(day.truePeakDeg(3750) + 4);
    }

    @Test
    void timeAtLoadIsCapped() throws IOException {
        Day day = new Day(plan("hold_most_s = 45", "hold_most_s = 12"), calm());
        assertThat(day.said).contains(HoldNow.Step.CLOSE_TIME);
        assertThat(day.longestS).as("with the way up to the speed").isLessThan(12 + REACTION_S + 5.5);
    }

    @Test
    void anExhaustThatIsAboutToPassItsLimitEndsTheHold() throws IOException {
        Day day = new Day(plan("exhaust_c = 900", "exhaust_c = 760"), calm());
        assertThat(day.said).contains(HoldNow.Step.CLOSE_LIMIT);
    }

    private static Samples rows(double fromS, double seconds, double throttle) {
        return rows(fromS, seconds, throttle, 18.5);
    }

    private static Samples rows(double fromS, double seconds, double throttle, double deg) {
        List<Channel> channels = Stream.of(Role.TIME, Role.ENGINE_SPEED, Role.THROTTLE, Role.ADVANCE, Role.TORQUE)
                .map(Channel::of)
                .toList();
        SamplesBuilder rows = Samples.builder(channels);
        for (double s = 0; s < seconds; s += 1 / HZ) {
            rows.row(1)
                    .set(0, fromS + s)
                    .set(1, 3750)
                    .set(2, throttle)
                    .set(3, deg)
                    .set(4, 180 * throttle);
        }
        return rows.build();
    }

    @Test
    void dataThatStopsUnderLoadAsksForTheThrottleAndGoesOnWithTheSameSpeed() throws IOException {
        HoldGuide guide = HoldGuide.of(plan("", "")).orElseThrow();
        guide.cut();
        assertThat(guide.now().step()).as("at idle there is nothing to close").isEqualTo(HoldNow.Step.GO);
        guide.take(rows(0, 4.5, 1), 0);
        assertThat(guide.now().plateaus()).isEqualTo(1);
        guide.cut();
        assertThat(guide.now().step()).isEqualTo(HoldNow.Step.CLOSE_CUT);
        guide.take(rows(9, 8, 1), 9);
        assertThat(guide.now().step()).as("still at load").isEqualTo(HoldNow.Step.CLOSE_CUT);
        assertThat(guide.now().plateaus())
                .as("the rest is no stretch of its own")
                .isEqualTo(1);
        guide.take(rows(17, 2, 0), 17);
        assertThat(guide.now().step()).isEqualTo(HoldNow.Step.GO);
        assertThat(guide.now().rpm()).isEqualTo(3750);
        assertThat(guide.now().plateaus()).isEqualTo(1);
        assertThat(guide.now().advanceDeg()).hasValue(22.5);
    }

    @Test
    void anotherAdvanceThanAskedIsSaidAndTakenAsItStands() throws IOException {
        HoldGuide guide = HoldGuide.of(plan("", "")).orElseThrow();
        guide.take(rows(0, 4.5, 1), 0);
        assertThat(guide.now().advanceDeg()).hasValue(22.5);
        guide.take(rows(4.5, 3.7, 1), 4.5);
        assertThat(guide.now().other()).as("it takes a moment to set").isEmpty();
        guide.take(rows(8.2, 7.2, 1), 8.2);
        assertThat(guide.now().step()).isEqualTo(HoldNow.Step.SET);
        assertThat(guide.now().other()).contains(new HoldNow.OtherAdvance(22.5, 18.5));
        assertThat(guide.now().plateaus()).as("it was held before").isEqualTo(1);
        guide.take(rows(15.4, 4, 1, 20.5), 15.4);
        assertThat(guide.now().plateaus()).isEqualTo(2);
        assertThat(guide.now().other()).contains(new HoldNow.OtherAdvance(22.5, 20.5));
        assertThat(guide.now().advanceDeg()).as("a step beyond what stood").hasValue(24.5);
        guide.take(rows(19.4, 1, 1, 24.3), 19.4);
        assertThat(guide.now().other()).as("it is set now").isEmpty();
        guide.take(rows(20.4, 3, 1, 24.3), 20.4);
        assertThat(guide.now().plateaus()).isEqualTo(3);
    }

    @Test
    void moreAdvanceThanAStepBeyondWhatRanCleanAsksForTheThrottle() throws IOException {
        HoldGuide guide = HoldGuide.of(plan("", "")).orElseThrow();
        guide.take(rows(0, 4.5, 1), 0);
        guide.take(rows(4.5, 0.3, 1, 27.5), 4.5);
        assertThat(guide.now().step().isClose()).as("a moment is no setting").isFalse();
        guide.take(rows(4.8, 0.4, 1, 27.5), 4.8);
        assertThat(guide.now().step()).isEqualTo(HoldNow.Step.CLOSE_ADVANCE);
        assertThat(guide.now().other()).contains(new HoldNow.OtherAdvance(22.5, 27.5));
        guide.take(rows(5.2, 2, 0, 22.5), 5.2);
        assertThat(guide.now().step()).isEqualTo(HoldNow.Step.GO);
        assertThat(guide.now().rpm()).isEqualTo(3750);
        assertThat(guide.now().advanceDeg()).hasValue(22.5);
    }

    private static Samples without(Role missing) {
        SamplesBuilder rows =
                Samples.builder(Stream.of(Role.TIME, Role.ENGINE_SPEED, Role.THROTTLE, Role.ADVANCE, Role.TORQUE)
                        .filter(role -> role != missing)
                        .map(Channel::of)
                        .toList());
        Map<Role, Double> values =
                Map.of(Role.ENGINE_SPEED, 3750.0, Role.THROTTLE, 1.0, Role.ADVANCE, 18.5, Role.TORQUE, 180.0);
        for (double s = 0; s < 7; s += 1 / HZ) {
            SamplesBuilder row = rows.row(1).set(0, s);
            int column = 1;
            for (Role role : List.of(Role.ENGINE_SPEED, Role.THROTTLE, Role.ADVANCE, Role.TORQUE)) {
                if (role != missing) {
                    row.set(column++, Objects.requireNonNull(values.get(role)));
                }
            }
        }
        return rows.build();
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"THROTTLE", "ADVANCE", "TORQUE"})
    void aLogWithoutWhatTheGuideGoesByIsSaid(Role missing) throws IOException {
        HoldGuide guide = HoldGuide.of(plan("", "")).orElseThrow();
        guide.take(without(missing), 0);
        assertThat(guide.now().step()).isEqualTo(HoldNow.Step.CLOSE_UNSEEN);
    }
}
