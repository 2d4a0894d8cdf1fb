package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.finding.Severity;

/** Gathers what is wrong with one plan. */
final class Problems {
    private final String file;
    private final List<Finding> found = new ArrayList<>();

    Problems(String file) {
        this.file = file;
    }

    void error(FindingCode code, Spot spot, Detail... details) {
        add(Severity.ERROR, code, spot, details);
    }

    void warning(FindingCode code, Spot spot, Detail... details) {
        add(Severity.WARNING, code, spot, details);
    }

    /** {@code first} is on the wrong side of {@code second}: it must be {@code relation} it. */
    void order(Severity severity, Spot first, String relation, Spot second) {
        add(
                severity,
                FindingCode.PLAN_ORDER,
                first,
                Detail.of("relation", relation),
                Detail.of("other", second.key()),
                Detail.of("other_value", second.value()));
    }

    /** Both keys are fine, but not together. */
    void conflict(FindingCode code, Spot first, Spot second) {
        error(code, first, Detail.of("other", second.key()), Detail.of("other_value", second.value()));
    }

    void add(Severity severity, FindingCode code, Spot spot, Detail... details) {
        List<Detail> all = new ArrayList<>();
        if (!spot.value().isEmpty()) {
            all.add(Detail.of("value", spot.value()));
        }
        all.addAll(Arrays.asList(details));
        found.add(new Finding(code, severity, all, place(spot)));
    }

    /** Findings that another room made about a place of this plan. */
    void addAll(List<Finding> findings) {
        found.addAll(findings);
    }

    Place place(Spot spot) {
        Place file = Place.inFile(this.file);
        Place place = spot.position()
                .map(position -> file.withLine(position.line()).withColumn(position.column()))
                .orElse(file);
        return spot.key().isEmpty() ? place : place.withKey(spot.key());
    }

    /** All of them in the order of the file; those without a line last. */
    List<Finding> inOrder() {
        return found.stream()
                .sorted(Comparator.<Finding>comparingLong(
                                finding -> finding.place().line().orElse(Long.MAX_VALUE))
                        .thenComparingInt(finding -> finding.place().column().orElse(Integer.MAX_VALUE)))
                .toList();
    }
}
