package org.nextpull.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;

class LabelComparisonTest {
    private static final InterimLooks PLANNED = new InterimLooks.Planned(4);

    private static ComparisonRequest against(String reference, double worth) {
        return new ComparisonRequest(reference, worth, PLANNED, 1);
    }

    private static List<ComparedPull> pulls(String order, double... values) {
        List<ComparedPull> pulls = new ArrayList<>();
        for (int place = 0; place < values.length; place++) {
            pulls.add(new ComparedPull(place + 1, place, order.substring(place, place + 1), values[place], List.of()));
        }
        return pulls;
    }

    private static Comparison compare(List<ComparedPull> pulls, double worth) {
        return LabelComparison.of(pulls, against("A", worth))
                .value()
                .orElseThrow()
                .of("B")
                .orElseThrow();
    }

    private static List<FindingCode> codes(Outcome<?> outcome) {
        return outcome.findings().stream().map(Finding::code).toList();
    }

    /** Days stand at levels of their own: labels that ran together on both are told as on one, a label a day hardly at all. */
    @Test
    void theDifferenceOfDaysIsInTheInterval() {
        double[] day = {200, 202.3, 202, 199.6};
        List<ComparedPull> together = new ArrayList<>(pulls("ABBA", day));
        List<ComparedPull> apart = new ArrayList<>();
        for (int place = 0; place < 4; place++) {
            together.add(new ComparedPull(
                    5 + place, 1, 4.0 + place, "ABBA".substring(place, place + 1), 1.03 * day[place], List.of()));
            apart.add(new ComparedPull(1 + place, 0, place, "A", 200 + 0.3 * (place % 2), List.of()));
        }
        for (int place = 0; place < 4; place++) {
            apart.add(new ComparedPull(5 + place, 1, 4.0 + place, "B", 202 + 0.3 * (place % 2), List.of()));
        }
        Comparison one = compare(pulls("ABBA", day), 1);
        Comparison both = compare(together, 1);
        assertThat(both.difference().percent()).isCloseTo(one.difference().percent(), within(0.05));
        assertThat(both.difference().interval().halfWidth())
                .isLessThan(one.difference().interval().halfWidth());
        assertThat(compare(apart, 1).difference().interval().halfWidth()).isGreaterThan(3);
    }

    /** A straight drift of 1 % in ten pulls moves a difference that is run in turn by less than a tenth of its error. */
    @Test
    void aStraightDriftLeavesTheDifferenceOfADayAlone() {
        double[] still = {200, 202.3, 202, 199.6, 200.3, 202.1, 201.8, 200};
        double[] drifting = still.clone();
        for (int place = 0; place < drifting.length; place++) {
            drifting[place] -= 0.2 * place;
        }
        Comparison one = compare(pulls("ABBAABBA", still), 1);
        Comparison other = compare(pulls("ABBAABBA", drifting), 1);
        assertThat(other.difference().percent())
                .isCloseTo(
                        one.difference().percent(),
                        within(one.difference().interval().halfWidth() / 25));
        assertThat(one.verdict()).isEqualTo(Comparison.Verdict.MORE);
        assertThat(other.verdict()).isEqualTo(Comparison.Verdict.MORE);
    }

    @Test
    void aShiftOfUnitDoesNotMoveAVerdict() {
        List<ComparedPull> newtonMetres = pulls("ABBAABBA", 200, 201.1, 201, 199.9, 200.1, 201, 200.9, 200);
        List<ComparedPull> poundFeet = newtonMetres.stream()
                .map(pull -> new ComparedPull(
                        pull.number(), pull.order(), pull.label(), pull.value() / 1.3558179483314003, List.of()))
                .toList();
        Comparison one = compare(newtonMetres, 0.3);
        Comparison other = compare(poundFeet, 0.3);
        assertThat(other.difference().percent()).isCloseTo(one.difference().percent(), within(1e-10));
        assertThat(other.difference().interval().low())
                .isCloseTo(one.difference().interval().low(), within(1e-9));
        assertThat(other.verdict()).isEqualTo(one.verdict());
    }

