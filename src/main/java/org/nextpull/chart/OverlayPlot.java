package org.nextpull.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.unit.Unit;
import org.nextpull.unit.UnitSystem;

/**
 * The data of a chart of mean curves over speed, one a configuration.
 *
 * @param title what it shows
 * @param yTitle figure and unit
 * @param curves the curves, the reference first
 */
public record OverlayPlot(String title, String yTitle, List<Curve> curves) implements Plot {
    private static final List<Stroke.Dash> DASHES =
            List.of(Stroke.Dash.NONE, Stroke.Dash.LONG, Stroke.Dash.MIDDLE, Stroke.Dash.SHORT);

    public OverlayPlot {
        curves = List.copyOf(curves);
    }

    /**
     * One configuration.
     *
     * @param name its label
     * @param mean mean over its pulls, over speed in rpm
     * @param band interval of that mean; empty where it rests on one pull
     */
    public record Curve(String name, List<Point> mean, Optional<Plot.Band> band) {
        public Curve {
            mean = List.copyOf(mean);
        }
    }

    /** Mean curves of all labels with their bands; empty when the pulls have no rows, as with tables of results. */
    public static Optional<OverlayPlot> of(MeasuredComparison both, UnitSystem units) {
        Unit unit = units.torque();
        return both.torque()
                .filter(result -> !result.curves().isEmpty())
                .map(result -> new OverlayPlot(
                        "Mean torque of each, drift removed, whole-curve 95 % limits",
                        "torque, corrected, " + unit.sign(),
                        result.curves().stream()
                                .map(curve -> curve(curve, unit))
                                .toList()));
    }

    private static Curve curve(ComparisonResult.LevelCurve curve, Unit unit) {
        return new Curve(
                curve.label(),
                curve.rows().stream()
                        .map(row -> new Point(row.rpm(), unit.fromSi(row.level().value())))
                        .toList(),
                Optional.of(new Plot.Band(
                        curve.rows().stream()
                                .map(row -> new Point(
                                        row.rpm(), unit.fromSi(row.level().low())))
                                .toList(),
                        curve.rows().stream()
                                .map(row -> new Point(
                                        row.rpm(), unit.fromSi(row.level().high())))
                                .toList())));
    }

    @Override
    public ChartFrame frame(ChartSize size, ChartLook look) {
        ChartFrame frame = new ChartFrame(size, look, ChartFrame.Titles.overSpeed(title, yTitle));
        List<Color> colours = look.lines();
        List<Point> all = new ArrayList<>();
        for (int index = 0; index < curves.size(); index++) {
            Curve curve = curves.get(index);
            Color colour = colours.get(index % colours.size());
            String interval = "interval of " + curve.name();
            curve.band().ifPresent(band -> {
                frame.band(interval, band, colour);
                frame.hideFromLegend(interval);
                all.addAll(band.points());
            });
            frame.line(curve.name(), curve.mean(), new Stroke(colour, 2, DASHES.get(index % DASHES.size())));
            all.addAll(curve.mean());
        }
        frame.limitsOverSpeed(Extent.of(all, Point::x), Extent.of(all, Point::y));
        return frame;
    }
}
