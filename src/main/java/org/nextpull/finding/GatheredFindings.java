package org.nextpull.finding;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Findings as they come, equal ones as one with their count and the first of their places, so that a file of any length gives no more of
 * them than there are kinds. Equal are those of one code, column and pull at several lines; without a line only those that say the same.
 */
public final class GatheredFindings {
    private final Map<List<Object>, Finding> kinds = new LinkedHashMap<>();

    /** What findings of one kind have in common. */
    private static List<Object> kind(Finding finding) {
        Place place = finding.place();
        List<Detail> said = place.line().isPresent() ? List.of() : finding.details();
        return List.of(finding.code(), finding.severity(), place.file(), place.key(), place.pull(), said);
    }

    /** These findings, gathered. */
    public static List<Finding> of(List<Finding> findings) {
        GatheredFindings gathering = new GatheredFindings();
        gathering.addAll(findings);
        return gathering.findings();
    }

    /** Adds one; the same finding twice is still one. */
    public void add(Finding finding) {
        kinds.merge(
                kind(finding),
                finding,
                (first, next) -> first.isSameAs(next) ? first : first.withCount(first.count() + next.count()));
    }

    /** Adds them in their order. */
    public void addAll(List<Finding> findings) {
        findings.forEach(this::add);
    }

    /** What was gathered, in the order in which each kind first came. */
    public List<Finding> findings() {
        return List.copyOf(kinds.values());
    }
}
