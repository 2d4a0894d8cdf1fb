package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.text.PlanKey.Range;
import org.tomlj.TomlPosition;

/** Gathers what is wrong with one plan. */
final class PlanProblems {
    private final String file;
    private final List<Finding> found = new ArrayList<>();

    PlanProblems(String file) {
        this.file = file;
    }

    void error(FindingCode code, Spot spot, Detail... details) {
        add(Finding.Severity.ERROR, code, spot, details);
    }

    void warning(FindingCode code, Spot spot, Detail... details) {
        add(Finding.Severity.WARNING, code, spot, details);
    }

    /** {@code first} is on the wrong side of {@code second}: it must be {@code relation} it. */
    void order(Finding.Severity severity, Spot first, String relation, Spot second) {
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

    void add(Finding.Severity severity, FindingCode code, Spot spot, Detail... details) {
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

    /** Takes a value of a plan as a number; an integer is as good as a decimal. */
    record NumberCheck(PlanProblems problems, Range range) {
        OptionalDouble number(Spot spot, Object value) {
            if (!(value instanceof Long || value instanceof Double)) {
                problems.error(FindingCode.PLAN_WRONG_TYPE, spot, Detail.of("want", "a number"));
                return OptionalDouble.empty();
            }
            double number = ((Number) value).doubleValue();
            if (!Double.isFinite(number)) {
                problems.error(FindingCode.PLAN_NOT_FINITE, spot);
                return OptionalDouble.empty();
            }
            if (!range.holds(number)) {
                problems.error(
                        FindingCode.PLAN_OUT_OF_RANGE,
                        spot,
                        Detail.of("low", PlanValueText.number(range.low())),
                        Detail.of("high", PlanValueText.number(range.high())));
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(number);
        }

        OptionalInt whole(Spot spot, Object value) {
            OptionalDouble number = number(spot, value);
            if (number.isEmpty()) {
                return OptionalInt.empty();
            }
            int whole = (int) number.getAsDouble();
            if (whole != number.getAsDouble()) {
                problems.error(FindingCode.PLAN_WRONG_TYPE, spot, Detail.of("want", "a whole number"));
                return OptionalInt.empty();
            }
            return OptionalInt.of(whole);
        }
    }

    /**
     * Where a key stands and how its value looks.
     *
     * @param key dotted from the top of the plan
     * @param position of the key; empty when it is not written
     * @param value as a plan would write it; for a key that is not written, its default, or empty
     */
    record Spot(String key, Optional<TomlPosition> position, String value) {}
}
