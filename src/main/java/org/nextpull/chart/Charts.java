package org.nextpull.chart;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.knowm.xchart.ChartEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Draws plots as PNG. */
public final class Charts {
    private final ChartSize size;
    private final ChartLook look;

    public Charts(ChartSize size, ChartLook look) {
        this.size = size;
        this.look = look;
    }

    /** The response against the factor: interval band, fitted curve, pulls, and the chosen setting. */
    public byte[] draw(SweepPlot plot) {
        ChartFrame frame =
                new ChartFrame(size, look, new ChartFrame.Titles(plot.title(), plot.xTitle(), plot.yTitle()));
        plot.band().ifPresent(band -> frame.band("90 % interval of the curve", band, Palette.SKY_BLUE));
        if (!plot.curve().isEmpty()) {
            frame.line("fitted curve", plot.curve(), new ChartFrame.Stroke(Palette.BLUE, false));
        }
        marks(frame, "pulls", plot.points(), Palette.BLACK);
        marks(frame, "pulls with little weight", plot.doubtful(), Palette.ORANGE);
        marks(frame, "pulls with knock", plot.knocked(), Palette.VERMILLION);
        Extent y = Extent.of(all(plot), Point::y);
        plot.interval()
                .ifPresent(span -> frame.band(
                        "90 % interval of the best",
                        new Band(
                                List.of(new Point(span.low(), y.low()), new Point(span.high(), y.low())),
                                List.of(new Point(span.low(), y.high()), new Point(span.high(), y.high()))),
                        Palette.BLUISH_GREEN));
        plot.chosen()
                .ifPresent(point -> frame.marks("chosen", List.of(point), Palette.BLUISH_GREEN, SeriesMarkers.DIAMOND));
        limits(frame, Extent.of(all(plot), Point::x), y);
        return png(frame.chart());
    }

    private static void marks(ChartFrame frame, String name, List<Point> points, Palette colour) {
        if (!points.isEmpty()) {
            frame.marks(
                    name,
                    points,
                    colour,
                    colour == Palette.BLACK
                            ? SeriesMarkers.CIRCLE
                            : colour == Palette.ORANGE ? SeriesMarkers.SQUARE : SeriesMarkers.TRIANGLE_DOWN);
        }
    }

    private static List<Point> all(SweepPlot plot) {
        List<Point> all = new ArrayList<>();
        Stream.of(plot.points(), plot.doubtful(), plot.knocked(), plot.curve()).forEach(all::addAll);
        plot.band().ifPresent(band -> {
            all.addAll(band.low());
            all.addAll(band.high());
        });
        plot.chosen().ifPresent(all::add);
        return all;
    }

    /** Torque on the left and dashed power on the right, over speed. */
    public byte[] draw(SpeedPlot plot) {
        ChartFrame frame = new ChartFrame(
                size, look, new ChartFrame.Titles("Corrected torque and power", "speed, rpm", plot.torqueTitle()));
        Palette[] colours = {Palette.BLACK, Palette.BLUE, Palette.VERMILLION};
        for (int index = 0; index < plot.lines().size(); index++) {
            SpeedPlot.Line line = plot.lines().get(index);
            Palette colour = colours[index % colours.length];
            frame.line("torque, " + line.name(), line.torque(), new ChartFrame.Stroke(colour, false));
            frame.lineOnTheRight("power, " + line.name(), line.power(), new ChartFrame.Stroke(colour, true));
        }
        frame.rightTitle(plot.powerTitle());
        List<Point> torque =
                plot.lines().stream().flatMap(line -> line.torque().stream()).toList();
        Extent x = Extent.of(torque, Point::x);
        frame.axes().setXAxisMin(x.low());
        frame.axes().setXAxisMax(x.high());
        frame.axes().setXAxisDecimalPattern("0");
        return png(frame.chart());
    }

    private static void limits(ChartFrame frame, Extent x, Extent y) {
        frame.axes().setXAxisMin(x.low());
        frame.axes().setXAxisMax(x.high());
        frame.axes().setYAxisMin(y.low());
        frame.axes().setYAxisMax(y.high());
    }

    private static byte[] png(XYChart chart) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ChartEncoder.saveChart(chart, bytes, "png");
        } catch (IOException impossible) {
            throw new UncheckedIOException("a picture in memory can always be written", impossible);
        }
        return bytes.toByteArray();
    }

    /** Ends of an axis: a little beyond the data, and off even spacing, on which the library would put its ticks onto data points. */
    private record Extent(double low, double high) {
        static Extent of(List<Point> points, ToDoubleFunction<Point> which) {
            DoubleSummaryStatistics span = points.stream().mapToDouble(which).summaryStatistics();
            if (span.getCount() == 0) {
                return new Extent(0, 1);
            }
            double width = Math.max(span.getMax() - span.getMin(), 1e-3 * Math.max(1, Math.abs(span.getMax())));
            return new Extent(span.getMin() - 0.0413 * width, span.getMax() + 0.0427 * width);
        }
    }
}
