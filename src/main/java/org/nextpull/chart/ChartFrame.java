package org.nextpull.chart;

import java.awt.Color;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.AnnotationText;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** A chart with the look that all of them share, and the few kinds of series that they are made of. */
final class ChartFrame {
    /** More points than this on a line cannot be told apart on paper; drawn piece by piece they only roughen its edge. */
    private static final int MOST_POINTS = 240;

    /** A place lower than this has no room for a title, which the axes repeat, and for wide edges. */
    private static final int LOW = 330;

    /** What numbers, title and legend below an axis take of the height of a low chart, and the numbers beside it of its width. */
    private static final int BELOW_AXIS = 50;

    /** A line of words in a chart in CSS pixels, and what a plot about takes of its chart. */
    private static final double WORDS_HIGH = 16;

    /** A chart lower than this in CSS pixels has no room for words over its curves. */
    private static final double LEAST_FOR_WORDS = 165;

    /** A chart lower than this has no room to say at an axis which lines are its own. */
    private static final double LEAST_FOR_STROKES = 200;

    private static final double PLOT_HIGH = 0.72;
    private static final double PLOT_WIDE = 0.78;

    /** How opaque a filled stretch is, of 255. */
    private static final int FAINT = 60;

    private final XYChart chart;
    private final float scale;
    private final double high;

    ChartFrame(ChartSize size, ChartLook look, Titles titles) {
        this.scale = (float) size.scale();
        this.high = size.height();
        this.chart = new XYChartBuilder()
                .width(size.pixelsWide())
                .height(size.pixelsHigh())
                .title(titles.chart())
                .xAxisTitle(axis(titles.x()))
                .yAxisTitle(axis(titles.y()))
                .build();
        look.dress(chart.getStyler(), scale);
        if (isLow()) {
            chart.getStyler().setChartTitleVisible(false);
            chart.getStyler().setLegendPadding(Math.round(4 * scale));
            chart.getStyler()
                    .setAxisTitleFont(new Font(ChartLook.FONT, Font.PLAIN, 1)
                            .deriveFont(Math.min(
                                    fitting(axis(titles.y()), size.height()),
                                    fitting(axis(titles.x()), size.width()))));
            chart.getStyler().setChartPadding(Math.round(5 * scale));
        }
    }

    /**
     * What stands at the chart.
     *
     * @param chart above it
     * @param x below it
     * @param y beside it
     */
    record Titles(String chart, String x, String y) {
        static Titles overSpeed(String chart, String y) {
            return new Titles(chart, "speed, rpm", y);
        }
    }

    /** Whether the chart has a low place, so that words must be few. */
    boolean isLow() {
        return high < LOW;
    }

    /** The title of an axis; in a low place it is short, and leaves out what holds for all figures that are shown. */
    private String axis(String title) {
        if (!isLow()) {
            return title;
        }
        String brief = title.replace(", corrected", "")
                .replaceFirst("before (top dead centre|TDC)", "BTDC")
                .replace("each pull moved to", "at");
        return high < LEAST_FOR_STROKES ? brief.replaceFirst("^(solid|dashed): ", "") : brief;
    }

    /** The largest type in which a title stands beside an axis so long, in CSS pixels: letters are about 0.6 as wide as high. */
    private float fitting(String title, double length) {
        double room = length - BELOW_AXIS;
        return (float) (Math.max(8, Math.min(12, room / (0.6 * Math.max(1, title.length())))) * scale);
    }

    /** The chart, with its legend where there is room for it. */
    XYChart chart() {
        Legend.place(chart, scale);
        return chart;
    }

    /** A filled stretch between two edges. */
    void band(String name, Plot.Band band, Color colour) {
        band(name, band, colour, FAINT);
    }

    /** A stretch that lies over another, told apart from it without colour too. */
    void darkBand(String name, Plot.Band band, Color colour) {
        band(name, band, colour, 2 * FAINT);
    }

