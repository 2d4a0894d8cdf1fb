package org.nextpull.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.alarm.Alarm.Event.Kind;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.unit.Temperature;

class AlarmWatchTest {
    private static final double NOTHING = Double.NaN;
    private static final double NO_CELSIUS = 273.15;

    private static AlarmWatch.Rules rules(String limits) {
        return plan("[band]\nfrom_rpm = 3000\nto_rpm = 6000\n[limits]\n" + limits.replace(';', '\n'));
    }

    private static SweepPlan limits(String limits) {
        return PlanText.read("[limits]\n" + limits.replace(';', '\n'), "plan.toml")
                .value()
                .orElseThrow();
    }

    private static AlarmWatch.Rules plan(String text) {
        return AlarmWatch.Rules.of(PlanText.read(text, "plan.toml").value().orElseThrow());
    }

    private static Alarm only(List<Alarm> alarms) {
        assertThat(alarms).hasSize(1);
        return alarms.get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "exhaust_c = 880, EXHAUST_TEMPERATURE, EXHAUST, 1153.15, 1153.16",
        "coolant_c = 105, COOLANT_TEMPERATURE, COOLANT, 378.15, 378.16",
        "oil_c = 130, OIL_TEMPERATURE, OIL, 403.15, 403.16",
        "inlet_c = 55, INLET_AIR_TEMPERATURE, INLET_AIR, 328.15, 328.16",
        "oil_pressure_kpa = 250, OIL_PRESSURE, OIL_PRESSURE, 250000, 249999",
        "fuel_pressure_kpa = 280, FUEL_PRESSURE, FUEL_PRESSURE, 280000, 279999",
        "injector_duty_percent = 85, INJECTOR_DUTY, INJECTOR_DUTY, 0.85, 0.851",
        "most_rpm = 7000, ENGINE_SPEED, SPEED, 7000, 7001",
        "boost_kpa = 90, MANIFOLD_PRESSURE, BOOST, 191325, 191326",
        "lean_lambda = 0.95;lean_for_s = 0, LAMBDA, LEAN, 0.95, 0.951",
    })
    void aLimitIsMetBeyondItsValueAndNotAtIt(String limits, Role role, Limit limit, double at, double beyond) {
        Rows calm = Rows.bare(20).with(Role.THROTTLE, row -> 1).with(role, row -> at);
        assertThat(AlarmWatch.over(rules(limits), calm.samples())).isEmpty();
        Rows rows = Rows.bare(20).with(Role.THROTTLE, row -> 1).with(role, row -> row == 12 ? beyond : at);
        Alarm alarm = only(AlarmWatch.over(rules(limits), rows.samples()));
        assertThat(alarm.limit()).isEqualTo(limit);
        assertThat(alarm.channel()).isEqualTo(Channel.of(role));
        assertThat(alarm.since()).isEqualTo(new Alarm.RowPlace(14, OptionalDouble.of(1.2)));
        assertThat(alarm.rows()).isEqualTo(1);
        assertThat(alarm.worst()).isCloseTo(limit == Limit.BOOST ? 90_001 : beyond, within(1e-6));
    }

    @Test
    void anAlarmSoundsOnTheVeryRow() {
        AlarmWatch watch = new AlarmWatch(rules("exhaust_c = 880"));
        Rows rows = Rows.ofPull(10).with(Role.EXHAUST_TEMPERATURE, row -> NO_CELSIUS + 850 + 10 * row);
        Samples samples = rows.samples();
        for (int row = 0; row < 4; row++) {
            assertThat(watch.take(samples.slice(row, row + 1))).isEmpty();
        }
        List<Alarm.Event> events = watch.take(samples.slice(4, 5));
        assertThat(events).extracting(Alarm.Event::kind).containsExactly(Kind.SOUNDED);
        assertThat(events.get(0).at().line()).isEqualTo(6);
        assertThat(watch.sounding()).hasSize(1);
    }

    @Test
    void headroomIsTheWorstSensorAgainstItsLimit() {
        AlarmWatch watch = new AlarmWatch(rules("exhaust_c = 900;oil_pressure_kpa = 250"));
        watch.take(Rows.ofPull(10)
                .with(Role.EXHAUST_TEMPERATURE, row -> NO_CELSIUS + 800)
                .with(new Channel(Role.EXHAUST_TEMPERATURE, 2), row -> NO_CELSIUS + 855)
                .with(Role.OIL_PRESSURE, row -> 312_500)
                .samples());
        assertThat(watch.headroom())
                .extracting(Alarm.Headroom::limit)
                .containsExactly(Limit.EXHAUST, Limit.OIL_PRESSURE);
        assertThat(watch.headroom().get(0).used()).isCloseTo(0.95, within(1e-9));
        assertThat(watch.headroom().get(1).used()).isCloseTo(0.8, within(1e-9));
    }

    @Test
    void theWorstOfAStretchIsKept() {
        Rows rows = Rows.ofPull(30)
                .with(Role.EXHAUST_TEMPERATURE, row -> NO_CELSIUS + 900 - Math.abs(row - 10))
                .with(new Channel(Role.EXHAUST_TEMPERATURE, 2), row -> NO_CELSIUS + (row == 11 ? 905 : 700));
        Alarm alarm = only(AlarmWatch.over(rules("exhaust_c = 895"), rows.samples()));
        assertThat(alarm.worst()).isCloseTo(NO_CELSIUS + 905, within(1e-9));
        assertThat(alarm.channel()).isEqualTo(new Channel(Role.EXHAUST_TEMPERATURE, 2));
        assertThat(alarm.since().line()).isEqualTo(2 + 6);
        assertThat(alarm.until().line()).isEqualTo(2 + 14);
    }

    @Test
    void aValueThatTremblesAboutItsLimitIsOneAlarm() {
        Rows rows = Rows.ofPull(40).with(Role.OIL_TEMPERATURE, row -> NO_CELSIUS + (row % 2 == 0 ? 129 : 131));
        assertThat(AlarmWatch.over(rules("oil_c = 130"), rows.samples())).hasSize(1);
    }

    @Test
    void anAlarmClearsAfterASecondWithinAndMaySoundAgain() {
        Rows rows = Rows.ofPull(40).with(Role.OIL_TEMPERATURE, row -> NO_CELSIUS + (row == 5 || row == 30 ? 131 : 120));
        List<Alarm.Event> events = new AlarmWatch(rules("oil_c = 130")).take(rows.samples());
        assertThat(events).extracting(Alarm.Event::kind).containsExactly(Kind.SOUNDED, Kind.CLEARED, Kind.SOUNDED);
        assertThat(events.get(1).at().line()).isEqualTo(2 + 15);
    }

    @ParameterizedTest
    @CsvSource({"3, 0", "4, 1", "9, 1"})
    void leanMustLastAsLongAsThePlanSays(int rowsLean, int alarms) {
        Rows rows = Rows.ofPull(30).with(Role.LAMBDA, row -> row >= 10 && row < 10 + rowsLean ? 1.02 : 0.87);
        assertThat(AlarmWatch.over(rules("lean_lambda = 0.95"), rows.samples())).hasSize(alarms);
    }

    /** One good reading in so many does not make a mixture rich; one lean one does not make it lean. */
    @ParameterizedTest
    @CsvSource({"5, 1, 1", "4, 1, 1", "5, 4, 0", "2, 1, 0", "4, 3, 0"})
    void aGoodReadingTakesBackItsOwnTimeAndNoMore(int of, int good, int alarms) {
        Rows rows = Rows.ofPull(30).with(Role.LAMBDA, row -> row % of < of - good ? 1.10 : 0.88);
        assertThat(AlarmWatch.over(rules("lean_lambda = 0.95"), rows.samples())).hasSize(alarms);
    }

    /** What the sensor reads until its delay is over was burnt before the throttle opened. */
    @ParameterizedTest
    @CsvSource({"'', 7, 0", "'', 13, 1", "lambda_delay_s = 0.2, 5, 0", "lambda_delay_s = 0.2, 7, 1"})
    void aTipInIsNotLeanForTheDelayOfTheSensor(String log, int rowsLean, int alarms) {
        Rows rows = Rows.ofPull(30)
                .with(Role.THROTTLE, row -> row < 4 ? 0.2 : 1)
                .with(Role.LAMBDA, row -> row < 4 + rowsLean ? 1.5 : 0.88);
        AlarmWatch.Rules rules =
                plan("[band]\nfrom_rpm = 3000\nto_rpm = 6000\n[limits]\nlean_lambda = 0.95\n[log]\n" + log);
        assertThat(AlarmWatch.over(rules, rows.samples())).hasSize(alarms);
    }

    @Test
    void aSlowSensorDoesNotStartTheLeanTimeAfresh() {
        Rows rows = Rows.ofPull(30).with(Role.LAMBDA, row -> row % 2 == 0 ? 1.02 : NOTHING);
        assertThat(AlarmWatch.over(rules("lean_lambda = 0.95"), rows.samples())).hasSize(1);
    }

    @Test
    void overrunIsNotLean() {
        Rows shut = Rows.ofPull(30).with(Role.THROTTLE, row -> 0.05).with(Role.LAMBDA, row -> 2);
        assertThat(AlarmWatch.over(rules("lean_lambda = 0.95"), shut.samples())).isEmpty();
        Rows noThrottle = Rows.bare(60)
                .with(Role.ENGINE_SPEED, row -> row < 30 ? 3000 + 100.0 * row : 6000 - 100.0 * (row - 30))
                .with(Role.LAMBDA, row -> row < 30 ? 0.87 : 2);
        assertThat(AlarmWatch.over(rules("lean_lambda = 0.95"), noThrottle.samples()))
                .isEmpty();
        Rows torqueOnly = Rows.bare(60)
                .with(Role.ENGINE_SPEED, row -> 4000)
                .with(Role.TORQUE, row -> row < 30 ? 200 : -20)
                .with(Role.LAMBDA, row -> row < 30 ? 0.87 : 2);
        assertThat(AlarmWatch.over(rules("lean_lambda = 0.95"), torqueOnly.samples()))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"torque", "speed", "nothing"})
    void leanIsHeardWithoutAThrottleToo(String known) {
        Rows rows = Rows.bare(30).with(Role.LAMBDA, row -> row > 15 ? 1.1 : 0.87);
        if (known.equals("torque")) {
            rows.with(Role.TORQUE, row -> 190 + row);
        } else if (known.equals("speed")) {
            rows.with(Role.ENGINE_SPEED, row -> 3000 + 50.0 * row);
        }
        assertThat(AlarmWatch.over(rules("lean_lambda = 0.95"), rows.samples())).hasSize(1);
    }

    /** Rule 9: of several lambda sensors the leanest counts, not their mean. */
    @Test
    void theLeanestOfSeveralSensorsCounts() {
        Channel second = new Channel(Role.LAMBDA, 2);
        Rows rows = Rows.ofPull(30).with(Role.LAMBDA, row -> 0.82).with(second, row -> 0.97);
        Alarm alarm = only(AlarmWatch.over(rules("lean_lambda = 0.95"), rows.samples()));
        assertThat(alarm.channel()).isEqualTo(second);
        assertThat(alarm.worst()).isEqualTo(0.97);
    }

    /** Rule 5: retard heats the exhaust; only knock asks for it, and heat asks for cooling. */
    @ParameterizedTest
    @EnumSource(Limit.class)
    void onlyKnockCounselsRetard(Limit limit) {
        Counsel counsel = Counsel.of(limit);
        assertThat(counsel.next() == Counsel.Next.LESS_ADVANCE).isEqualTo(limit == Limit.KNOCK);
        assertThat(counsel.name()).startsWith("LIFT");
    }

    /** Rule 5: lift, cool, one step richer. */
    @Test
    void anExhaustTooHotAsksToCoolAndForRicher() {
        assertThat(Counsel.of(Limit.EXHAUST)).isEqualTo(Counsel.LIFT_AND_COOL_THEN_RICHER);
        assertThat(Counsel.of(Limit.EXHAUST).next()).isEqualTo(Counsel.Next.RICHER);
    }

    /** Rule 2: a pull that is cut short keeps its knock and its limits met. */
    @Test
    void aPullCutShortKeepsItsAlarms() {
        Rows cut = Rows.bare(12)
                .with(Role.THROTTLE, row -> row < 8 ? 1 : 0)
                .with(Role.ENGINE_SPEED, row -> 3000 + 100.0 * row)
                .with(Role.KNOCK_EVENTS, row -> row == 6 ? 2 : 0)
                .with(Role.EXHAUST_TEMPERATURE, row -> NO_CELSIUS + (row == 7 ? 890 : 850));
        assertThat(AlarmWatch.over(rules("exhaust_c = 880"), cut.samples()))
                .extracting(Alarm::limit)
                .containsExactly(Limit.KNOCK, Limit.EXHAUST);
    }

    @Test
    void oneEventIsKnockUnlessThePlanNamesANumber() {
        Rows rows = Rows.ofPull(20).with(Role.KNOCK_EVENTS, row -> row == 5 || row == 9 ? 1 : 0);
        assertThat(only(AlarmWatch.over(rules("most_rpm = 9000"), rows.samples()))
                        .worst())
                .isEqualTo(2);
        Alarm second = only(AlarmWatch.over(rules("knock_events = 2"), rows.samples()));
        assertThat(second.since().line()).isEqualTo(2 + 9);
        assertThat(AlarmWatch.over(rules("knock_events = 3"), rows.samples())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1, 2900", "0.94, 4500", "0.949, 2000", "0.4, 1500"})
    void knockUnderLoadSoundsAtItsFirstCountAtWhateverSpeedAndThrottle(double throttle, double rpm) {
        Rows rows = Rows.bare(20)
                .with(Role.THROTTLE, row -> throttle)
                .with(Role.ENGINE_SPEED, row -> rpm)
                .with(Role.KNOCK_EVENTS, row -> row == 7 ? 1 : 0);
        Alarm alarm = only(AlarmWatch.over(rules(""), rows.samples()));
        assertThat(alarm.limit()).isEqualTo(Limit.KNOCK);
        assertThat(alarm.since().line()).isEqualTo(9);
    }

    @Test
    void theManifoldTellsTheLoadTooAndIdleIsNone() {
        Rows rows = Rows.bare(20).with(Role.ENGINE_SPEED, row -> 2500).with(Role.KNOCK_EVENTS, row -> row == 7 ? 1 : 0);
        assertThat(AlarmWatch.over(
                        rules(""),
                        rows.with(Role.MANIFOLD_PRESSURE, row -> 78_000).samples()))
                .hasSize(1);
        assertThat(AlarmWatch.over(
                        rules(""),
                        rows.with(Role.MANIFOLD_PRESSURE, row -> 40_000).samples()))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e9, -1, -5000})
    void aCountThatCannotBeIsNoKnock(double count) {
        Rows rows = Rows.ofPull(20).with(Role.KNOCK_EVENTS, row -> row == 7 ? count : 0);
        assertThat(AlarmWatch.over(rules(""), rows.samples())).isEmpty();
    }

    @Test
    void aLevelAboveItsLimitIsOneEventARow() {
        Rows rows = Rows.ofPull(20).with(Role.KNOCK_LEVEL, row -> row == 7 || row == 8 ? 2.6 : 2.5);
        assertThat(AlarmWatch.over(rules("knock_events = 1"), rows.samples())).isEmpty();
        Alarm alarm = only(AlarmWatch.over(rules("knock_level = 2.5"), rows.samples()));
        assertThat(alarm.channel()).isEqualTo(Channel.of(Role.KNOCK_LEVEL));
        assertThat(alarm.worst()).isEqualTo(2);
    }

    @Test
    void knockWithoutLoadDoesNotCount() {
        Rows rows = Rows.ofPull(50)
                .with(Role.THROTTLE, row -> row < 10 || row > 40 ? 0.39 : 1)
                .with(Role.KNOCK_EVENTS, row -> row < 10 || row > 40 ? 5 : 0);
        assertThat(AlarmWatch.over(rules("knock_events = 1"), rows.samples())).isEmpty();
    }

    @Test
    void eachPullIsCountedByItself() {
        Rows rows = Rows.bare(80)
                .with(Role.THROTTLE, row -> row % 40 < 15 ? 0 : 1)
                .with(Role.ENGINE_SPEED, row -> 2500 + 100.0 * (row % 40))
                .with(Role.KNOCK_EVENTS, row -> row % 40 == 20 ? 2 : 0);
        assertThat(AlarmWatch.over(rules("knock_events = 3"), rows.samples())).isEmpty();
        assertThat(AlarmWatch.over(rules("knock_events = 2"), rows.samples())).hasSize(2);
    }

    @Test
    void knockThatGoesOnIsSaidEachTime() {
        Rows rows = Rows.ofPull(20).with(Role.KNOCK_EVENTS, row -> row >= 5 && row < 9 ? 1 : 0);
        List<Alarm.Event> events = new AlarmWatch(rules("knock_events = 2")).take(rows.samples());
        assertThat(events).extracting(Alarm.Event::kind).containsExactly(Kind.SOUNDED, Kind.WORSE, Kind.WORSE);
        assertThat(events.get(2).alarm().worst()).isEqualTo(4);
    }

    @Test
    void atAHeldSpeedQuietEndsTheCount() {
        Rows rows = Rows.bare(120)
                .with(Role.ENGINE_SPEED, row -> 4000)
                .with(Role.KNOCK_EVENTS, row -> row == 10 || row == 60 ? 1 : 0);
        assertThat(AlarmWatch.over(rules("knock_events = 1"), rows.samples()))
                .extracting(alarm -> alarm.since().line())
                .containsExactly(12L, 62L);
    }

    @Test
    void oilPressureAtIdleAndAnEngineAtRestAreNoAlarm() {
        Rows idle =
                Rows.bare(20).with(Role.ENGINE_SPEED, row -> row < 10 ? 0 : 900).with(Role.OIL_PRESSURE, row -> 80_000);
        assertThat(AlarmWatch.over(rules("oil_pressure_kpa = 250"), idle.samples()))
                .isEmpty();
        Rows lifted = Rows.ofPull(20).with(Role.THROTTLE, row -> 0).with(Role.OIL_PRESSURE, row -> 80_000);
        assertThat(AlarmWatch.over(rules("oil_pressure_kpa = 250"), lifted.samples()))
                .hasSize(1);
    }

    @Test
    void boostIsCountedFromTheBarometer() {
        String limits = "boost_kpa = 80";
        Rows high = Rows.ofPull(20).with(Role.MANIFOLD_PRESSURE, row -> 170_000).with(Role.BAROMETER, row -> 85_000);
        assertThat(only(AlarmWatch.over(rules(limits), high.samples())).worst()).isEqualTo(85_000);
        Rows low = Rows.ofPull(20).with(Role.MANIFOLD_PRESSURE, row -> 170_000);
        assertThat(AlarmWatch.over(rules(limits), low.samples())).isEmpty();
        AlarmWatch.Rules fromPlan = plan("[air]\nbaro_kpa = 85\n[limits]\nboost_kpa = 80");
        assertThat(AlarmWatch.over(fromPlan, low.samples())).hasSize(1);
    }

    @Test
    void theSpeedLimitHoldsFromTheRollerToo() {
        AlarmWatch.Rules rules = plan("""
                [dyno]
                kind = "chassis-inertia"
                roller_inertia_kg_m2 = 20
                engine_rev_per_roller_rev = 4
                [limits]
                most_rpm = 6000
                """);
        Rows rows = Rows.bare(20).with(Role.ROLLER_SPEED, row -> 1400 + 10 * row);
        Alarm alarm = only(AlarmWatch.over(rules, rows.samples()));
        assertThat(alarm.worst()).isEqualTo(4 * 1590);
        assertThat(alarm.channel()).isEqualTo(Channel.of(Role.ROLLER_SPEED));
    }

    @Test
    void aTimeThatRunsBackwardsBeginsAnotherRecording() {
        Rows rows = Rows.ofPull(20)
                .with(Role.TIME, row -> row < 10 ? row / 10.0 : (row - 10) / 10.0)
                .with(Role.ENGINE_SPEED, row -> 4000)
                .with(Role.KNOCK_EVENTS, row -> row == 8 || row == 12 ? 1 : 0);
        assertThat(AlarmWatch.over(rules("knock_events = 2"), rows.samples())).isEmpty();
    }

    @Test
    void withoutATimeAnAlarmDoesNotWait() {
        Rows rows = Rows.withoutTime(20)
                .with(Role.THROTTLE, row -> 1)
                .with(Role.LAMBDA, row -> row == 10 || row == 11 ? 1.1 : 0.87);
        Alarm alarm = only(AlarmWatch.over(rules("lean_lambda = 0.95"), rows.samples()));
        assertThat(alarm.since().timeS()).isEmpty();
        assertThat(alarm.rows()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void theSameRowsGiveTheSameEventsHoweverTheyAreCut(long seed) {
        Random random = new Random(seed);
        double[] noise = random.doubles(400).toArray();
        Samples samples = Rows.bare(400)
                .with(Role.THROTTLE, row -> row % 100 < 70 ? 1 : 0)
                .with(Role.ENGINE_SPEED, row -> 2500 + 50.0 * (row % 100))
                .with(Role.KNOCK_EVENTS, row -> noise[row] > 0.97 ? 1 : 0)
                .with(Role.LAMBDA, row -> noise[row] > 0.9 ? NOTHING : 0.9 + 0.08 * noise[(row / 7) % 400])
                .with(Role.OIL_TEMPERATURE, row -> NO_CELSIUS + 120 + 12 * noise[(row / 15) % 400])
                .samples();
        AlarmWatch.Rules rules = rules("knock_events = 2;lean_lambda = 0.94;oil_c = 128");
        List<Alarm.Event> whole = new AlarmWatch(rules).take(samples);
        AlarmWatch watch = new AlarmWatch(rules);
        List<Alarm.Event> cut = new ArrayList<>();
        for (int from = 0; from < samples.rows(); ) {
            int to = Math.min(samples.rows(), from + 1 + random.nextInt(40));
            cut.addAll(watch.take(samples.slice(from, to)));
            from = to;
        }
        assertThat(whole).isNotEmpty();
        assertThat(cut).isEqualTo(whole);
    }

    @Test
    void aLimitThatNothingIsLoggedForIsNamed() {
        SweepPlan plan = limits("exhaust_c = 880;most_rpm = 7000;lean_lambda = 0.95;boost_kpa = 80;knock_events = 1");
        List<Channel> channels = List.of(
                Channel.of(Role.ENGINE_SPEED), Channel.of(Role.AIR_FUEL_RATIO), Channel.of(Role.MANIFOLD_PRESSURE));
        List<Finding> findings = AlarmWatch.unwatched(plan, channels, Place.inFile("day.csv"));
        assertThat(findings)
                .extracting(
                        finding -> finding.code() + " " + finding.text("limit").orElse(""))
                .containsExactly(
                        "LIMIT_NOT_WATCHED knock",
                        "LIMIT_NOT_WATCHED lean",
                        "LIMIT_NOT_WATCHED exhaust",
                        "BOOST_WITHOUT_BAROMETER ");
        assertThat(AlarmWatch.unwatched(limits("most_rpm = 7000"), channels, Place.nowhere()))
                .isEmpty();
    }

    @Test
    void everyLimitThatAPlanSetsAndALogHasNotIsNamed() {
        SweepPlan all = limits(
                "knock_events = 1;lean_lambda = 0.95;exhaust_c = 880;coolant_c = 105;oil_c = 130;inlet_c = 50;"
                        + "oil_pressure_kpa = 250;fuel_pressure_kpa = 250;boost_kpa = 80;most_rpm = 7000;injector_duty_percent = 85");
        assertThat(AlarmWatch.unwatched(all, List.of(), Place.nowhere()))
                .extracting(finding -> finding.text("limit").orElseThrow())
                .containsExactlyInAnyOrderElementsOf(
                        List.of(Limit.values()).stream().map(Limit::id).toList());
        assertThat(AlarmWatch.unwatched(limits("knock_margin_deg = 2"), List.of(), Place.nowhere()))
                .isEmpty();
    }

    @Test
    void anotherRecordingEndsEveryAlarm() {
        AlarmWatch watch = new AlarmWatch(rules("oil_c = 130;most_rpm = 7000"));
        Rows hot = Rows.ofPull(20)
                .with(Role.ENGINE_SPEED, row -> 7100)
                .with(Role.OIL_TEMPERATURE, row -> NO_CELSIUS + 131);
        assertThat(watch.take(hot.samples())).extracting(Alarm.Event::kind).containsOnly(Kind.SOUNDED);
        assertThat(watch.sounding()).extracting(Alarm::counsel).containsExactly(Counsel.LIFT_AND_COOL, Counsel.LIFT);
        Rows next = Rows.ofPull(5).with(Role.OIL_TEMPERATURE, row -> NO_CELSIUS + 90);
        assertThat(watch.take(next.samples()))
                .extracting(Alarm.Event::kind)
                .containsExactly(Kind.CLEARED, Kind.CLEARED);
        assertThat(watch.sounding()).isEmpty();
    }

    @Test
    void aLimitChangedOnTheDayHoldsFromThen() {
        AlarmWatch.Rules strict = rules("oil_c = 130");
        AlarmWatch.Rules wide = strict.withLimits(rules("oil_c = 140").limits());
        Rows rows = Rows.ofPull(20).with(Role.OIL_TEMPERATURE, row -> NO_CELSIUS + 135);
        assertThat(AlarmWatch.over(strict, rows.samples())).hasSize(1);
        assertThat(AlarmWatch.over(wide, rows.samples())).isEmpty();
    }

    @Test
    void everyLimitHasItsOwnChannel() {
        List<Role> roles = List.of(Limit.values()).stream().map(Limit::role).toList();
        assertThat(roles).doesNotHaveDuplicates();
    }

    @Test
    void aThermocoupleStillRisingAtTheEndIsSaid() {
        // a first-order lag of 2.5 s answering a step of 300 K, seen for 4 s: its slope is then 300/2.5 exp(-4/2.5) K/s
        Rows rows =
                Rows.ofPull(41).with(Role.EXHAUST_TEMPERATURE, row -> 900 + 300 * (1 - Math.exp(-row / 10.0 / 2.5)));
        List<Finding> findings = ExhaustStillRising.check(rows.samples(), Optional.empty(), Place.ofPull(3));
        assertThat(findings).extracting(Finding::code).containsExactly(FindingCode.EXHAUST_STILL_RISING);
        double slope = 300 / 2.5 * Math.exp(-3.5 / 2.5);
        assertThat(findings.get(0).number("kelvins_per_second").orElseThrow()).isCloseTo(slope, within(0.05 * slope));
        assertThat(findings.get(0).place().pull()).hasValue(3);
        assertThat(findings.get(0).severity()).isEqualTo(Finding.Severity.NOTE);
        // it shows 1139 K then and the gas is at 1200 K, of which a lag of 3 s tells 1212 K
        assertThat(ExhaustStillRising.check(rows.samples(), Optional.of(Temperature.ofKelvins(1195)), Place.nowhere()))
                .extracting(Finding::severity)
                .containsExactly(Finding.Severity.WARNING);
        assertThat(ExhaustStillRising.check(rows.samples(), Optional.of(Temperature.ofKelvins(1230)), Place.nowhere()))
                .extracting(Finding::severity)
                .containsExactly(Finding.Severity.NOTE);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aSettledOrNoisyThermocoupleIsNotCalledRising(long seed) {
        Random random = new Random(seed);
        Rows settled = Rows.ofPull(60).with(Role.EXHAUST_TEMPERATURE, row -> 1150 + 4 * random.nextGaussian());
        assertThat(ExhaustStillRising.check(settled.samples(), Optional.empty(), Place.nowhere()))
                .isEmpty();
        Rows falling = Rows.ofPull(60).with(Role.EXHAUST_TEMPERATURE, row -> 1150 - 2.0 * row);
        assertThat(ExhaustStillRising.check(falling.samples(), Optional.empty(), Place.nowhere()))
                .isEmpty();
        Rows few = Rows.ofPull(3).with(Role.EXHAUST_TEMPERATURE, row -> 1150 + 20.0 * row);
        assertThat(ExhaustStillRising.check(few.samples(), Optional.empty(), Place.nowhere()))
                .isEmpty();
    }
}
