package org.nextpull.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.Goal;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/** Rows of a table as pulls, and the figure of each that is fitted. */
class ReadingTest {
    private static final Optional<Power> NO_POWER = Optional.empty();

    private static Optional<Torque> torque(double newtonMetres) {
        return Optional.of(Torque.ofNewtonMetres(newtonMetres));
    }

    private static ResultTable.Row row(
            OptionalInt order, Optional<Torque> torque, Optional<Power> power, boolean used) {
        return new ResultTable.Row(
                2,
                order,
                Optional.empty(),
                Optional.of(Lambda.of(0.88)),
                torque,
                power,
                Optional.empty(),
                Optional.empty(),
                KnockMark.HEARD,
                used);
    }

    private static List<MeasuredPull> pulls(int firstNumber, ResultTable.Row... rows) {
        SourceDescription source = new SourceDescription("table.csv", "UTF-8", ",", '.', List.of());
        ResultTable table = new ResultTable(source, List.of(rows), new BlockReader.RowCount(rows.length, 0));
        return TableResponses.of(table, Sweep.plan(""), firstNumber);
    }

    @Test
    void oneReadingLiesAboveAnotherInPercentOfThat() {
        List<Reading> readings = Reading.of(
                pulls(
                        1,
                        row(OptionalInt.empty(), torque(200), NO_POWER, true),
                        row(OptionalInt.empty(), torque(202), NO_POWER, true)),
                Goal.Response.TORQUE);

        assertThat(readings.get(1).percentOver(readings.get(0))).isCloseTo(1, within(1e-12));
        assertThat(readings.get(0).percentOver(readings.get(1))).isCloseTo(-100 * 2 / 202.0, within(1e-12));
    }

    /** The order column counts from 1, the day from 0; without one the rows go on after the pulls before them. */
    @Test
    void theOrderOfTheDayIsThatOfTheColumnOrOfTheRows() {
        List<MeasuredPull> pulls = pulls(
                4,
                row(OptionalInt.of(7), torque(200), NO_POWER, true),
                row(OptionalInt.empty(), torque(201), NO_POWER, true));

        assertThat(pulls).extracting(MeasuredPull::number).containsExactly(4, 5);
        assertThat(pulls).extracting(MeasuredPull::order).containsExactly(6.0, 4.0);
    }

    @Test
    void aRowThatDoesNotCountGivesNoReadingButKeepsItsKnock() {
        List<MeasuredPull> pulls = pulls(1, row(OptionalInt.empty(), torque(200), NO_POWER, false));

        assertThat(Reading.of(pulls, Goal.Response.TORQUE)).isEmpty();
        assertThat(pulls.get(0).isClean()).isFalse();
    }

    /** No full-load pull makes less than nothing: a sign or a column is wrong. */
    @Test
    void aFigureThatIsNotPositiveRefusesItsPull() {
        for (double newtonMetres : new double[] {0, -180}) {
            MeasuredPull pull = pulls(1, row(OptionalInt.empty(), torque(newtonMetres), NO_POWER, true))
                    .get(0);

            MeasuredPull judged = Reading.positive(pull, Goal.Response.POWER);

            assertThat(judged.isUsed()).isFalse();
            assertThat(judged.findings()).extracting(Finding::code).containsExactly(FindingCode.RESPONSE_NOT_POSITIVE);
        }
    }

    @Test
    void aFigureThatSomeLackIsAWarningAndOneThatAllLackAnError() {
        ResultTable.Row ofTorque = row(OptionalInt.empty(), torque(200), NO_POWER, true);
        ResultTable.Row ofPower = row(OptionalInt.empty(), Optional.empty(), Optional.of(Power.ofWatts(90e3)), true);
        List<Finding> found = new ArrayList<>();
        Reading.missing(pulls(1, ofTorque, ofPower), Goal.Response.POWER).ifPresent(found::add);
        Reading.missing(pulls(1, ofTorque), Goal.Response.POWER).ifPresent(found::add);

        assertThat(found).extracting(Finding::code).containsOnly(FindingCode.RESPONSE_MISSING);
        assertThat(found)
                .extracting(Finding::severity)
                .containsExactly(Finding.Severity.WARNING, Finding.Severity.ERROR);
        assertThat(Reading.missing(pulls(1, ofPower), Goal.Response.POWER)).isEmpty();
    }
}