    @Test
    void eachVerdictHasItsCase() {
        assertThat(compare(pulls("ABBAABBA", 200, 204.1, 204, 199.9, 200.1, 204, 203.9, 200), 1)
                        .verdict())
                .isEqualTo(Comparison.Verdict.MORE);
        assertThat(compare(pulls("ABBAABBA", 200, 196.1, 196, 199.9, 200.1, 196, 195.9, 200), 1)
                        .verdict())
                .isEqualTo(Comparison.Verdict.LESS);
        Comparison same = compare(pulls("ABBAABBA", 200, 200.1, 199.9, 200.1, 200.1, 200, 200.1, 199.9), 1);
        assertThat(same.verdict()).isEqualTo(Comparison.Verdict.SAME);
        assertThat(same.isRealButSmall()).isFalse();
        assertThat(same.pullsNeeded()).isEmpty();
        Comparison small = compare(pulls("ABBAABBA", 200, 200.61, 200.6, 199.99, 200.01, 200.6, 200.59, 200), 1);
        assertThat(small.verdict()).isEqualTo(Comparison.Verdict.SAME);
        assertThat(small.isRealButSmall()).isTrue();
        Comparison unclear = compare(pulls("ABBAABBA", 200, 203, 198, 201, 199, 202, 201, 198.5), 1);
        assertThat(unclear.verdict()).isEqualTo(Comparison.Verdict.CANNOT_TELL);
        assertThat(unclear.pullsNeeded().orElseThrow()).isBetween(2, PullsNeeded.MOST);
        assertThat(Comparison.Verdict.CANNOT_TELL.id()).isEqualTo("cannot-tell");
    }

    /** With the pulls that were asked for, at the same scatter, the interval is as narrow as was promised. */
    @Test
    void thePullsNeededNarrowTheInterval() {
        SplittableRandom random = new SplittableRandom(4);
        List<ComparedPull> first =
                SimulatedDay.of("ABBA", 0.1, SimulatedDay.Slow.NONE).pulls(random);
        List<ComparedPull> eight = new ArrayList<>(
                SimulatedDay.of("ABBAABBA", 0.1, SimulatedDay.Slow.NONE).pulls(random));
        assertThat(first).hasSize(4);
        Comparison before = compare(eight, 0.3);
        assertThat(before.verdict()).isEqualTo(Comparison.Verdict.CANNOT_TELL);
        int more = before.pullsNeeded().orElseThrow();
        DayFit day = new DayModel(List.of("A", "B"), Map.of()).fit(eight);
        // the planned look is spent, so the next one must claim less easily
        double nextError = new InterimLooks.Open(1).claimError(8);
        double distance = Math.abs(before.difference().percent());
        int claim = PullsNeeded.further(day, eight, "B", Math.min(0.3, distance), nextError)
                .orElse(Integer.MAX_VALUE);
        int same = PullsNeeded.further(day, eight, "B", 0.3 - distance, 0.05).orElse(Integer.MAX_VALUE);
        assertThat(more).isEqualTo(Math.min(claim, same));
        assertThat(PullsNeeded.further(day, eight, "B", (0.3 - distance) / 2, 0.05)
                        .orElse(Integer.MAX_VALUE))
                .isGreaterThan(2 * same);
        assertThat(PullsNeeded.further(day, eight, "B", 1e-3, 0.05)).isEmpty();
    }

    /** However far apart the blocks lie: the day may have leapt when the label was changed. */
    @Test
    void oneChangeOverSettlesNothing() {
        Outcome<ComparisonResult> blocks = LabelComparison.of(
                pulls("AAAABBBB", 200, 200.4, 199.8, 200.1, 220.9, 221.2, 220.8, 221.1), against("A", 1));
        assertThat(codes(blocks)).containsExactly(FindingCode.COMPARE_ONE_CHANGE_OVER);
        ComparisonResult result = blocks.value().orElseThrow();
        assertThat(result.comparisons().get(0).verdict()).isEqualTo(Comparison.Verdict.CANNOT_TELL);
        assertThat(result.groups()).hasSize(1);
        assertThat(result.further().orElseThrow().order().subList(0, 2)).containsExactly("A", "B");
        Outcome<ComparisonResult> equal = LabelComparison.of(
                pulls("AAAABBBB", 200, 200.1, 199.9, 200.1, 200, 200.1, 199.9, 200.1), against("A", 1));
        assertThat(equal.value().orElseThrow().comparisons().get(0).verdict())
                .isEqualTo(Comparison.Verdict.CANNOT_TELL);
    }

    @Test
    void anOrderThatLeavesTheDriftInTheDifferenceIsNamed() {
        Outcome<ComparisonResult> blocks = LabelComparison.of(
                pulls("AABBBBAA", 200, 200.1, 201.2, 201.1, 201.1, 201.2, 199.9, 200.1), against("A", 1));
        assertThat(codes(blocks)).contains(FindingCode.COMPARE_IN_BLOCKS);
        Outcome<ComparisonResult> turns = LabelComparison.of(
                pulls("ABBAABBA", 200, 200.4, 199.8, 200.1, 200.9, 201.2, 200.8, 201.1), against("A", 1));
        assertThat(codes(turns)).doesNotContain(FindingCode.COMPARE_IN_BLOCKS);
        assertThat(turns.value().orElseThrow().of("B").orElseThrow().driftFactor())
                .isBetween(1.0, 1.5);
    }

