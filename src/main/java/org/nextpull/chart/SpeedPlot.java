package org.nextpull.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
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
     * @param peaks the peak of torque, then that of power, as the tables state them; empty to name none
     */
    public record Line(String name, List<Point> torque, List<Point> power, List<Point> peaks) {
        public Line {
            torque = List.copyOf(torque);
            power = List.copyOf(power);
            peaks = List.copyOf(peaks);
        }

        /** A line whose peaks are not named. */
        public Line(String name, List<Point> torque, List<Point> power) {
            this(name, torque, power, List.of());
        }

        private Optional<Point> peak(int which) {
            return peaks.stream().skip(which).findFirst();
        }

        /** {@code best 201.0 at 4700}. */
        private Optional<String> said(int which) {
            return peak(which)
                    .map(peak ->
                            String.format(Locale.ROOT, "%s %.1f at %.0f", name.split(",", 2)[0], peak.y(), peak.x()));
        }
    }

    @Override
    public ChartFrame frame(ChartSize size, ChartLook look) {
        ChartFrame frame = new ChartFrame(
                size,
                look,
                ChartFrame.Titles.overSpeed(title, powerTitle.isEmpty() ? torqueTitle : "solid: " + torqueTitle));
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
            frame.marks(line.name(), some(line.torque(), index, line.peak(0)), mark);
            frame.hideFromLegend(torque);
            torques.addAll(line.torque());
            if (!line.power().isEmpty()) {
                frame.lineOnTheRight(power, line.power(), Stroke.dashed(colour));
                XYSeries marksOfPower = frame.marks("marks of " + power, some(line.power(), index, line.peak(1)), mark);
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
        List<Line> named = named(frame.isTooLowForWords() ? 0 : frame.isLow() ? 1 : lines.size());
        Extent x = Extent.of(speeds, Point::x);
        Extent y = frame.withRoomForWords(Extent.of(torques, Point::y), named.size());
        frame.limitsOverSpeed(x, y);
        double right = x.high();
        if (!powers.isEmpty()) {
            frame.rightTitle("dashed: " + powerTitle);
            frame.limitsOnTheRight(frame.withRoomForWords(Extent.of(powers, Point::y), named.size()));
            right = frame.words(words(named, 1), new Point(x.high(), y.high()), x, y);
        }
        Optional<Point> peak =
                named.stream().flatMap(line -> line.peak(0).stream()).findFirst();
        if (peak.isPresent()) {
            frame.words(words(named, 0), new Point(peak.get().x(), y.high()), new Extent(x.low(), right), y);
        }
        return frame;
    }

    /** The lines whose peaks are named, the highest first, as many as there is room for. */
    private List<Line> named(int most) {
        return lines.stream()
                .filter(line -> !line.peaks().isEmpty())
                .sorted(Comparator.comparingDouble(
                        (Line line) -> -line.peaks().get(0).y()))
                .limit(most)
                .toList();
    }

    private static List<String> words(List<Line> named, int which) {
        return named.stream().flatMap(line -> line.said(which).stream()).toList();
    }

    /** A few points of a line, each line at other places so that marks do not hide one another, and its peak. */
    private static List<Point> some(List<Point> points, int line, Optional<Point> peak) {
        List<Point> some = new ArrayList<>(peak.stream().toList());
        double apart = Math.max(1, points.size() / (double) MARKS);
        for (double place = apart * (0.3 + 0.25 * (line % 3)); place < points.size(); place += apart) {
            some.add(points.get((int) place));
        }
        return some.isEmpty() ? points : some;
    }
}
