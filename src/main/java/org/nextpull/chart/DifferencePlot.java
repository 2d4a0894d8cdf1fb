package org.nextpull.chart;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.compare.MeasuredComparison;

/**
 * The data of a chart of the difference between two configurations over speed.
 *
 * @param title which against which
 * @param yTitle difference and unit
 * @param intervalPercent what the interval is: 95 for a 95 % interval
 * @param mean the difference over speed in rpm
 * @param interval its interval
 * @param worth the smallest difference that matters, in the unit of the axis; drawn to both sides of zero
 */
public record DifferencePlot(
        String title, String yTitle, int intervalPercent, List<Point> mean, Plot.Band interval, double worth)
        implements Plot {

    /**
     * Accepts 0 where every difference matters.
     *
     * @throws IllegalArgumentException when the smallest difference is negative or NaN
     */
    public DifferencePlot {
        mean = List.copyOf(mean);
        if (!(worth >= 0)) {
            throw new IllegalArgumentException("a difference that matters is not negative: " + worth);
        }
    }

    /** The difference of each label from the reference over speed, in percent; empty when the pulls have no rows. */
    public static List<DifferencePlot> of(MeasuredComparison both) {
        return both.torque().stream()
                .flatMap(result -> result.comparisons().stream()
                        .filter(one -> !one.rows().isEmpty())
                        .map(one -> difference(one, result)))
                .toList();
    }

    private static DifferencePlot difference(Comparison one, ComparisonResult result) {
        List<Comparison.RowDifference> rows = one.rows();
        return new DifferencePlot(
                one.label() + " vs " + result.reference().label(),
                "difference of torque, %",
                (int) ComparisonResult.INTERVAL_PERCENT,
                rows.stream().map(row -> new Point(row.rpm(), row.percent())).toList(),
                new Plot.Band(
                        rows.stream()
                                .map(row -> new Point(row.rpm(), row.band().low()))
                                .toList(),
                        rows.stream()
                                .map(row -> new Point(row.rpm(), row.band().high()))
                                .toList()),
                result.worthPercent());
    }

    @Override
    public ChartFrame frame(ChartSize size, ChartLook look) {
        ChartFrame frame = new ChartFrame(size, look, ChartFrame.Titles.overSpeed(title, yTitle));
        List<Point> all = new ArrayList<>(mean);
        all.addAll(interval.points());
        Extent x = Extent.of(all, Point::x);
        all.add(new Point(x.low(), -worth));
        all.add(new Point(x.low(), worth));
        if (worth > 0) {
            frame.band("too small to matter", level(x, -worth, worth), Palette.YELLOW.color());
        }
        frame.darkBand(intervalPercent + " % CI", interval, Palette.SKY_BLUE.color());
        if (worth > 0) {
            for (double edge : new double[] {-worth, worth}) {
                String name = "too small to matter, edge at " + edge;
                frame.level(name, x, edge, Stroke.dashed(look.ink()).thin());
                frame.hideFromLegend(name);
            }
        }
        frame.level(" none", x, 0, Stroke.dotted(look.ink()));
        frame.hideFromLegend(" none");
        frame.line("difference", mean, Stroke.solid(look.curve()));
        frame.limitsOverSpeed(x, Extent.of(all, Point::y));
        return frame;
    }

    private static Plot.Band level(Extent x, double low, double high) {
        return new Plot.Band(
                List.of(new Point(x.low(), low), new Point(x.high(), low)),
                List.of(new Point(x.low(), high), new Point(x.high(), high)));
    }
}
