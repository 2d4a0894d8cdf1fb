package org.nextpull.scatter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.ReferenceRow;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.SparkMap;
import org.nextpull.response.Conditions;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;
import org.nextpull.unit.Advance;

class RepeatabilityTest {
    private static final SameSetting SAME = new SameSetting(0.3, 0.003);

    /** A reading whose logarithm, in percent, is the given figure, as the estimate works with it. */
    private static Reading reading(int number, double order, String label, double percent) {
        MeasuredPull pull = new MeasuredPull(
                number,
                new MeasuredPull.Origin("day.csv", 1, number),
                order,
                EngineSetting.of(SparkMap.flat(Advance.ofDeg(20)), Optional.empty())
                        .fitted(Optional.of(label), Optional.empty()),
                EngineSetting.none(),
                MeasuredPull.Status.USED,
                Optional.empty(),
                Optional.empty(),
                KnockHeard.marked(KnockMark.NONE),
                Optional.empty(),
                Conditions.unknown(),
                List.of(),
                List.of(),
                List.of());
        return new Reading(pull, Math.exp(percent / 100));
    }

    @Test
    void withoutRepeatsNothingIsKnown() {
        Repeatability none =
                Repeatability.of(List.of(reading(1, 0, "A", 1), reading(2, 1, "B", 2), reading(3, 2, "C", 3)), SAME);

        assertThat(none.scatter()).isEmpty();
        assertThat(none.drift()).isEmpty();
        assertThat(none.repeats()).isEmpty();
    }

    /**
     * By hand: A at orders 0, 2, 4 reads 10.0, 8.2, 6.1; B at 1, 3, 5 reads 5.1, 3.0, 0.9. Within groups the sums of squares of the
     * order are 8 and 8, the sums of products -7.8 and -8.4, so the slope is -16.2 / 16 = -1.0125; the sums of squares of the response are
     * 7.62 and 8.82, so the residual sum of squares is 16.44 - 16.2^2/16 = 0.0375 on 6 - 2 - 1 = 3 degrees of freedom.
     */
    @Test
    void driftAndScatterOfTwoSettingsInTurnAreThoseWorkedByHand() {
        Repeatability day = Repeatability.of(
                List.of(
                        reading(1, 0, "A", 10.0),
                        reading(2, 1, "B", 5.1),
                        reading(3, 2, "A", 8.2),
                        reading(4, 3, "B", 3.0),
                        reading(5, 4, "A", 6.1),
                        reading(6, 5, "B", 0.9)),
                SAME);

        assertThat(day.drift().orElseThrow().percentPerPull()).isCloseTo(-1.0125, offset(1e-9));
        assertThat(day.drift().orElseThrow().standardError()).isCloseTo(Math.sqrt(0.0375 / 3 / 16), offset(1e-9));
        assertThat(day.scatter().orElseThrow().percent()).isCloseTo(Math.sqrt(0.0375 / 3), offset(1e-9));
        assertThat(day.scatter().orElseThrow().degreesOfFreedom()).isEqualTo(3);
        assertThat(day.repeats().stream().map(Repeatability.Group::pulls))
                .containsExactly(List.of(1, 3, 5), List.of(2, 4, 6));
    }

    /** Snedecor and Cochran's covariance example: three groups of ten, common slope 0.98718 (0.16450), residual 4.00578 on 26. */
    @Test
    void thePublishedAnalysisOfCovarianceComesOut() {
        List<Reading> readings = new ArrayList<>();
        for (ReferenceRow row : ReferenceRow.read("ancova_leprosy.csv")) {
            readings.add(reading(readings.size() + 1, row.number("pre"), row.text("drug"), row.number("post")));
        }
        Repeatability day = Repeatability.of(readings, SAME);

        assertThat(day.drift().orElseThrow().percentPerPull()).isCloseTo(expected("slope"), offset(1e-8));
        assertThat(day.drift().orElseThrow().standardError()).isCloseTo(expected("se slope"), offset(1e-8));
        assertThat(day.scatter().orElseThrow().percent()).isCloseTo(4.00577754367, offset(1e-8));
        assertThat(day.scatter().orElseThrow().degreesOfFreedom()).isEqualTo(26);
    }

    private static double expected(String what) {
        return ReferenceRow.read("stats_expected.csv").stream()
                .filter(row -> row.cells().containsValue(what) && row.cells().containsValue("leprosy"))
                .map(row -> row.cells().values().stream().skip(2).findFirst().orElseThrow())
                .mapToDouble(Double::parseDouble)
                .findFirst()
                .orElseThrow();
    }

    /** Duplicates of nine laboratories, the example of ISO 5725-5:1998: within-laboratory standard deviation 0.585297. */
    @Test
    void duplicatesInARowGiveTheRepeatabilityOfTheStandardsExample() {
        List<Reading> readings = new ArrayList<>();
        for (ReferenceRow row : ReferenceRow.read("creosote_iso5725.csv")) {
            int next = readings.size() + 1;
            double half = row.number("range") / 2;
            readings.add(reading(next, next - 1.0, row.text("lab"), row.number("mean") - half));
            readings.add(reading(next + 1, next, row.text("lab"), row.number("mean") + half));
        }
        Repeatability day = Repeatability.of(readings, SAME);

        assertThat(day.scatter().orElseThrow().percent()).isCloseTo(0.585296695892, offset(1e-9));
        assertThat(day.scatter().orElseThrow().degreesOfFreedom()).isEqualTo(9);
        assertThat(day.drift()).as("repeats in a row cannot tell drift").isEmpty();
    }

    @Test
    void aConstantFactorOnTheResponseChangesNothing() {
        List<Reading> readings = List.of(
                reading(1, 0, "A", 10.0),
                reading(2, 1, "B", 5.1),
                reading(3, 2, "A", 8.2),
                reading(4, 3, "B", 3.0),
                reading(5, 4, "A", 6.1));
        List<Reading> scaled = readings.stream()
                .map(one -> new Reading(one.pull(), 1.3558 * one.value()))
                .toList();
        Repeatability one = Repeatability.of(readings, SAME);
        Repeatability other = Repeatability.of(scaled, SAME);

        assertThat(other.scatter().orElseThrow().percent())
                .isCloseTo(one.scatter().orElseThrow().percent(), offset(1e-9));
        assertThat(other.drift().orElseThrow().percentPerPull())
                .isCloseTo(one.drift().orElseThrow().percentPerPull(), offset(1e-9));
    }
}
