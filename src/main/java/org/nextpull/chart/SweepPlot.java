package org.nextpull.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.unit.Span;

/**
 * The data of a chart of the response against the factor of a sweep; what is drawn is this and nothing else.
 *
 * @param title what it shows
 * @param xTitle factor and unit
 * @param yTitle response and unit
 * @param points pulls that count
 * @param doubtful pulls that count little in the fit
 * @param knocked pulls in which knock was heard
 * @param curve fitted curve; empty before one could be fitted
 * @param band its 90 % interval
 * @param chosen the setting that is chosen, on the curve
 * @param interval 90 % interval of what the sweep looks for
 * @param lines knock limit, limits of the plan, and edges
 */
public record SweepPlot(
        String title,
        String xTitle,
        String yTitle,
        List<Point> points,
        List<Point> doubtful,
        List<Point> knocked,
        List<Point> curve,
        Optional<DrawnBand> band,
        Optional<Point> chosen,
        Optional<Interval> interval,
        List<ReferenceLine> lines) {
    /**
     * A 90 % interval of a setting.
     *
     * @param of what it is the interval of, as the legend says it
     * @param span from and to, in the unit of the factor
     */
    public record Interval(String of, Span span) {}

    public SweepPlot {
        points = List.copyOf(points);
        doubtful = List.copyOf(doubtful);
        knocked = List.copyOf(knocked);
        curve = List.copyOf(curve);
        lines = List.copyOf(lines);
    }

    /** The same chart with one more line. */
    public SweepPlot with(ReferenceLine line) {
        List<ReferenceLine> more = new ArrayList<>(lines);
        more.add(line);
        return new SweepPlot(title, xTitle, yTitle, points, doubtful, knocked, curve, band, chosen, interval, more);
    }
}
