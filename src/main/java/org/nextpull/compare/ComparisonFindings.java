package org.nextpull.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.math.FisherF;
import org.nextpull.math.regression.ReadingErrors;
import org.nextpull.scatter.Scatter;

/** What is worth saying about a comparison that was made. */
final class ComparisonFindings {
    private static final double HARD_TO_TELL = 2;
    private static final double SHOWN_WEIGHT = 0.4;
    private static final double UNEQUAL = 0.05;

    private ComparisonFindings() {}

    static List<ComparisonResult.LabelScatter> scatters(DayFit day, List<ComparedPull> pulls) {
        return day.labels().stream()
                .map(label -> {
                    ReadingErrors.VariancePart part = day.scatter(label);
                    int count = (int) pulls.stream()
                            .filter(pull -> pull.label().equals(label))
                            .count();
                    return new ComparisonResult.LabelScatter(
                            label,
                            count,
                            new Scatter(Math.sqrt(part.variance()) * day.toPercent(), part.degreesOfFreedom()));
                })
                .toList();
    }

    static List<Finding> of(DayFit day, List<ComparedPull> pulls, ComparisonResult result, ComparisonRequest request) {
        List<Finding> findings = new ArrayList<>();
        result.warmUpPercent()
                .ifPresent(
                        percent -> findings.add(warning(FindingCode.COMPARE_WARM_UP, Detail.of("percent", percent))));
        outliers(day, pulls, findings);
        unequalScatter(result.scatters(), findings);
        if (!result.isFinal() && request.looks() instanceof InterimLooks.Planned planned) {
            findings.add(warning(
                    FindingCode.COMPARE_NOT_FINAL,
                    Detail.of("pulls", pulls.size()),
                    Detail.of("planned", planned.pulls()),
                    Detail.of("missing", planned.pulls() - pulls.size())));
        }
        for (Comparison comparison : result.comparisons()) {
            ofOne(comparison, pulls, result, findings);
        }
        return findings;
    }

    private static void ofOne(
            Comparison comparison, List<ComparedPull> pulls, ComparisonResult result, List<Finding> findings) {
        Detail label = Detail.of("label", comparison.label());
        Detail reference = Detail.of("reference", result.reference().label());
        double factor = comparison.driftFactor();
        List<String> ran = pulls.stream().map(ComparedPull::label).toList();
        boolean once =
                !PullOrder.suffice(ran, comparison.label(), result.reference().label());
        if (once) {
            findings.add(warning(FindingCode.COMPARE_ONE_CHANGE_OVER, label, reference));
        } else if (factor > HARD_TO_TELL) {
            findings.add(
                    warning(FindingCode.COMPARE_IN_BLOCKS, label, reference, Detail.of("factor", Math.sqrt(factor))));
        }
        if (comparison.verdict() != Comparison.Verdict.CANNOT_TELL) {
            return;
        }
        if (!once && result.isFinal() && comparison.difference().interval().excludesZero()) {
            findings.add(Finding.note(FindingCode.COMPARE_HELD_BACK, Place.nowhere(), label));
        }
        if (comparison.pullsNeeded().isEmpty()) {
            findings.add(warning(
                    FindingCode.COMPARE_OUT_OF_REACH,
                    label,
                    reference,
                    Detail.of("worth", result.worthPercent()),
                    Detail.of("most", PullsNeeded.MOST)));
        }
    }

    private static void outliers(DayFit day, List<ComparedPull> pulls, List<Finding> findings) {
        for (int index = 0; index < pulls.size(); index++) {
            double weight = day.fit().weights().get(index);
            if (weight < SHOWN_WEIGHT) {
                ComparedPull pull = pulls.get(index);
                findings.add(Finding.warning(
                        FindingCode.COMPARE_OUTLIER,
                        Place.ofPull(pull.number()),
                        Detail.of("label", pull.label()),
                        Detail.of("weight", weight)));
            }
        }
    }

    /** The unsteadiest against the steadiest label, by F, the error shared among all pairs. */
    private static void unequalScatter(List<ComparisonResult.LabelScatter> scatters, List<Finding> findings) {
        Comparator<ComparisonResult.LabelScatter> bySize =
                Comparator.comparingDouble(scatter -> scatter.scatter().percent());
        ComparisonResult.LabelScatter most = scatters.stream().max(bySize).orElseThrow();
        ComparisonResult.LabelScatter least = scatters.stream().min(bySize).orElseThrow();
        double ratio = most.scatter().percent() / least.scatter().percent();
        double pairs = scatters.size() * (scatters.size() - 1);
        if (ratio > 1
                && FisherF.of(most.scatter().degreesOfFreedom(), least.scatter().degreesOfFreedom())
                                .above(ratio * ratio)
                        < UNEQUAL / pairs) {
            findings.add(warning(
                    FindingCode.COMPARE_SCATTER_UNEQUAL,
                    Detail.of("label", most.label()),
                    Detail.of("percent", most.scatter().percent()),
                    Detail.of("other", least.label()),
                    Detail.of("other_percent", least.scatter().percent())));
        }
    }

    private static Finding warning(FindingCode code, Detail... details) {
        return Finding.warning(code, Place.nowhere(), details);
    }
}
