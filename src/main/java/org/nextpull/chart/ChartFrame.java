package org.nextpull.chart;

import java.awt.BasicStroke;
import java.awt.Font;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** A chart with the look that all of them share, and the few kinds of series that they are made of. */
final class ChartFrame {
    private static final String FONT = "DejaVu Sans";

    /** More points than this on a line cannot be told apart on paper and only cost time. */
    private static final int MOST_POINTS = 2000;

    private final XYChart chart;
    private final float scale;

    ChartFrame(ChartSize size, ChartLook look, Titles titles) {
        this.scale = size.scale();
        this.chart = new XYChartBuilder()
                .width(size.pixelsWide())
                .height(size.pixelsHigh())
                .title(titles.chart())
                .xAxisTitle(titles.x())
                .yAxisTitle(titles.y())
                .build();
        style(chart.getStyler(), look);
    }

    /**
     * What stands at the chart.
     *
     * @param chart above it
     * @param x below it
     * @param y beside it
     */
    record Titles(String chart, String x, String y) {}

    private void style(XYStyler styler, ChartLook look) {
        Font plain = new Font(FONT, Font.PLAIN, Math.round(12 * scale));
        styler.setChartBackgroundColor(look.ground());
        styler.setPlotBackgroundColor(look.ground());
        styler.setPlotBorderVisible(false);
        styler.setPlotGridLinesColor(look.grid());
        styler.setPlotGridLinesStroke(new BasicStroke(scale));
        styler.setChartFontColor(look.ink());
        styler.setChartTitleFont(plain.deriveFont(Font.BOLD, 14 * scale));
        styler.setChartTitleBoxVisible(false);
        styler.setAxisTitleFont(plain);
        styler.setAxisTickLabelsFont(plain);
        styler.setAxisTickLabelsColor(look.ink());
        styler.setAxisTickMarksColor(look.ink());
        styler.setLegendFont(plain);
        styler.setLegendBackgroundColor(look.ground());
        styler.setLegendBorderColor(look.ground());
        styler.setLegendPosition(Styler.LegendPosition.OutsideS);
        styler.setLegendLayout(Styler.LegendLayout.Horizontal);
        styler.setMarkerSize(Math.round(9 * scale));
        styler.setXAxisTickMarkSpacingHint(Math.round(90 * scale));
        styler.setYAxisTickMarkSpacingHint(Math.round(50 * scale));
        styler.setLocale(Locale.ROOT);
    }

    AxesChartStyler axes() {
        return chart.getStyler();
    }

    XYChart chart() {
        return chart;
    }

    /** A filled stretch between two edges. */
    void band(String name, Band band, Palette colour) {
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
        series.setFillColor(colour.faint());
        series.setLineColor(colour.faint());
        series.setLineWidth(0);
        series.setMarker(SeriesMarkers.NONE);
    }

    /** A line on the scale at the right. */
    void lineOnTheRight(String name, List<Point> points, Stroke stroke) {
        line(name, points, stroke).setYAxisGroup(1);
        chart.getStyler().setYAxisGroupPosition(1, Styler.YAxisPosition.Right);
    }

    XYSeries line(String name, List<Point> points, Stroke stroke) {
        XYSeries series = add(name, points);
        series.setMarker(SeriesMarkers.NONE);
        series.setLineColor(stroke.colour().color());
        series.setLineStyle(stroke.basic(scale));
        return series;
    }

    void marks(String name, List<Point> points, Palette colour, Marker marker) {
        XYSeries series = add(name, points);
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
        series.setMarker(marker);
        series.setMarkerColor(colour.color());
    }

    void rightTitle(String title) {
        chart.setYAxisGroupTitle(1, title);
    }

    private XYSeries add(String name, List<Point> points) {
        int step = Math.max(1, (points.size() + MOST_POINTS - 1) / MOST_POINTS);
        int count = (points.size() + step - 1) / step;
        double[] x = new double[count];
        double[] y = new double[count];
        for (int index = 0; index < count; index++) {
            x[index] = points.get(index * step).x();
            y[index] = points.get(index * step).y();
        }
        return chart.addSeries(name, x, y);
    }

    /**
     * How a line is drawn.
     *
     * @param colour its colour
     * @param dashed whether it is dashed
     */
    record Stroke(Palette colour, boolean dashed) {
        BasicStroke basic(float scale) {
            return dashed
                    ? new BasicStroke(
                            2 * scale,
                            BasicStroke.CAP_BUTT,
                            BasicStroke.JOIN_ROUND,
                            1,
                            new float[] {6 * scale, 4 * scale},
                            0)
                    : new BasicStroke(2 * scale);
        }
    }
}
