package org.nextpull.chart;

import java.util.List;
import java.util.Optional;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.compare.LevelCurve;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.compare.RowDifference;
import org.nextpull.unit.Unit;
import org.nextpull.unit.UnitSystem;

/** Turns a comparison into the data of its charts; torque decides over speed, whichever response decided over the band. */
public final class ComparePlots {
    private ComparePlots() {}

    /** Mean curves of all labels with their bands; empty when the pulls have no rows, as with tables of results. */
    public static Optional<OverlayPlot> overlay(MeasuredComparison both, UnitSystem units) {
        Unit unit = ResponseUnit.torque(units);
        return both.torque()
                .filter(result -> !result.curves().isEmpty())
                .map(result -> new OverlayPlot(
                        "Mean torque of each, drift removed, whole-curve 95 % limits",
                        "torque, corrected, " + unit.sign(),
                        result.curves().stream()
                                .map(curve -> curve(curve, unit))
                                .toList()));
    }

    private static OverlayPlot.Curve curve(LevelCurve curve, Unit unit) {
        return new OverlayPlot.Curve(
                curve.label(),
                curve.rows().stream()
                        .map(row -> new Point(row.rpm(), unit.fromSi(row.level().value())))
                        .toList(),
                Optional.of(new DrawnBand(
                        curve.rows().stream()
                                .map(row -> new Point(
                                        row.rpm(), unit.fromSi(row.level().low())))
                                .toList(),
                        curve.rows().stream()
                                .map(row -> new Point(
                                        row.rpm(), unit.fromSi(row.level().high())))
                                .toList())));
    }

    /** The difference of each label from the reference over speed, in percent; empty when the pulls have no rows. */
    public static List<DifferencePlot> differences(MeasuredComparison both) {
        return both.torque().stream()
                .flatMap(result -> result.comparisons().stream()
                        .filter(one -> !one.rows().isEmpty())
                        .map(one -> difference(one, result)))
                .toList();
    }

    private static DifferencePlot difference(Comparison one, ComparisonResult result) {
        List<RowDifference> rows = one.rows();
        return new DifferencePlot(
                one.label() + " vs " + result.reference().label(),
                "difference of torque, %",
                (int) ComparisonResult.INTERVAL_PERCENT,
                rows.stream().map(row -> new Point(row.rpm(), row.percent())).toList(),
                new DrawnBand(
                        rows.stream()
                                .map(row -> new Point(row.rpm(), row.band().low()))
                                .toList(),
                        rows.stream()
                                .map(row -> new Point(row.rpm(), row.band().high()))
                                .toList()),
                result.worthPercent());
    }
}
