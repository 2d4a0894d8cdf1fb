package org.nextpull.chart;

import java.util.ArrayList;
import java.util.List;

/** The difference over speed with its interval, against zero and against the differences too small to matter. */
final class DifferenceChart {
    private DifferenceChart() {}

    static ChartFrame of(DifferencePlot plot, ChartSize size, ChartLook look) {
        ChartFrame frame = new ChartFrame(size, look, new ChartFrame.Titles(plot.title(), "speed, rpm", plot.yTitle()));
        List<Point> all = new ArrayList<>(plot.mean());
        all.addAll(plot.interval().low());
        all.addAll(plot.interval().high());
        Extent x = Extent.of(all, Point::x);
        all.add(new Point(x.low(), -plot.worth()));
        all.add(new Point(x.low(), plot.worth()));
        if (plot.worth() > 0) {
            frame.band("too small to matter", level(x, -plot.worth(), plot.worth()), Palette.YELLOW.color());
        }
        frame.band(plot.intervalPercent() + " % interval", plot.interval(), Palette.SKY_BLUE.color());
        frame.line(
                "no difference",
                List.of(new Point(x.low(), 0), new Point(x.high(), 0)),
                ChartFrame.Stroke.dotted(look.ink()));
        frame.line("difference", plot.mean(), ChartFrame.Stroke.solid(look.curve()));
        frame.limits(x, Extent.of(all, Point::y));
        frame.xNumbers("0");
        return frame;
    }

    private static DrawnBand level(Extent x, double low, double high) {
        return new DrawnBand(
                List.of(new Point(x.low(), low), new Point(x.high(), low)),
                List.of(new Point(x.low(), high), new Point(x.high(), high)));
    }
}
