package org.nextpull.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import org.nextpull.unit.SpeedBand;

/**
 * The data of a chart of torque and power over speed.
 *
 * @param title what it shows
 * @param torqueTitle torque and unit
 * @param powerTitle power and unit
 * @param lines the pulls that are drawn
 * @param across speeds that the axis shows at least
 */
public record SpeedPlot(
        String title, String torqueTitle, String powerTitle, List<Line> lines, Optional<SpeedBand> across)
        implements Plot {
    private static final int MARKS = 7;
    private static final List<Marker> MARKERS =
            List.of(SeriesMarkers.CIRCLE, SeriesMarkers.DIAMOND, SeriesMarkers.SQUARE, SeriesMarkers.TRIANGLE_UP);

    public SpeedPlot {
        lines = List.copyOf(lines);
    }

    /** Corrected curves, over the speeds that they have. */
    public SpeedPlot(String torqueTitle, String powerTitle, List<Line> lines) {
        this("Corrected torque and power", torqueTitle, powerTitle, lines, Optional.empty());
    }

    /**
     * One pull.
     *
     * @param name what it is called: baseline, best, last
     * @param torque torque over speed in rpm
     * @param power power over speed in rpm; empty to show torque alone
     */
    public record Line(String name, List<Point> torque, List<Point> power) {
        public Line {
            torque = List.copyOf(torque);
            power = List.copyOf(power);
        }
    }

    @Override
    public ChartFrame frame(ChartSize size, ChartLook look) {
        ChartFrame frame = new ChartFrame(
                size,
                look,
                new ChartFrame.Titles(
                        title, "speed, rpm", powerTitle.isEmpty() ? torqueTitle : "solid: " + torqueTitle));
        List<Color> colours = look.lines();
        List<Point> torques = new ArrayList<>();
        List<Point> powers = new ArrayList<>();
        for (int index = 0; index < lines.size(); index++) {
            Line line = lines.get(index);
            Color colour = colours.get(index % colours.size());
            ChartFrame.Mark mark = new ChartFrame.Mark(colour, MARKERS.get(index % MARKERS.size()));
            String torque = "torque, " + line.name();
            String power = "power, " + line.name();
            frame.line(torque, line.torque(), Stroke.solid(colour));
            frame.marks(line.name(), some(line.torque(), index), mark);
            frame.hideFromLegend(torque);
            torques.addAll(line.torque());
            if (!line.power().isEmpty()) {
                frame.lineOnTheRight(power, line.power(), Stroke.dashed(colour));
                XYSeries marksOfPower = frame.marks("marks of " + power, some(line.power(), index), mark);
                frame.onTheRight(marksOfPower);
                List.of(power, "marks of " + power).forEach(frame::hideFromLegend);
                powers.addAll(line.power());
            }
        }
        List<Point> speeds = new ArrayList<>(torques);
        across.ifPresent(band -> {
            speeds.add(new Point(band.fromRpm(), 0));
            speeds.add(new Point(band.toRpm(), 0));
        });
        frame.limits(Extent.of(speeds, Point::x), Extent.of(torques, Point::y));
        if (!powers.isEmpty()) {
            frame.rightTitle("dashed: " + powerTitle);
            frame.limitsOnTheRight(Extent.of(powers, Point::y));
        }
        frame.xNumbers("0");
        return frame;
    }

    /** A few points of a line, each line at other places so that marks do not hide one another. */
    private static List<Point> some(List<Point> points, int line) {
        List<Point> some = new ArrayList<>();
        double apart = Math.max(1, points.size() / (double) MARKS);
        for (double place = apart * (0.3 + 0.25 * (line % 3)); place < points.size(); place += apart) {
            some.add(points.get((int) place));
        }
        return some.isEmpty() ? points : some;
    }
}
