package org.nextpull.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;

/** Mean curves over speed with the interval of each; curves differ by colour and by dash. */
final class OverlayChart {
    private static final List<ChartFrame.Dash> DASHES =
            List.of(ChartFrame.Dash.NONE, ChartFrame.Dash.LONG, ChartFrame.Dash.MIDDLE, ChartFrame.Dash.SHORT);

    private OverlayChart() {}

    static ChartFrame of(OverlayPlot plot, ChartSize size, ChartLook look) {
        ChartFrame frame = new ChartFrame(size, look, new ChartFrame.Titles(plot.title(), "speed, rpm", plot.yTitle()));
        List<Color> colours = LineColours.of(look);
        List<Point> all = new ArrayList<>();
        for (int index = 0; index < plot.curves().size(); index++) {
            OverlayPlot.Curve curve = plot.curves().get(index);
            Color colour = colours.get(index % colours.size());
            String interval = "interval of " + curve.name();
            curve.band().ifPresent(band -> {
                frame.band(interval, band, colour);
                frame.hideFromLegend(interval);
                all.addAll(band.low());
                all.addAll(band.high());
            });
            frame.line(curve.name(), curve.mean(), new ChartFrame.Stroke(colour, 2, DASHES.get(index % DASHES.size())));
            all.addAll(curve.mean());
        }
        frame.limits(Extent.of(all, Point::x), Extent.of(all, Point::y));
        frame.xNumbers("0");
        return frame;
    }
}
