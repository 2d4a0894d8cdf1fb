package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.Goal;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/**
 * Measured pulls, compared by label: band-average torque where all have it, band-average power likewise. Refuses figures that cannot
 * stand beside one another and flags conditions that differ between labels.
 *
 * @param torque comparison of torque in N.m, with rows; empty when a pull has none
 * @param power comparison of power in W, without rows; empty when a pull has none
 */
public record MeasuredComparison(Optional<ComparisonResult> torque, Optional<ComparisonResult> power) {

    /** The comparison of the response that the operator goes by. */
    public ComparisonResult by(Goal.Response response) {
        return (decides(response) == Goal.Response.TORQUE ? torque : power).orElseThrow();
    }

    /** The response that decides where the operator goes by one: the other where a pull does not have it. */
    public Goal.Response decides(Goal.Response wanted) {
        if (wanted == Goal.Response.TORQUE) {
            return torque.isPresent() ? Goal.Response.TORQUE : Goal.Response.POWER;
        }
        return power.isPresent() ? Goal.Response.POWER : Goal.Response.TORQUE;
    }

    /** Difference of torque of a label from the reference. */
    public Optional<Torque> torqueDifference(String label) {
        return torque.flatMap(result -> result.of(label))
                .map(one -> Torque.ofNewtonMetres(one.difference().value()));
    }

    /** Difference of power of a label from the reference. */
    public Optional<Power> powerDifference(String label) {
        return power.flatMap(result -> result.of(label))
                .map(one -> Power.ofWatts(one.difference().value()));
    }

    /** Compares the used pulls that carry a label; the findings of the outcome are those of the pulls and of the deciding response. */
    public static Outcome<MeasuredComparison> of(
            List<MeasuredPull> pulls, ComparisonRequest request, Goal.Response response) {
        List<Finding> findings = new ArrayList<>();
        List<MeasuredPull> used = new ArrayList<>();
        for (MeasuredPull pull : pulls) {
            if (pull.isUsed() && pull.setting().label().isEmpty()) {
                findings.add(Finding.warning(
                        FindingCode.COMPARE_WITHOUT_LABEL, pull.origin().place()));
            } else if (pull.isUsed()) {
                used.add(pull);
            }
        }
        findings.addAll(Comparability.of(used, request.reference()));
        if (findings.stream().anyMatch(Finding::isError)) {
            return Outcome.failed(findings);
        }
        boolean hasTorque =
                used.stream().allMatch(pull -> figures(pull).meanTorque().isPresent());
        boolean hasPower =
                used.stream().allMatch(pull -> figures(pull).meanPower().isPresent());
        if (!used.isEmpty() && !hasTorque && !hasPower) {
            findings.add(Finding.error(FindingCode.COMPARE_NO_COMMON_RESPONSE, Place.nowhere()));
            return Outcome.failed(findings);
        }
        Outcome<ComparisonResult> torque = LabelComparison.of(hasTorque ? torques(used) : List.of(), request);
        Outcome<ComparisonResult> power = LabelComparison.of(hasPower ? powers(used) : List.of(), request);
        boolean torqueDecides = hasTorque && (response == Goal.Response.TORQUE || !hasPower);
        (torqueDecides ? torque : power).findings().forEach(finding -> findings.add(named(finding, used)));
        return torque.value().isEmpty() && power.value().isEmpty()
                ? Outcome.failed(findings)
                : Outcome.of(new MeasuredComparison(torque.value(), power.value()), findings);
    }

    /** A finding on a pull of the day, at the log or session that it came from. */
    private static Finding named(Finding finding, List<MeasuredPull> pulls) {
        return pulls.stream()
                .filter(pull -> finding.place().equals(Place.ofPull(pull.number())))
                .findFirst()
                .map(pull -> finding.at(pull.origin().place()))
                .orElse(finding);
    }

    private static Figures figures(MeasuredPull pull) {
        return pull.figures().orElseThrow();
    }

    private static List<ComparedPull> torques(List<MeasuredPull> pulls) {
        return pulls.stream()
                .map(pull -> compared(
                        pull,
                        figures(pull).meanTorque().orElseThrow().newtonMetres(),
                        figures(pull).rows().stream()
                                .map(row -> new ComparedPull.RowValue(
                                        row.rpm(), row.torque().newtonMetres()))
                                .toList()))
                .toList();
    }

    private static List<ComparedPull> powers(List<MeasuredPull> pulls) {
        return pulls.stream()
                .map(pull ->
                        compared(pull, figures(pull).meanPower().orElseThrow().watts(), List.of()))
                .toList();
    }

    private static ComparedPull compared(MeasuredPull pull, double value, List<ComparedPull.RowValue> rows) {
        return new ComparedPull(
                pull.number(),
                pull.origin().day(),
                pull.order(),
                pull.setting().label().orElseThrow(),
                value,
                rows);
    }
}
