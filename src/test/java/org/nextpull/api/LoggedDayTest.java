package org.nextpull.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.advice.Action;
import org.nextpull.channel.Role;
import org.nextpull.compare.Comparison;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.unit.Torque;
import org.nextpull.unit.Unit;

class LoggedDayTest {
    private static final List<SampledColumn> COLUMNS = List.of(
            SampledColumn.of(Role.TIME, Unit.SECOND),
            SampledColumn.of(Role.ENGINE_SPEED, Unit.RPM),
            SampledColumn.of(Role.TORQUE, Unit.NEWTON_METRE),
            SampledColumn.of(Role.ADVANCE, Unit.DEGREE));
    private static final String PLAN = """
            [engine]
            name = "invented two-litre"
            displacement_l = 2.0
            [dyno]
            kind = "engine-brake"
            torque_at = "crank"
            inertia_in_log = true
            [air]
            standard = "none"
            [band]
            from_rpm = 3000
            to_rpm = 6000
            [timing]
            sets = "flat"
            start_deg = 20
            least_deg = 14
            most_deg = 36
            largest_step_deg = 2
            """;

    private static LoggedDay day() {
        return LoggedDay.ofPlan(PLAN).value().orElseThrow();
    }

    /** A pull from 2500 to 6500 rpm at a torque that does not change. */
    private static List<double[]> pull(double advanceDeg, double torqueNm) {
        return IntStream.range(0, 500)
                .mapToObj(row -> new double[] {row / 50.0, 2500 + 8 * row, torqueNm, advanceDeg})
                .toList();
    }

    private static SampledLog log(String name, List<double[]> rows) {
        return SampledLog.of(name, COLUMNS, rows::stream);
    }

    private static List<FindingCode> codes(List<Finding> findings) {
        return findings.stream().map(Finding::code).toList();
    }

    @Test
    void samplesOfOnesOwnGiveWhatTheSameLogInAFileGives(@TempDir Path folder) throws IOException {
        StringBuilder text = new StringBuilder("Time [s],Engine speed [rpm],Torque [N.m],Spark advance [deg]\n");
        pull(20, 181.5).forEach(row -> text.append(row[0] + "," + row[1] + "," + row[2] + "," + row[3] + "\n"));
        Path file = Files.writeString(folder.resolve("pull.csv"), text);
        DayAnswer fromFile = day().withFiles(file).answer();
        DayAnswer own = day().withLog(log("own", pull(20, 181.5))).answer();
        assertThat(own.next()).isPresent().isEqualTo(fromFile.next());
        assertThat(own.pulls().get(0).torque())
                .isEqualTo(fromFile.pulls().get(0).torque());
        assertThat(own.pulls().get(0).torque().map(Torque::newtonMetres).orElseThrow())
                .isCloseTo(181.5, within(1e-9));
    }

    @Test
    void rowsThatGoBackInTimeAndCellsWithoutAValueAreLeftOut() {
        List<double[]> rows = new ArrayList<>(pull(20, 181.5));
        rows.add(100, new double[] {0.5, 9000, 900, 20});
        rows.add(200, new double[] {Double.NaN, 9000, 900, 20});
        rows.set(300, new double[] {rows.get(300)[0], Double.NaN, Double.POSITIVE_INFINITY, 20});
        DayAnswer answer = day().withLog(log("gaps", rows)).answer();
        assertThat(answer.pulls()).hasSize(1);
        assertThat(answer.pulls().get(0).torque().map(Torque::newtonMetres).orElseThrow())
                .isCloseTo(181.5, within(1e-6));
    }

    @Test
    void aLogThatBreaksOffKeepsWhatCameBefore() {
        SampledLog log = SampledLog.of(
                "broken",
                COLUMNS,
                () -> Stream.concat(pull(20, 181.5).stream(), Stream.of(1).map(none -> {
                    throw new UncheckedIOException(new IOException("cable out"));
                })));
        DayAnswer answer = day().withLog(log).answer();
        assertThat(codes(answer.findings())).contains(FindingCode.FILE_UNREADABLE);
    }

    @Test
    void theSampleDayIsAnsweredAsTheProgramDoes() {
        DayAnswer answer = LoggedDay.ofPlanFile(Path.of("sweep-plans/hillclimb-knock.toml"))
                .value()
                .orElseThrow()
                .withFiles(Path.of("sample-logs/hillclimb-knock.csv"))
                .answer();
        DayAnswer.Next next = answer.next().orElseThrow();
        assertThat(next.action()).isEqualTo(Action.STOP);
        assertThat(next.code().id()).isEqualTo("knock-limited");
        assertThat(next.set()).isEmpty();
        assertThat(next.leave().flatMap(leave -> leave.spark())).isPresent();
    }

    @Test
    void labelsOfLogsAreCompared() {
        LoggedDay day = day();
        double[] old = {181.2, 180.9, 181.0, 180.6};
        double[] young = {183.4, 183.1, 183.0, 182.8};
        for (int i = 0; i < old.length; i++) {
            boolean oldFirst = i % 2 == 0;
            SampledLog first = log("first " + i, pull(20, oldFirst ? old[i] : young[i]));
            SampledLog second = log("second " + i, pull(20, oldFirst ? young[i] : old[i]));
            day = day.withLog(first, oldFirst ? "old" : "new").withLog(second, oldFirst ? "new" : "old");
        }
        LabelDifference found = day.compare("old").value().orElseThrow().get(0);
        assertThat(found.label()).isEqualTo("new");
        assertThat(found.verdict()).isEqualTo(Comparison.Verdict.MORE);
        LabelDifference same = LabelDifference.of(
                        List.of("old", "new", "new", "old", "old", "new", "new", "old"),
                        new double[] {181.2, 183.4, 183.1, 180.9, 181.0, 183.0, 182.8, 180.6},
                        "old",
                        1)
                .value()
                .orElseThrow()
                .get(0);
        assertThat(found.percent()).isCloseTo(same.percent(), within(1e-6));
        assertThat(day.compare("another").value()).isEmpty();
    }

    @Test
    void whatIsWrongIsSaidAndThrowsNothing() {
        assertThat(codes(LoggedDay.ofPlan("[engine").findings())).isNotEmpty();
        assertThat(LoggedDay.ofPlanFile(Path.of("not-there.toml")).findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.FILE_NOT_FOUND);
        DayAnswer nothing = day().withFiles(Path.of("not-there.csv")).answer();
        assertThat(codes(nothing.findings())).contains(FindingCode.FILE_NOT_FOUND, FindingCode.NO_PULL_TO_USE);
        assertThat(nothing.pulls()).isEmpty();
        assertThat(LabelDifference.of(List.of("a"), new double[] {180}, "a", 1).value())
                .isEqualTo(Optional.empty());
    }

    @Test
    void aColumnThatMeansNothingIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> SampledColumn.of(Role.TORQUE, Unit.KILOWATT));
        assertThatIllegalArgumentException().isThrownBy(() -> SampledColumn.of(Role.AIR_FUEL_RATIO, Unit.AFR));
        assertThatIllegalArgumentException().isThrownBy(() -> SampledColumn.of(Role.LABEL, Unit.COUNT));
        assertThatIllegalArgumentException().isThrownBy(() -> SampledLog.of("none", List.of(), Stream::empty));
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        SampledLog.of("twice", List.of(COLUMNS.get(0), COLUMNS.get(1), COLUMNS.get(1)), Stream::empty));
        SampledLog narrow = log("narrow", List.of(new double[] {1, 2}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> day().withLog(narrow).answer())
                .withMessageContaining("row 1 of narrow");
    }
}
