package org.nextpull.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiPredicate;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.NearestNames;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.math.Estimate;
import org.nextpull.math.Interval;

/**
 * Compares labels with a reference: differences with the drift of the day allowed for, intervals that hold for all labels together
 * (Dunnett, JASA 50, 1955), verdicts, ranking and groups. No verdict rests on one change-over: after it nobody can tell whether the
 * label or the day has changed.
 */
public final class LabelComparison {
    private static final int LEAST_EACH = 2;

    private LabelComparison() {}

    /** The comparison; without a value when the pulls cannot carry one, and then the findings say why. */
    public static Outcome<ComparisonResult> of(List<ComparedPull> pulls, ComparisonRequest request) {
        List<Finding> findings = new ArrayList<>(preconditions(pulls, request.reference()));
        if (findings.stream().anyMatch(Finding::isError)) {
            return Outcome.failed(findings);
        }
        List<ComparedPull> inOrder = pulls.stream()
                .sorted(Comparator.comparingDouble(ComparedPull::order))
                .toList();
        List<String> labels = labels(inOrder, request.reference());
        DayFit day = new DayModel(labels, request.known()).fit(inOrder);
        ComparisonResult result = result(day, inOrder, request);
        findings.addAll(ComparisonFindings.of(day, inOrder, result, request));
        Optional<ComparisonResult.FurtherPulls> further =
                ComparisonResult.FurtherPulls.of(result, request.looks(), inOrder.size());
        return Outcome.of(result.with(further, findings), findings);
    }

    private static List<String> labels(List<ComparedPull> pulls, String reference) {
        Set<String> labels = new LinkedHashSet<>();
        labels.add(reference);
        pulls.forEach(pull -> labels.add(pull.label()));
        return List.copyOf(labels);
    }

    private static ComparisonResult result(DayFit day, List<ComparedPull> pulls, ComparisonRequest request) {
        List<String> others = day.labels().subList(1, day.labels().size());
        InterimLooks looks = request.looks();
        SimultaneousLevel pairs = SimultaneousLevel.againstReference(day, request.seed());
        Errors errors = new Errors(
                pairs.each(InterimLooks.ERROR),
                pairs.each(looks.sameError()),
                pairs.each(looks.claimError(pulls.size())),
                pairs.each(looks.next(pulls.size(), 1).claimError(Integer.MAX_VALUE)));
        CurveBand curves = new CurveBand(day, pulls, request.seed());
        List<Comparison> comparisons = others.stream()
                .map(label -> comparison(day, pulls, request, label, errors, curves.against(label)))
                .sorted(Comparator.comparingDouble(
                        (Comparison one) -> -one.difference().percent()))
                .toList();
        List<String> ranking = day.labels().stream()
                .sorted(Comparator.comparingDouble(label -> -day.level(label)))
                .toList();
        return new ComparisonResult(
                new ComparisonResult.Reference(request.reference(), day.referenceLevel()),
                request.worthPercent(),
                comparisons,
                ranking,
                groups(
                        ranking,
                        differ(
                                day,
                                ran(pulls),
                                SimultaneousLevel.allPairs(day, request.seed()).each(looks.claimError(pulls.size())))),
                ComparisonFindings.scatters(day, pulls),
                day.drift(),
                day.warmUpPercent(),
                day.labels().stream()
                        .map(label -> new ComparisonResult.LevelCurve(label, curves.levels(label)))
                        .filter(curve -> !curve.rows().isEmpty())
                        .toList(),
                Optional.empty(),
                looks.isFinal(pulls.size()),
                List.of());
    }

    private static List<String> ran(List<ComparedPull> pulls) {
        return pulls.stream().map(ComparedPull::label).toList();
    }

    private static BiPredicate<String, String> differ(DayFit day, List<String> ran, double error) {
        return (one, other) -> {
            Estimate difference = day.differencePercent(one, other);
            return PullOrder.suffice(ran, one, other) && Math.abs(difference.value()) > difference.halfWidth(1 - error);
        };
    }

    /** Error of each comparison for the interval that is shown, for "same", for a claim now and for one at the next look. */
    private record Errors(double interval, double same, double claim, double nextClaim) {}

