package org.nextpull.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.nextpull.air.AirState;
import org.nextpull.air.Correction;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.air.Iso1585;
import org.nextpull.air.SaeJ1349Of2004;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.SparkMap;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.Goal;
import org.nextpull.response.Conditions;
import org.nextpull.response.Figures;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Power;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Torque;

class MeasuredComparisonTest {
    private static final ComparisonRequest REQUEST = new ComparisonRequest("A", 1, new InterimLooks.Planned(8), 1);
    private static final double[] VALUES = {200, 203.1, 203, 199.9, 200.1, 203, 202.9, 200};

    private record Ran(double inletC, double lambda, double advanceDeg) {
        static final Ran ALIKE = new Ran(25, 0.87, 26);
    }

    private static MeasuredPull pull(int number, String label, double torque, Ran ran, CorrectionStandard standard) {
        AirState air = standard.reference();
        List<Figures.AtSpeed> rows = new ArrayList<>();
        for (double rpm = 3000; rpm <= 6000; rpm += 500) {
            rows.add(new Figures.AtSpeed(
                    rpm, Torque.ofNewtonMetres(torque * (1 - (rpm - 4500) * (rpm - 4500) * 1e-8)), Optional.empty()));
        }
        Figures figures = new Figures(
                Optional.of(Torque.ofNewtonMetres(torque)),
                Optional.of(Power.ofWatts(torque * 471)),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                rows);
        EngineSetting setting = EngineSetting.of(
                        SparkMap.flat(Advance.ofDeg(ran.advanceDeg())), Optional.of(Lambda.of(ran.lambda())))
                .fitted(label.isEmpty() ? Optional.empty() : Optional.of(label), Optional.of("e10"));
        Conditions conditions = new Conditions(
                Optional.of(Temperature.ofCelsius(85)),
                Optional.empty(),
                Optional.of(Temperature.ofCelsius(ran.inletC())),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.of(air));
        return new MeasuredPull(
                number,
                new MeasuredPull.Origin("day.csv", 1, number),
                number - 1,
                setting,
                EngineSetting.none(),
                MeasuredPull.Status.USED,
                Optional.of(new Correction(standard, 1, air, List.of())),
                Optional.of(figures),
                KnockHeard.marked(KnockMark.NONE),
                Optional.empty(),
                conditions,
                List.of(),
                List.of(),
                List.of());
    }

    private static List<MeasuredPull> day(Ran ranB) {
        List<MeasuredPull> pulls = new ArrayList<>();
        String order = "ABBAABBA";
        for (int place = 0; place < VALUES.length; place++) {
            String label = order.substring(place, place + 1);
            pulls.add(pull(place + 1, label, VALUES[place], label.equals("B") ? ranB : Ran.ALIKE, new Iso1585()));
        }
        return pulls;
    }

    private static Outcome<MeasuredComparison> compare(List<MeasuredPull> pulls) {
        return MeasuredComparison.of(pulls, REQUEST, Goal.Response.TORQUE);
    }

    private static List<FindingCode> codes(Outcome<?> outcome) {
        return outcome.findings().stream().map(Finding::code).toList();
    }

    @Test
    void torqueAndPowerAreComparedWithRows() {
        Outcome<MeasuredComparison> outcome = compare(day(Ran.ALIKE));
        MeasuredComparison comparison = outcome.value().orElseThrow();
        assertThat(outcome.findings()).isEmpty();
        Comparison torque = comparison.by(Goal.Response.TORQUE).of("B").orElseThrow();
        assertThat(torque.verdict()).isEqualTo(Comparison.Verdict.MORE);
        assertThat(torque.rows())
                .extracting(Comparison.RowDifference::rpm)
                .containsExactly(3000.0, 3500.0, 4000.0, 4500.0, 5000.0, 5500.0, 6000.0);
        assertThat(torque.rows().get(0).percent()).isCloseTo(torque.difference().percent(), within(1e-9));
        assertThat(comparison.torqueDifference("B").orElseThrow().newtonMetres())
                .isCloseTo(3, within(0.05));
        assertThat(comparison.powerDifference("B").orElseThrow().watts()).isCloseTo(3 * 471, within(25.0));
        assertThat(comparison.torqueDifference("C")).isEmpty();
    }

    @Test
    void differentConditionsAreFlagged() {
        assertThat(codes(compare(day(new Ran(31, 0.90, 28)))))
                .containsExactly(
                        FindingCode.COMPARE_INLET_AIR_DIFFERS,
                        FindingCode.COMPARE_LAMBDA_DIFFERS,
                        FindingCode.COMPARE_ADVANCE_DIFFERS);
    }

    @Test
    void figuresOfDifferentStandardsAreRefused() {
        List<MeasuredPull> pulls = day(Ran.ALIKE);
        pulls.set(5, pull(6, "B", 203, Ran.ALIKE, new SaeJ1349Of2004()));
        Outcome<MeasuredComparison> outcome = compare(pulls);
        assertThat(outcome.isFailed()).isTrue();
        assertThat(codes(outcome)).containsExactly(FindingCode.COMPARE_STANDARDS_DIFFER);
    }

    @Test
    void struckPullsAndPullsWithoutALabelAreLeftOut() {
        List<MeasuredPull> pulls = day(Ran.ALIKE);
        pulls.add(pull(9, "", 150, Ran.ALIKE, new Iso1585()));
        pulls.add(pull(10, "B", 100, Ran.ALIKE, new Iso1585()).withStanding(MeasuredPull.Status.STRUCK));
        Outcome<MeasuredComparison> outcome = compare(pulls);
        assertThat(codes(outcome)).containsExactly(FindingCode.COMPARE_WITHOUT_LABEL);
        assertThat(outcome.value()).isEqualTo(compare(day(Ran.ALIKE)).value());
    }

    @Test
    void onePullASideIsRefused() {
        Outcome<MeasuredComparison> outcome = compare(day(Ran.ALIKE).subList(0, 2));
        assertThat(outcome.isFailed()).isTrue();
        assertThat(codes(outcome)).containsExactly(FindingCode.COMPARE_ONE_PULL, FindingCode.COMPARE_ONE_PULL);
        assertThat(compare(List.of()).isFailed()).isTrue();
    }
}
