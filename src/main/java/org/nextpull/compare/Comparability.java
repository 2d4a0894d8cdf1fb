package org.nextpull.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.nextpull.air.Correction;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.math.Series;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Temperature;

/**
 * Whether measured pulls may stand beside one another: one standard and one band for all; and whether each label ran under the same
 * conditions as the reference, by the medians of its pulls.
 */
final class Comparability {
    private static final String NO_STANDARD = "none";

    private Comparability() {}

    static List<Finding> of(List<MeasuredPull> pulls, String reference) {
        List<Finding> findings = new ArrayList<>();
        standardsDiffer(pulls).ifPresent(findings::add);
        bandsDiffer(pulls).ifPresent(findings::add);
        Set<String> labels = new LinkedHashSet<>();
        pulls.forEach(pull -> pull.setting().label().ifPresent(labels::add));
        labels.remove(reference);
        List<MeasuredPull> ofReference = labelled(pulls, reference);
        for (String label : labels) {
            for (ComparedCondition condition : ComparedCondition.values()) {
                differs(condition, labelled(pulls, label), ofReference)
                        .map(amount -> Finding.warning(
                                condition.code(),
                                Place.nowhere(),
                                Detail.of("label", label),
                                Detail.of("reference", reference),
                                Detail.of(condition.detail(), amount)))
                        .ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static List<MeasuredPull> labelled(List<MeasuredPull> pulls, String label) {
        return pulls.stream()
                .filter(pull -> pull.setting().label().equals(Optional.of(label)))
                .toList();
    }

    /** The difference of the medians where it is larger than the condition allows; empty also where it was not measured. */
    private static Optional<Double> differs(
            ComparedCondition condition, List<MeasuredPull> own, List<MeasuredPull> others) {
        Series one = condition.readings(own);
        Series other = condition.readings(others);
        if (one.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        double difference = one.median() - other.median();
        return Math.abs(difference) > condition.allowed() ? Optional.of(difference) : Optional.empty();
    }

    private static Optional<Finding> standardsDiffer(List<MeasuredPull> pulls) {
        return pulls.stream()
                .filter(pull -> !standard(pull).equals(standard(pulls.get(0))))
                .findFirst()
                .map(pull -> Finding.error(
                        FindingCode.COMPARE_STANDARDS_DIFFER,
                        pull.origin().place(),
                        Detail.of("standard", standard(pull)),
                        Detail.of("other_pull", pulls.get(0).origin().candidate()),
                        Detail.of("other_file", pulls.get(0).origin().source()),
                        Detail.of("other", standard(pulls.get(0)))));
    }

    private static String standard(MeasuredPull pull) {
        return pull.correction()
                .map(Correction::standard)
                .map(standard -> standard.id())
                .orElse(NO_STANDARD);
    }

    /** Tables of results have no rows and cannot be checked. */
    private static Optional<Finding> bandsDiffer(List<MeasuredPull> pulls) {
        List<MeasuredPull> withRows =
                pulls.stream().filter(pull -> !rows(pull).isEmpty()).toList();
        return withRows.stream()
                .filter(pull -> !ends(pull).equals(ends(withRows.get(0))))
                .findFirst()
                .map(pull -> Finding.error(
                        FindingCode.COMPARE_BANDS_DIFFER,
                        pull.origin().place(),
                        Detail.of("from", ends(pull).get(0)),
                        Detail.of("to", ends(pull).get(1)),
                        Detail.of("other_pull", withRows.get(0).origin().candidate()),
                        Detail.of("other_file", withRows.get(0).origin().source()),
                        Detail.of("other_from", ends(withRows.get(0)).get(0)),
                        Detail.of("other_to", ends(withRows.get(0)).get(1))));
    }

    private static List<Figures.AtSpeed> rows(MeasuredPull pull) {
        return pull.figures().map(Figures::rows).orElse(List.of());
    }

    private static List<Double> ends(MeasuredPull pull) {
        List<Figures.AtSpeed> rows = rows(pull);
        return List.of(rows.get(0).rpm(), rows.get(rows.size() - 1).rpm());
    }

    /** What should be alike when labels are compared, and how far medians may differ before it is said (common practice, no source). */
    private enum ComparedCondition {
        INLET_AIR(FindingCode.COMPARE_INLET_AIR_DIFFERS, "kelvins", 3) {
            @Override
            Optional<Double> reading(MeasuredPull pull) {
                return pull.conditions().inletAir().map(Temperature::kelvins);
            }
        },
        COOLANT(FindingCode.COMPARE_COOLANT_DIFFERS, "kelvins", 4) {
            @Override
            Optional<Double> reading(MeasuredPull pull) {
                return pull.conditions().coolant().map(Temperature::kelvins);
            }
        },
        LAMBDA(FindingCode.COMPARE_LAMBDA_DIFFERS, "lambda", 0.015) {
            @Override
            Optional<Double> reading(MeasuredPull pull) {
                return pull.setting().lambda().map(Lambda::value);
            }
        },
        ADVANCE(FindingCode.COMPARE_ADVANCE_DIFFERS, "deg", 1) {
            @Override
            Optional<Double> reading(MeasuredPull pull) {
                return pull.setting()
                        .advance()
                        .or(() -> pull.setting().offset())
                        .map(Advance::deg);
            }
        };

        private final FindingCode code;
        private final String detail;
        private final double allowed;

        ComparedCondition(FindingCode code, String detail, double allowed) {
            this.code = code;
            this.detail = detail;
            this.allowed = allowed;
        }

        abstract Optional<Double> reading(MeasuredPull pull);

        FindingCode code() {
            return code;
        }

        /** Name of the difference among the finding's details; its unit is the project's. */
        String detail() {
            return detail;
        }

        double allowed() {
            return allowed;
        }

        Series readings(List<MeasuredPull> pulls) {
            return Series.of(
                    pulls.stream().flatMap(pull -> reading(pull).stream()).mapToDouble(Double::doubleValue));
        }
    }
}