    private static Comparison comparison(
            DayFit day,
            List<ComparedPull> pulls,
            ComparisonRequest request,
            String label,
            Errors errors,
            List<Comparison.RowDifference> rows) {
        Estimate difference = day.differencePercent(label, request.reference());
        Comparison.PercentInterval interval = interval(difference, errors.interval());
        Comparison.PercentInterval claim = interval(difference, errors.claim());
        boolean changed = PullOrder.suffice(ran(pulls), label, request.reference());
        Comparison.Verdict verdict = changed
                ? verdict(interval(difference, errors.same()), claim, request, pulls.size())
                : Comparison.Verdict.CANNOT_TELL;
        return new Comparison(
                label,
                day.level(label),
                new Comparison.Difference(
                        difference.value() * day.referenceLevel() / 100, difference.value(), interval),
                verdict,
                day.driftFactor(label, pulls),
                verdict == Comparison.Verdict.CANNOT_TELL
                        ? pullsNeeded(day, pulls, request, label, errors)
                        : OptionalInt.empty(),
                rows);
    }

    private static Comparison.PercentInterval interval(Estimate estimate, double error) {
        Interval interval = estimate.interval(1 - error);
        return new Comparison.PercentInterval(interval.low(), interval.high());
    }

    private static Comparison.Verdict verdict(
            Comparison.PercentInterval same, Comparison.PercentInterval claim, ComparisonRequest request, int pulls) {
        if (same.isWithin(request.worthPercent()) && request.looks().isFinal(pulls)) {
            return Comparison.Verdict.SAME;
        }
        if (claim.low() > 0) {
            return Comparison.Verdict.MORE;
        }
        return claim.high() < 0 ? Comparison.Verdict.LESS : Comparison.Verdict.CANNOT_TELL;
    }

    /**
     * While planned pulls are missing, those; else as many as narrow the interval so far that the present difference would be settled,
     * by excluding zero or by lying within the worth, whichever is nearer.
     */
    private static OptionalInt pullsNeeded(
            DayFit day, List<ComparedPull> pulls, ComparisonRequest request, String label, Errors errors) {
        if (request.looks() instanceof InterimLooks.Planned planned && !planned.isFinal(pulls.size())) {
            return OptionalInt.of(planned.pulls() - pulls.size());
        }
        double worth = request.worthPercent();
        double distance =
                Math.abs(day.differencePercent(label, request.reference()).value());
        OptionalInt claim = PullsNeeded.further(day, pulls, label, Math.min(worth, distance), errors.nextClaim());
        OptionalInt same = distance < worth
                ? PullsNeeded.further(day, pulls, label, worth - distance, errors.same())
                : OptionalInt.empty();
        return claim.isPresent() && same.isPresent()
                ? OptionalInt.of(Math.min(claim.getAsInt(), same.getAsInt()))
                : claim.isPresent() ? claim : same;
    }

    /** The longest runs of neighbours in a ranking between which nothing differs, none within another; a label that differs from both neighbours stands alone. */
    static List<List<String>> groups(List<String> ranking, BiPredicate<String, String> differ) {
        List<List<String>> groups = new ArrayList<>();
        int covered = 0;
        for (int first = 0; first < ranking.size(); first++) {
            int end = first + 1;
            while (end < ranking.size() && noneDiffers(ranking.subList(first, end), ranking.get(end), differ)) {
                end++;
            }
            if (end > covered) {
                groups.add(ranking.subList(first, end));
                covered = end;
            }
        }
        return List.copyOf(groups);
    }

    private static boolean noneDiffers(List<String> group, String next, BiPredicate<String, String> differ) {
        return group.stream().noneMatch(label -> differ.test(label, next));
    }

    /** Why the pulls cannot be compared at all. */
    private static List<Finding> preconditions(List<ComparedPull> pulls, String reference) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        pulls.forEach(pull -> counts.merge(pull.label(), 1, Integer::sum));
        if (counts.isEmpty()) {
            return List.of(refused(FindingCode.COMPARE_NO_LABEL));
        }
        if (!counts.containsKey(reference)) {
            return List.of(unknownReference(reference, counts.keySet()));
        }
        if (counts.size() == 1) {
            return List.of(refused(FindingCode.COMPARE_ONE_LABEL, Detail.of("label", reference)));
        }
        List<Finding> findings = new ArrayList<>();
        counts.forEach((label, count) -> {
            if (count < LEAST_EACH) {
                findings.add(refused(FindingCode.COMPARE_ONE_PULL, Detail.of("label", label)));
            }
        });
        return findings;
    }

    private static Finding unknownReference(String reference, Set<String> labels) {
        Detail label = Detail.of("label", reference);
        Detail known = Detail.of("known", String.join(", ", labels));
        return NearestNames.of(reference, labels).stream()
                .findFirst()
                .map(nearest ->
                        refused(FindingCode.COMPARE_REFERENCE_MISSPELT, label, Detail.of("nearest", nearest), known))
                .orElseGet(() -> refused(FindingCode.COMPARE_REFERENCE_UNKNOWN, label, known));
    }

    private static Finding refused(FindingCode code, Detail... details) {
        return Finding.error(code, Place.nowhere(), details);
    }
}