    @Test
    void anOutlierIsNamedAndCountsLess() {
        List<ComparedPull> pulls =
                pulls("ABBAABBAABBA", 200, 201, 201.2, 199.9, 200.1, 201.1, 206, 200, 199.8, 201, 201.1, 200.2);
        Outcome<ComparisonResult> outcome = LabelComparison.of(pulls, against("A", 1));
        assertThat(outcome.findings()).anySatisfy(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.COMPARE_OUTLIER);
            assertThat(finding.place().pull()).hasValue(7);
        });
        assertThat(outcome.value()
                        .orElseThrow()
                        .of("B")
                        .orElseThrow()
                        .difference()
                        .percent())
                .isCloseTo(0.55, within(0.12));
    }

    @Test
    void coldFirstPullsAreSeenAndTakenOut() {
        List<ComparedPull> pulls = new ArrayList<>();
        double[] noise = {0.05, -0.03, 0.04, -0.05, 0.02, -0.04, 0.03, -0.02, 0.01, 0.02, -0.03, 0};
        String order = "ABBAABBAABBA";
        for (int place = 0; place < 12; place++) {
            double value = 200 - 6 * Math.exp(-place / 3.0) + noise[place] + (order.charAt(place) == 'B' ? 1 : 0);
            pulls.add(new ComparedPull(place + 1, place, order.substring(place, place + 1), value, List.of()));
        }
        Outcome<ComparisonResult> outcome = LabelComparison.of(pulls, against("A", 1));
        assertThat(codes(outcome)).contains(FindingCode.COMPARE_WARM_UP);
        assertThat(outcome.value().orElseThrow().warmUpPercent().orElseThrow()).isCloseTo(-3, within(0.2));
        assertThat(outcome.value()
                        .orElseThrow()
                        .of("B")
                        .orElseThrow()
                        .difference()
                        .value())
                .isCloseTo(1, within(0.1));
    }

    @Test
    void whatCannotBeComparedIsRefusedWithItsReason() {
        List<ComparedPull> one = pulls("AABA", 200, 201, 202, 200);
        assertThat(codes(LabelComparison.of(one, against("A", 1)))).containsExactly(FindingCode.COMPARE_ONE_PULL);
        assertThat(codes(LabelComparison.of(one, against("C", 1))))
                .containsExactly(FindingCode.COMPARE_REFERENCE_UNKNOWN);
        assertThat(codes(LabelComparison.of(one, against("AB", 1))))
                .containsExactly(FindingCode.COMPARE_REFERENCE_MISSPELT);
        assertThat(codes(LabelComparison.of(pulls("AAA", 1, 2, 3), against("A", 1))))
                .containsExactly(FindingCode.COMPARE_ONE_LABEL);
        assertThat(codes(LabelComparison.of(List.of(), against("A", 1)))).containsExactly(FindingCode.COMPARE_NO_LABEL);
        assertThatIllegalArgumentException().isThrownBy(() -> new ComparisonRequest("A", 0, PLANNED, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> pulls("A", -1));
    }

    @Test
    void equalReadingsEverywhereAreTheSame() {
        Outcome<ComparisonResult> outcome =
                LabelComparison.of(pulls("ABBAABBA", 200, 200, 200, 200, 200, 200, 200, 200), against("A", 1));
        assertThat(outcome.value().orElseThrow().of("B").orElseThrow().verdict())
                .isEqualTo(Comparison.Verdict.SAME);
    }

    @Test
    void beforeThePlannedPullsNothingIsFinal() {
        List<ComparedPull> four = pulls("ABBA", 200, 201, 201.1, 200.05);
        Outcome<ComparisonResult> outcome =
                LabelComparison.of(four, new ComparisonRequest("A", 1, new InterimLooks.Planned(12), 1));
        ComparisonResult result = outcome.value().orElseThrow();
        assertThat(result.isFinal()).isFalse();
        assertThat(codes(outcome)).contains(FindingCode.COMPARE_NOT_FINAL);
        assertThat(result.comparisons().get(0).verdict()).isEqualTo(Comparison.Verdict.CANNOT_TELL);
        assertThat(result.comparisons().get(0).pullsNeeded()).hasValue(8);
        assertThatIllegalArgumentException().isThrownBy(() -> new InterimLooks.Planned(3));
        assertThatIllegalArgumentException().isThrownBy(() -> new InterimLooks.Open(-1));
    }

    @Test
    void oneLabelThatScattersMoreIsNamed() {
        List<ComparedPull> pulls = pulls(
                "ABBAABBAABBAABBA",
                200,
                205,
                198,
                200.01,
                199.99,
                207,
                196,
                200,
                200.02,
                203,
                199,
                199.98,
                200.01,
                206,
                197,
                200);
        Outcome<ComparisonResult> outcome = LabelComparison.of(pulls, against("A", 1));
        assertThat(outcome.findings()).anySatisfy(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.COMPARE_SCATTER_UNEQUAL);
            assertThat(finding.text("label")).hasValue("B");
        });
    }
}
