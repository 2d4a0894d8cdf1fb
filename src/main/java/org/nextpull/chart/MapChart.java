package org.nextpull.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Spark advance over speed: what was tried, where the best lies, the map that stays and the next one, and what knock and the plan leave. */
final class MapChart {
    private final MapPlot plot;
    private final ChartLook look;
    private final ChartFrame frame;

    private MapChart(MapPlot plot, ChartSize size, ChartLook look) {
        this.plot = plot;
        this.look = look;
        this.frame =
                new ChartFrame(size, look, new ChartFrame.Titles("Spark map", "speed, rpm", "advance, deg before TDC"));
    }

    static ChartFrame of(MapPlot plot, ChartSize size, ChartLook look) {
        MapChart chart = new MapChart(plot, size, look);
        chart.draw();
        return chart.frame;
    }

    private void draw() {
        List<Point> all = all();
        Extent x = Extent.of(all, Point::x);
        Extent y = Extent.of(all, Point::y);
        plot.interval().ifPresent(band -> frame.band("best, 90 %", band, Palette.SKY_BLUE.color()));
        plot.nearTop()
                .ifPresent(band -> frame.band(
                        "within " + plot.nearTopPercent() + " % of peak", band, Palette.BLUISH_GREEN.color()));
        for (int pull = 0; pull < plot.tried().size(); pull++) {
            String name = pull == 0 ? "tried" : "tried " + pull;
            frame.line(
                    name,
                    plot.tried().get(pull),
                    ChartFrame.Stroke.solid(look.ink()).thin());
            if (pull > 0) {
                frame.hideFromLegend(name);
            }
        }
        line("final if it ended now", plot.chosen(), ChartFrame.Stroke.solid(Palette.BLUISH_GREEN.color()));
        line("next pull", plot.next(), new ChartFrame.Stroke(Palette.ORANGE.color(), 2.5f, ChartFrame.Dash.LONG));
        if (!plot.knock().isEmpty()) {
            Color red = Palette.VERMILLION.color();
            frame.marks("knock, less the margin", plot.knock(), new ChartFrame.Mark(red, SeriesMarkers.TRIANGLE_DOWN));
        }
        if (y.contains(plot.most())) {
            frame.line(
                    "plan's limit",
                    List.of(new Point(x.low(), plot.most()), new Point(x.high(), plot.most())),
                    ChartFrame.Stroke.dotted(look.ink()));
        }
        frame.limits(x, y);
        frame.xNumbers("0");
    }

    private void line(String name, List<Point> points, ChartFrame.Stroke stroke) {
        if (points.size() > 1) {
            frame.line(name, points, stroke);
        }
    }

    private List<Point> all() {
        List<Point> all = new ArrayList<>();
        plot.tried().forEach(all::addAll);
        List.of(plot.chosen(), plot.next(), plot.knock()).forEach(all::addAll);
        List.of(plot.interval(), plot.nearTop())
                .forEach(band -> band.ifPresent(drawn -> {
                    all.addAll(drawn.low());
                    all.addAll(drawn.high());
                }));
        return all;
    }
}
