package org.nextpull.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
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
import org.nextpull.scatter.SameSetting;

/**
 * The comparison of a day's labels.
 *
 * @param orderFrom where the order of the pulls comes from
 * @param pulls the pulls with their labels, in that order
 * @param outcome the comparison, or why there is none
 */
public record ComparedDay(
        SessionResult.OrderFrom orderFrom, List<MeasuredPull> pulls, Outcome<MeasuredComparison> outcome) {
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
        ComparisonRequest asked =
                decided.map(day -> request.knowing(day.scatters())).orElse(request);
        Goal.Response response = result.plan().goal().response();
        LikePulls like = decided.isPresent() ? new LikePulls(pulls, List.of()) : LikePulls.of(pulls);
        Outcome<MeasuredComparison> outcome = MeasuredComparison.of(like.pulls(), asked, response);
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

    /**
     * The pulls that may stand for their labels in a comparison. A label that was swept has pulls of many settings, and their mean is that of
     * the settings: of it only the setting counts that was run last and more than once, as the one that a sweep ends with.
     *
     * @param pulls the pulls that are compared, in their order
     * @param findings labels of which some were left out
     */
    record LikePulls(List<MeasuredPull> pulls, List<Finding> findings) {
        /** Settings nearer than this are one (common practice, no source); the mixture of a pull is not held closer. */
        private static final SameSetting ALIKE = new SameSetting(1.0, 0.03);

        LikePulls {
            pulls = List.copyOf(pulls);
            findings = List.copyOf(findings);
        }

        static LikePulls of(List<MeasuredPull> pulls) {
            Map<String, List<MeasuredPull>> byLabel = new LinkedHashMap<>();
            pulls.stream()
                    .filter(MeasuredPull::isUsed)
                    .forEach(pull -> pull.setting()
                            .label()
                            .ifPresent(label -> byLabel.computeIfAbsent(label, any -> new ArrayList<>())
                                    .add(pull)));
            List<MeasuredPull> left = new ArrayList<>(pulls);
            List<Finding> findings = new ArrayList<>();
            byLabel.forEach((label, own) -> {
                List<MeasuredPull> alike = alike(own);
                if (alike.size() < own.size()) {
                    own.stream().filter(pull -> !alike.contains(pull)).forEach(left::remove);
                    findings.add(Finding.warning(
                            FindingCode.COMPARE_SWEPT,
                            Place.nowhere(),
                            Detail.of("label", label),
                            Detail.of("pulls", own.size()),
                            Detail.of("kept", alike.size())));
                }
            });
            return new LikePulls(left, findings);
        }

        /** All of them where they are of one setting; else those of the last setting that was run more than once, or the last alone. */
        private static List<MeasuredPull> alike(List<MeasuredPull> own) {
            for (int index = own.size() - 1; index >= 0; index--) {
                MeasuredPull last = own.get(index);
                List<MeasuredPull> group =
                        own.stream().filter(pull -> ALIKE.matches(pull, last)).toList();
                if (group.size() > 1) {
                    return group;
                }
            }
            return own.subList(own.size() - 1, own.size());
        }
    }
}