    private void band(String name, Plot.Band band, Color colour, int opaque) {
        List<Point> low = band.low();
        List<Point> high = band.high();
        int count = low.size();
        double[] x = new double[2 * count];
        double[] y = new double[2 * count];
        for (int index = 0; index < count; index++) {
            x[index] = high.get(index).x();
            y[index] = high.get(index).y();
            x[2 * count - 1 - index] = low.get(index).x();
            y[2 * count - 1 - index] = low.get(index).y();
        }
        XYSeries series = chart.addSeries(name, x, y);
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.PolygonArea);
        Color faint = new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), opaque);
        series.setFillColor(faint);
        series.setLineColor(faint);
        series.setLineWidth(0);
        series.setMarker(SeriesMarkers.NONE);
    }

    /** A line on the scale at the right. */
    XYSeries lineOnTheRight(String name, List<Point> points, Stroke stroke) {
        XYSeries series = line(name, points, stroke);
        onTheRight(series);
        return series;
    }

    XYSeries line(String name, List<Point> points, Stroke stroke) {
        boolean curved = points.size() > 2;
        XYSeries series = add(name, curved ? stroke.onto(thinned(points)) : points);
        series.setMarker(SeriesMarkers.NONE);
        series.setLineColor(stroke.colour());
        series.setLineStyle(stroke.basic(scale));
        return series;
    }

    /** A level line from end to end. */
    void level(String name, Extent x, double y, Stroke stroke) {
        line(name, List.of(new Point(x.low(), y), new Point(x.high(), y)), stroke);
    }

    /** A line from the bottom of the chart to a point, or to its top. */
    void upright(String name, Upright line, Stroke stroke) {
        line(
                name,
                List.of(
                        new Point(line.x(), line.y().low()),
                        new Point(line.x(), line.y().high())),
                stroke);
    }

    XYSeries marks(String name, List<Point> points, Mark mark) {
        XYSeries series = add(name, points);
        series.setLineStyle(SeriesLines.NONE);
        series.setMarker(mark.marker());
        series.setMarkerColor(mark.colour());
        return series;
    }

    void onTheRight(XYSeries series) {
        series.setYAxisGroup(1);
        chart.getStyler().setYAxisGroupPosition(1, Styler.YAxisPosition.Right);
    }

    void hideFromLegend(String name) {
        chart.getSeries(name).setShowInLegend(false);
    }

    /** The ends of the scale at the right. */
    void limitsOnTheRight(Extent y) {
        chart.getStyler().setYAxisMin(1, y.low());
        chart.getStyler().setYAxisMax(1, y.high());
    }

    /** The ends of the axes. */
    void limits(Extent x, Extent y) {
        chart.getStyler().setXAxisMin(x.low());
        chart.getStyler().setXAxisMax(x.high());
        chart.getStyler().setYAxisMin(y.low());
        chart.getStyler().setYAxisMax(y.high());
        chart.getStyler().setXAxisDecimalPattern(even(x, chart.getWidth() / (ChartLook.X_TICKS * scale)));
        chart.getStyler().setYAxisDecimalPattern(even(y, chart.getHeight() / (ChartLook.Y_TICKS * scale)));
    }

    /** The ends of the axes over speed, which is written whole. */
    void limitsOverSpeed(Extent x, Extent y) {
        limits(x, y);
        chart.getStyler().setXAxisDecimalPattern("0");
    }

    /** As many decimal places for all numbers of an axis as its ticks need. */
    private static String even(Extent axis, double ticks) {
        double step = axis.width() / Math.max(1, ticks);
        int places = (int) Math.max(0, Math.min(4, Math.ceil(-Math.log10(step))));
        return places == 0 ? "0" : "0." + "0".repeat(places);
    }

    /** Whether the place is so low that words would lie over the curves. */
    boolean isTooLowForWords() {
        return high < LEAST_FOR_WORDS;
    }

    /** An axis with room above the data for so many lines of words. */
    Extent withRoomForWords(Extent y, int lines) {
        return lines == 0 ? y : new Extent(y.low(), y.high() + (lines + 1) * line(y));
    }

    private double line(Extent y) {
        return WORDS_HIGH * scale / (PLOT_HIGH * chart.getHeight()) * y.width();
    }

    /**
     * Words below a place at the upper end of the chart, a line each, moved as far as it takes to stay inside the axes.
     *
     * @param at the place, on the scale at the left
     * @return where they begin on the axis below
     */
    double words(List<String> lines, Point at, Extent x, Extent y) {
        int longest = lines.stream().mapToInt(String::length).max().orElse(0);
        double half = longest * Legend.LETTER * scale / 2 / (PLOT_WIDE * chart.getWidth()) * x.width();
        double middle = Math.max(x.low() + half, Math.min(x.high() - half, at.x()));
        for (int index = 0; index < lines.size(); index++) {
            chart.addAnnotation(new AnnotationText(lines.get(index), middle, at.y() - (index + 0.7) * line(y), false));
        }
        return middle - half;
    }

    void rightTitle(String title) {
        chart.setYAxisGroupTitle(1, axis(title));
    }

    private XYSeries add(String name, List<Point> points) {
        double[] x = points.stream().mapToDouble(Point::x).toArray();
        double[] y = points.stream().mapToDouble(Point::y).toArray();
        return chart.addSeries(name, x, y);
    }

    private static List<Point> thinned(List<Point> points) {
        int step = Math.max(1, (points.size() + MOST_POINTS - 1) / MOST_POINTS);
        List<Point> thin = new ArrayList<>();
        for (int index = 0; index < points.size() - 1; index += step) {
            thin.add(points.get(index));
        }
        thin.add(points.get(points.size() - 1));
        return thin;
    }

    /**
     * Where an upright line stands.
     *
     * @param x its place
     * @param y from where to where it goes
     */
    record Upright(double x, Extent y) {}

    /**
     * How a point is drawn.
     *
     * @param colour its colour
     * @param marker its shape
     */
    record Mark(Color colour, Marker marker) {
        /** A pull or a place where it knocked. */
        static Mark knock() {
            return new Mark(Palette.VERMILLION.color(), SeriesMarkers.TRIANGLE_DOWN);
        }
    }
}
