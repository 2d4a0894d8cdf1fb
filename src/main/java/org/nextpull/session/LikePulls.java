package org.nextpull.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.response.MeasuredPull;
import org.nextpull.scatter.SameSetting;

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
