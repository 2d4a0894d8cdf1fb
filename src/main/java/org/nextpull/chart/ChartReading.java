package org.nextpull.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;

/** What a drawn chart shows at a place of its picture, so that the value below the pointer can be said. */
public final class ChartReading {
    /** A point further from the pointer than this many pixels is not meant. */
    private static final double NEAR = 24;

    private record Spot(double x, double y, String words) {}

    private final List<Spot> spots;

    private ChartReading(List<Spot> spots) {
        this.spots = List.copyOf(spots);
    }

    /** Reads a chart that has just been painted. */
    static ChartReading of(XYChart chart) {
        List<Spot> spots = new ArrayList<>();
        for (XYSeries series : chart.getSeriesCollection()) {
            boolean isArea = series.getXYSeriesRenderStyle()
                    .filter(style -> style == XYSeries.XYSeriesRenderStyle.PolygonArea)
                    .isPresent();
            double[] xs = series.getXData();
            double[] ys = series.getYData();
            for (int index = 0; index < xs.length && !isArea; index++) {
                if (Double.isFinite(ys[index])) {
                    spots.add(new Spot(
                            chart.getScreenXFromChart(xs[index]),
                            chart.getScreenYFromChart(ys[index], series.getYAxisGroup()),
                            series.getName().strip() + ": " + number(xs[index]) + ", " + number(ys[index])));
                }
            }
        }
        return new ChartReading(spots);
    }

    private static String number(double value) {
        int places = Math.abs(value) >= 1000 ? 0 : Math.abs(value) >= 10 ? 1 : 3;
        return String.format(Locale.ROOT, "%." + places + "f", value);
    }

    /**
     * The point nearest to a place.
     *
     * @param x pixels from the left edge of the picture
     * @param y pixels from its upper edge
     * @return name and both values, as {@code pulls: 26.0, 181.1}; empty where no point is near
     */
    public Optional<String> at(double x, double y) {
        Optional<String> found = Optional.empty();
        double nearest = NEAR;
        for (Spot spot : spots) {
            double away = Math.hypot(spot.x() - x, spot.y() - y);
            if (away < nearest) {
                nearest = away;
                found = Optional.of(spot.words());
            }
        }
        return found;
    }
}
