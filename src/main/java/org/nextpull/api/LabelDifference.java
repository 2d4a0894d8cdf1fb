package org.nextpull.api;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.nextpull.compare.ComparedPull;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonRequest;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.compare.LabelComparison;
import org.nextpull.finding.Outcome;

/**
 * How a label differs from the reference, with the drift of the day allowed for.
 *
 * @param label the label
 * @param percent difference, percent of the reference
 * @param interval 95 % interval of it, for all labels together
 * @param verdict what it comes to
 * @param pullsNeeded further pulls, the two labels in turn, that would settle it; empty where it is settled, or where more than a day's
 *     work would be needed
 */
public record LabelDifference(
        String label,
        double percent,
        Comparison.PercentInterval interval,
        Comparison.Verdict verdict,
        OptionalInt pullsNeeded) {

    /**
     * Compares average torques with those of one label, looked at once. No verdict rests on one change-over: labels have to be run in
     * turn.
     *
     * @param labels label of each pull, in the order in which they were run
     * @param torqueNm torque of each pull, N.m, above 0, averaged over the same band; any one unit will do
     * @param reference the label that the others are held against
     * @param worthPercent smallest difference that is worth having, percent, above 0
     * @return one a label, the highest first; without a value where the pulls cannot carry a comparison, and then the findings say why
     * @throws IllegalArgumentException where there are not as many labels as torques, or a number is not in its range
     */
    public static Outcome<List<LabelDifference>> of(
            List<String> labels, double[] torqueNm, String reference, double worthPercent) {
        if (labels.size() != torqueNm.length) {
            throw new IllegalArgumentException(labels.size() + " labels and " + torqueNm.length + " torques");
        }
        List<ComparedPull> pulls = new ArrayList<>();
        for (int pull = 0; pull < torqueNm.length; pull++) {
            pulls.add(new ComparedPull(pull + 1, pull, labels.get(pull), torqueNm[pull], List.of()));
        }
        return LabelComparison.of(pulls, ComparisonRequest.once(reference, worthPercent))
                .map(LabelDifference::all);
    }

    static List<LabelDifference> all(ComparisonResult result) {
        return result.comparisons().stream().map(LabelDifference::of).toList();
    }

    private static LabelDifference of(Comparison one) {
        return new LabelDifference(
                one.label(), one.difference().percent(), one.difference().interval(), one.verdict(), one.pullsNeeded());
    }
}
