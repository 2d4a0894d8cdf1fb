package org.nextpull.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.compare.ComparisonRequest;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.Goal;
import org.nextpull.response.MeasuredPull;

/**
 * The comparison of a day's labels.
 *
 * @param orderFrom where the order of the pulls comes from
 * @param pulls the pulls with their labels, in that order
 * @param outcome the comparison, or why there is none
 */
public record ComparedDay(OrderFrom orderFrom, List<MeasuredPull> pulls, Outcome<MeasuredComparison> outcome) {
    public ComparedDay {
        pulls = List.copyOf(pulls);
    }

    /**
     * Compares.
     *
     * @param result the day
     * @param labels label of each source that was named with one
     * @param request what is asked
     */
    public static ComparedDay of(SessionResult result, Map<String, String> labels, ComparisonRequest request) {
        // the sweeps of a day of candidates ran each at settings that were still sought
        Optional<CandidateDay> decided =
                result.candidates().filter(day -> !day.runs().isEmpty());
        List<MeasuredPull> pulls = decided.map(CandidateDay::runs).orElseGet(result::pulls).stream()
                .map(pull -> labelled(pull, labels))
                .toList();
        Goal.Response response = result.plan().goal().response();
        LikePulls like = decided.isPresent() ? new LikePulls(pulls, List.of()) : LikePulls.of(pulls);
        Outcome<MeasuredComparison> outcome = MeasuredComparison.of(like.pulls(), request, response);
        List<Finding> findings = new ArrayList<>(countedOnce(pulls));
        findings.addAll(like.findings());
        findings.addAll(outcome.findings());
        return new ComparedDay(result.orderFrom(), pulls, new Outcome<>(outcome.value(), findings));
    }

    /** Sources that hold the same pulls, each pair of them once. */
    private static List<Finding> countedOnce(List<MeasuredPull> pulls) {
        return pulls.stream()
                .flatMap(pull -> pull.findings().stream()
                        .filter(finding -> finding.code() == FindingCode.PULL_COUNTED_ALREADY)
                        .map(finding -> Finding.warning(
                                FindingCode.COMPARE_COUNTED_ONCE,
                                Place.inFile(pull.origin().source()),
                                Detail.of("other", finding.text("other").orElseThrow()))))
                .distinct()
                .toList();
    }

    private static MeasuredPull labelled(MeasuredPull pull, Map<String, String> labels) {
        return Optional.ofNullable(labels.get(pull.origin().source()))
                .map(pull::withLabel)
                .orElse(pull);
    }
}
