package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.Role;
import org.nextpull.channel.SourceDescription;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.BenchLog;
import org.nextpull.session.Days.Named;

/** A replay goes on from what it knew after the pull before, and says what a day that ended there says, made from its pulls anew. */
class ReplayTest {
    private static final Channel KNOCK = Channel.of(Role.KNOCK_EVENTS);

    private static void saysWhatEachDayThatEndedThereSays(SessionInput input) {
        List<SourcePulls> sources = Session.read(input);
        MeasuredDay measured = MeasuredDay.of(input, sources);
        Replay replay = Replay.of(input, sources);
        assertThat(replay.steps()).hasSameSizeAs(measured.measured());
        for (int pulls = 1; pulls <= replay.steps().size(); pulls++) {
            Verdict anew =
                    Session.conclude(input, measured.first(pulls)).verdict().orElseThrow();
            Verdict said = replay.steps().get(pulls - 1).verdict();
            assertThat(said.advice()).as("pull " + pulls).isEqualTo(anew.advice());
            assertThat(said.chosen()).as("pull " + pulls).isEqualTo(anew.chosen());
        }
        assertThat(replay.whole().verdict())
                .isEqualTo(Session.conclude(input, measured).verdict());
    }

    /** The same of a session that goes on, in which a pull is struck now and then and counts again. */
    private static void aSessionThatGoesOnSaysTheSame(SessionInput input) {
        SourcePulls log = Session.read(input).get(0);
        MeasureCache once = new MeasureCache();
        for (int pulls = 1; pulls <= log.candidates().size(); pulls++) {
            List<SourcePulls> sources =
                    List.of(log.withCandidates(log.candidates().subList(0, pulls)));
            assertThat(Session.evaluate(input, sources, once).verdict())
                    .as("pull " + pulls)
                    .isEqualTo(Session.evaluate(input, sources).verdict());
            if (pulls % 5 == 0) {
                SessionInput struck =
                        input.withAmendments(new Amendments(Map.of(pulls - 2, "throttle slipped"), Set.of(), Map.of()));
                assertThat(Session.evaluate(struck, sources, once).verdict())
                        .as("pull " + pulls + ", one of them struck")
                        .isEqualTo(Session.evaluate(struck, sources).verdict());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"hillclimb-e10-day", "hillclimb-e10-map", "hillclimb-knock"})
    void ofAShippedLog(String name) throws IOException {
        SweepPlan plan = Days.plan(Files.readString(Path.of("sweep-plans", name + ".toml")));
        saysWhatEachDayThatEndedThereSays(SessionInput.of(
                plan,
                new LogFiles(plan.log().hints())
                        .read(List.of("sample-logs/" + name + ".csv")).logs().stream()
                                .map(Input.Log::recording)
                                .toList(),
                List.of()));
    }

    /** Two days with settings anew and again, knock, and pulls that the operator struck or whose knock was lifted. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void ofRandomDays(long seed) {
        Random random = new Random(seed);
        List<ResultTable> tables = new ArrayList<>();
        Map<Integer, String> struck = new HashMap<>();
        Set<Integer> lifted = new HashSet<>();
        for (String date : List.of("2024-05-01", "2024-05-02")) {
            List<Days.Run> runs = new ArrayList<>();
            for (int pull = 0; pull < 14; pull++) {
                double deg = 20 + 2 * random.nextInt(2 + pull / 2);
                double torque = 190 * (1 - 5e-4 * (deg - 26) * (deg - 26) + 0.001 * random.nextGaussian());
                KnockMark knock = deg > 27 && random.nextInt(4) == 0 ? KnockMark.HEARD : KnockMark.NONE;
                runs.add(new Days.Run(deg, torque, knock));
                int number = 14 * tables.size() + runs.size();
                if (seed > 1 && random.nextInt(8) == 0) {
                    struck.put(number, "throttle slipped");
                } else if (seed > 1 && knock == KnockMark.HEARD && random.nextBoolean()) {
                    lifted.add(number);
                }
            }
            tables.add(dated(date, Days.table(runs)));
        }
        saysWhatEachDayThatEndedThereSays(SessionInput.of(Days.timing(), List.of(), tables)
                .withAmendments(new Amendments(struck, lifted, Map.of())));
    }

    private static ResultTable dated(String date, ResultTable table) {
        return new ResultTable(
                new SourceDescription(date + ".csv", "UTF-8", ",", '.', List.of()), table.rows(), table.rowCount());
    }

    /** An ignition that takes out advance in some pulls, which often only later pulls tell. */
    @ParameterizedTest
    @ValueSource(longs = {1, 3, 6})
    void ofADayOnWhichLaterPullsTellOfKnockInEarlierOnes(long seed) {
        Random random = new Random(seed);
        BenchLog log = new BenchLog(20, seed).noise(2, 0.2);
        List<Double> deg = new ArrayList<>();
        List<Integer> ends = new ArrayList<>();
        List<AskedSetting> asked = new ArrayList<>();
        for (int pull = 0; pull < 16; pull++) {
            deg.add(20 + 2.0 * random.nextInt(Math.min(5, 1 + pull)));
            asked.add(Days.asked(Optional.empty(), OptionalInt.of(pull + 1), OptionalInt.empty(), deg.get(pull)));
            double off = deg.get(pull) - 25;
            Days.pull(log.advance(deg.get(pull)), 1 - 7e-4 * off * off);
            ends.add(log.rows());
        }
        int pull = 0;
        boolean takesOut = false;
        for (int row = 0; row < log.rows(); row++) {
            if (row == ends.get(pull)) {
                pull++;
                takesOut = deg.get(pull) > 25 && random.nextInt(3) > 0;
            }
            double rpm = log.value(row, BenchLog.SPEED);
            if (takesOut && rpm > 3900 && rpm < 4400) {
                log.set(row, BenchLog.ADVANCE, deg.get(pull) - 4);
            }
        }
        asked.replaceAll(one -> one.withKnock(KnockMark.NOT_MEASURED));
        SessionInput input = Days.ofLogs(Days.timing(), new Named("day.csv", log.with(KNOCK, cells -> 0)))
                .withSettings(asked);
        saysWhatEachDayThatEndedThereSays(input);
        aSessionThatGoesOnSaysTheSame(input);
    }
}
