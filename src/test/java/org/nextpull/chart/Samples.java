package org.nextpull.chart;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.nextpull.unit.Span;

/** Invented data for charts: a parabola of torque over advance and two curves over speed. */
final class Samples {
    private Samples() {}

    private static List<Point> curve(double lift) {
        return IntStream.rangeClosed(0, 60)
                .mapToObj(step -> new Point(20 + step / 5.0, 204 - 0.09 * Math.pow(20 + step / 5.0 - 29, 2) + lift))
                .toList();
    }

    static SweepPlot sweep() {
        List<Point> points = DoubleStream.of(20, 20, 22, 24, 26, 28, 30)
                .mapToObj(advance ->
                        new Point(advance, 204 - 0.09 * Math.pow(advance - 29, 2) + 0.3 * Math.sin(7 * advance)))
                .toList();
        return new SweepPlot(
                "Spark advance",
                "spark advance, deg before top dead centre",
                "band-average torque, corrected, N·m",
                points,
                List.of(new Point(25, 200.1)),
                List.of(new Point(32, 202.9)),
                curve(0),
                Optional.of(new Plot.Band(curve(-0.6), curve(0.6))),
                Optional.of(new Point(26.5, 204 - 0.09 * 2.5 * 2.5)),
                Optional.of(new SweepPlot.Interval("MBT", Span.of(24.9, 28.2))),
                List.of(
                        new SweepPlot.Line(SweepPlot.Line.Kind.KNOCK_LIMIT, 30),
                        new SweepPlot.Line(SweepPlot.Line.Kind.PLAN_LIMIT, 40)));
    }

    private static List<Point> torque(double level) {
        return IntStream.rangeClosed(0, 350)
                .mapToObj(step ->
                        new Point(3000 + 10 * step, level - 40 * Math.pow((3000 + 10 * step - 4800) / 2000.0, 2)))
                .toList();
    }

    private static List<Point> power(List<Point> torque) {
        return torque.stream()
                .map(point -> new Point(point.x(), point.x() * Math.PI / 30 * point.y() / 1000))
                .toList();
    }

    static SpeedPlot speed() {
        return new SpeedPlot(
                "torque, corrected, N·m",
                "power, corrected, kW",
                List.of(
                        new SpeedPlot.Line("first, pull 1", torque(200), power(torque(200))),
                        new SpeedPlot.Line("best, pull 7", torque(207), power(torque(207))),
                        new SpeedPlot.Line("last, pull 9", torque(205), power(torque(205)))));
    }

    static OverlayPlot overlay() {
        return new OverlayPlot(
                "Corrected torque by configuration",
                "torque, corrected, N·m",
                List.of(
                        new OverlayPlot.Curve(
                                "short pipe", torque(200), Optional.of(new Plot.Band(torque(198), torque(202)))),
                        new OverlayPlot.Curve(
                                "long pipe", torque(206), Optional.of(new Plot.Band(torque(204), torque(208)))),
                        new OverlayPlot.Curve("no filter", torque(209), Optional.empty())));
    }

    static DifferencePlot difference() {
        List<Point> mean = IntStream.rangeClosed(0, 14)
                .mapToObj(step -> new Point(3000 + 250 * step, 2.4 * Math.sin(step / 4.0)))
                .toList();
        return new DifferencePlot(
                "long pipe against short pipe",
                "difference of torque, %",
                95,
                mean,
                new Plot.Band(shifted(mean, -0.8), shifted(mean, 0.8)),
                1.0);
    }

    private static List<Point> shifted(List<Point> points, double lift) {
        return points.stream()
                .map(point -> new Point(point.x(), point.y() + lift))
                .toList();
    }
}
