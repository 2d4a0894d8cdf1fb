package org.nextpull.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.LogHints;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;

/** An invented log of forty pulls' worth of rows, half of them at full throttle. */
class ColumnProposalsTest {
    private static final int ROWS = 400;
    private final Random random = new Random(5);

    private static boolean isLoaded(int row) {
        return row % 40 >= 20;
    }

    private List<String> proposed(List<String> headers, List<IntToDoubleFunction> columns) {
        List<ProbeColumn> probes = columns.stream()
                .map(column -> ProbeColumn.of(
                        IntStream.range(0, ROWS)
                                .mapToObj(row -> String.valueOf(column.applyAsDouble(row)))
                                .toList(),
                        NumberStyle.point()))
                .toList();
        return new ColumnReader()
                        .read(new ColumnTable("invented.csv", 1, headers, List.of(), probes), LogHints.none())
                        .findings()
                        .stream()
                        .filter(finding -> finding.code() == FindingCode.COLUMN_MAY_BE)
                        .map(ColumnProposalsTest::said)
                        .toList();
    }

    private static String said(Finding finding) {
        List<String> words = finding.details().stream()
                .map(detail -> ((Detail.Text) detail).text())
                .toList();
        return words.get(0) + " -> " + words.get(1) + ": " + words.get(2);
    }

    private double noise() {
        return random.nextDouble();
    }

    @Test
    void whatRisesWithTheThrottleMayBeTorqueAndANearerNameComesFirst() {
        assertThat(proposed(
                        List.of("RPM", "Throttle %", "Arm", "Load cell"),
                        List.of(
                                row -> 3000 + 100 * (row % 40),
                                row -> isLoaded(row) ? 98 : 12,
                                row -> (isLoaded(row) ? 50 : 10) + noise(),
                                row -> (isLoaded(row) ? 180 : 20) + noise())))
                .containsExactly(
                        "Load cell -> torque: name and values and rise with the load",
                        "Arm -> torque: values and rise with the load");
    }

    @Test
    void whatDoesNotGoWithTheLoadIsNotProposedForTorque() {
        assertThat(proposed(
                        List.of("RPM", "Throttle %", "Gizmo"),
                        List.of(row -> 3000 + 100 * (row % 40), row -> isLoaded(row) ? 98 : 12, row -> 100 + noise())))
                .isEmpty();
    }

    @Test
    void aColumnOfThousandsMayBeTheEngineSpeedAndFewWholeNumbersKnock() {
        assertThat(proposed(
                        List.of("Engine", "Torque Nm", "Rattle"),
                        List.of(
                                row -> 3000 + 100 * (row % 40),
                                row -> (isLoaded(row) ? 180 : 20) + noise(),
                                row -> row % 97 == 0 ? 2 : 0)))
                .containsExactly("Engine -> engine_speed: values", "Rattle -> knock_events: values");
    }

    @Test
    void whatSpeaksOfAnotherPartOrHasTheUnitOfAnotherQuantityIsNotProposed() {
        assertThat(proposed(
                        List.of(
                                "RPM",
                                "Torque Nm",
                                "Throttle %",
                                "Cam Timing",
                                "Richesse",
                                "Getriebeöl [°C]",
                                "Air Mass g/s"),
                        List.of(
                                row -> 3000 + 100 * (row % 40),
                                row -> (isLoaded(row) ? 180 : 20) + noise(),
                                row -> isLoaded(row) ? 98 : 12,
                                row -> 20 + 5 * noise(),
                                row -> 1.13 + 0.02 * noise(),
                                row -> 71 + noise(),
                                row -> 60 + noise())))
                .isEmpty();
    }

    /** In the unit that stands there the values must be those of the channel: a gauge of 3 bar is no barometer. */
    @Test
    void valuesThatAreUnusualInTheirUnitAndTheGreatestOfAPullAreNotProposed() {
        assertThat(proposed(
                        List.of("RPM", "Torque Nm", "Gizmo (bar)", "Gadget (hPa)", "Max Advance Seen"),
                        List.of(
                                row -> 3000 + 100 * (row % 40),
                                row -> (isLoaded(row) ? 180 : 20) + noise(),
                                row -> 3.1 + 0.01 * noise(),
                                row -> 994 + noise(),
                                row -> 25 + noise())))
                .contains("Gadget (hPa) -> barometer: unit and values")
                .noneMatch(said -> said.contains("advance") || said.startsWith("Gizmo (bar) -> barometer"));
    }

    @Test
    void evenlyRisingNumbersMayBeTimeAndACountOfRowsIsNot() {
        assertThat(proposed(
                        List.of("Row", "t", "Mark"), List.of(row -> row, row -> 0.05 * row, row -> 1.0 * row * row)))
                .containsExactly("t -> time: values");
    }

    @Test
    void besideARollerValuesAloneMakeNoEngineSpeed() {
        assertThat(proposed(
                        List.of("Roller km/h", "Engine", "Derived RPM"),
                        List.of(row -> 60 + row % 40, row -> 3000 + 100 * (row % 40), row -> 3000 + 100 * (row % 40))))
                .containsExactly("Derived RPM -> engine_speed: unit and values");
    }

    @Test
    void nothingIsProposedForAChannelThatTheLogHas() {
        assertThat(proposed(
                        List.of("RPM", "Torque Nm", "Lambda", "Lambda Mix"),
                        List.of(row -> 3000 + 100 * (row % 40), row -> 150 + noise(), row -> 0.9, row -> 0.85)))
                .isEmpty();
    }
}
