package org.nextpull.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Torque, solid on the left scale, and power, dashed on the right one, over speed; pulls differ by colour and by marker. */
final class SpeedChart {
    private static final int MARKS = 7;

    private static final List<Marker> MARKERS =
            List.of(SeriesMarkers.CIRCLE, SeriesMarkers.DIAMOND, SeriesMarkers.SQUARE, SeriesMarkers.TRIANGLE_UP);

    private SpeedChart() {}

    static ChartFrame of(SpeedPlot plot, ChartSize size, ChartLook look) {
        ChartFrame frame = new ChartFrame(
                size,
                look,
                new ChartFrame.Titles(
                        plot.title(),
                        "speed, rpm",
                        plot.powerTitle().isEmpty() ? plot.torqueTitle() : "solid: " + plot.torqueTitle()));
        List<Color> colours = LineColours.of(look);
        List<Point> torques = new ArrayList<>();
        List<Point> powers = new ArrayList<>();
        for (int index = 0; index < plot.lines().size(); index++) {
            SpeedPlot.Line line = plot.lines().get(index);
            Color colour = colours.get(index % colours.size());
            ChartFrame.Mark mark = new ChartFrame.Mark(colour, MARKERS.get(index % MARKERS.size()));
            String torque = "torque, " + line.name();
            String power = "power, " + line.name();
            frame.line(torque, line.torque(), ChartFrame.Stroke.solid(colour));
            frame.marks(line.name(), some(line.torque(), index), mark);
            frame.hideFromLegend(torque);
            torques.addAll(line.torque());
            if (!line.power().isEmpty()) {
                frame.lineOnTheRight(power, line.power(), ChartFrame.Stroke.dashed(colour));
                XYSeries marksOfPower = frame.marks("marks of " + power, some(line.power(), index), mark);
                frame.onTheRight(marksOfPower);
                List.of(power, "marks of " + power).forEach(frame::hideFromLegend);
                powers.addAll(line.power());
            }
        }
        List<Point> speeds = new ArrayList<>(torques);
        plot.across().ifPresent(band -> {
            speeds.add(new Point(band.fromRpm(), 0));
            speeds.add(new Point(band.toRpm(), 0));
        });
        frame.limits(Extent.of(speeds, Point::x), Extent.of(torques, Point::y));
        if (!powers.isEmpty()) {
            frame.rightTitle("dashed: " + plot.powerTitle());
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
