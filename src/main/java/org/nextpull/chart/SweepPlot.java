package org.nextpull.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.knowm.xchart.style.markers.SeriesMarkers;
import org.nextpull.unit.Span;

/**
 * The data of a chart of the response against the factor of a sweep; what is drawn is this and nothing else.
 *
 * @param title what it shows
 * @param xTitle factor and unit
 * @param yTitle response and unit
 * @param points pulls that count
 * @param doubtful pulls that count little in the fit
 * @param knocked pulls in which knock was heard
 * @param curve fitted curve; empty before one could be fitted
 * @param band its 90 % interval
 * @param chosen the setting that is chosen, on the curve
 * @param interval 90 % interval of what the sweep looks for
 * @param lines knock limit, limits of the plan, and edges
 */
public record SweepPlot(
        String title,
        String xTitle,
        String yTitle,
        List<Point> points,
        List<Point> doubtful,
        List<Point> knocked,
        List<Point> curve,
        Optional<Plot.Band> band,
        Optional<Point> chosen,
        Optional<Interval> interval,
        List<Line> lines)
        implements Plot {
    /**
     * A 90 % interval of a setting.
     *
     * @param of what it is the interval of, as the legend says it
     * @param span from and to, in the unit of the factor
     */
    public record Interval(String of, Span span) {}

    /**
     * A setting that a line marks, beside the data.
     *
     * @param kind what it is
     * @param x the setting, in the unit of the axis
     */
    public record Line(Kind kind, double x) {
        /** What a line marks. */
        public enum Kind {
            KNOCK_LIMIT("knock limit"),
            PLAN_LIMIT("plan's limit"),
            LEAN_EDGE("LBT"),
            RICH_EDGE("RBT"),
            NEXT("next pull");

            private final String words;

            Kind(String words) {
                this.words = words;
            }

            /** As the legend says it. */
            public String words() {
                return words;
            }
        }
    }

    public SweepPlot {
        points = List.copyOf(points);
        doubtful = List.copyOf(doubtful);
        knocked = List.copyOf(knocked);
        curve = List.copyOf(curve);
        lines = List.copyOf(lines);
    }

    /** The same chart with one more line. */
    public SweepPlot with(Line line) {
        List<Line> more = new ArrayList<>(lines);
        more.add(line);
        return new SweepPlot(title, xTitle, yTitle, points, doubtful, knocked, curve, band, chosen, interval, more);
    }

    @Override
    public ChartFrame frame(ChartSize size, ChartLook look) {
        return new Drawing(this, size, look).draw();
    }

    /** The response against the factor: interval of the curve, fitted curve, pulls, chosen setting, interval of the best, limits. */
    private static final class Drawing {
        /** Room below the data for the interval of the best, which lies along the axis of the factor. */
        private static final double ROOM = 0.12;

        private static final String CURVE = "fitted curve";
        private static final String CURVE_BAND = "90 % interval of the curve";

        /** In a low place the legend names both at once. */
        private static final String CURVE_WITH_BAND = "fit, 90 % interval";

        /** Pieces of a fitted curve. */
        private static final int SMOOTH = 40;

        private static final double BAR_AT = 0.06;
        private static final double BAR_END = 0.02;

        private final SweepPlot plot;
        private final ChartLook look;
        private final ChartFrame frame;
        private final Extent x;
        private final Extent y;

        private Drawing(SweepPlot plot, ChartSize size, ChartLook look) {
            this.plot = plot;
            this.look = look;
            this.frame = new ChartFrame(size, look, new ChartFrame.Titles(plot.title(), plot.xTitle(), plot.yTitle()));
            this.x = Extent.of(all(plot), Point::x);
            Extent data = Extent.of(all(plot), Point::y);
            this.y = plot.interval().isPresent() ? data.withRoomBelow(ROOM) : data;
        }

        private ChartFrame draw() {
            boolean together =
                    frame.isLow() && plot.band().isPresent() && !plot.curve().isEmpty();
            plot.band().ifPresent(band -> frame.band(CURVE_BAND, band, Palette.SKY_BLUE.color()));
            if (!plot.curve().isEmpty()) {
                frame.line(together ? CURVE_WITH_BAND : CURVE, smooth(plot.curve()), Stroke.solid(look.curve()));
            }
            if (together) {
                frame.hideFromLegend(CURVE_BAND);
            }
            plot.lines().stream().filter(line -> x.contains(line.x())).forEach(this::reference);
            plot.interval().ifPresent(this::interval);
            marks("pulls", plot.points(), new ChartFrame.Mark(look.ink(), SeriesMarkers.CIRCLE));
            marks(
                    "pulls with little weight",
                    plot.doubtful(),
                    new ChartFrame.Mark(Palette.ORANGE.color(), SeriesMarkers.SQUARE));
            marks("knocked", plot.knocked(), ChartFrame.Mark.knock());
            plot.chosen().ifPresent(this::chosen);
            frame.limits(x, y);
            return frame;
        }

        /** A fitted curve bends little: drawn in few pieces its edge stays clean, where many short ones would each be rounded to pixels. */
        private static List<Point> smooth(List<Point> curve) {
            int step = Math.max(1, curve.size() / SMOOTH);
            List<Point> few = new ArrayList<>();
            for (int index = 0; index < curve.size() - 1; index += step) {
                few.add(curve.get(index));
            }
            few.add(curve.get(curve.size() - 1));
            return few;
        }

        private void marks(String name, List<Point> points, ChartFrame.Mark mark) {
            if (!points.isEmpty()) {
                frame.marks(name, points, mark);
            }
        }

        private void chosen(Point point) {
            Color green = Palette.BLUISH_GREEN.color();
            frame.marks("final", List.of(point), new ChartFrame.Mark(green, SeriesMarkers.DIAMOND));
            frame.upright(
                    " chosen",
                    new ChartFrame.Upright(point.x(), new Extent(y.low(), point.y())),
                    Stroke.solid(green).thin());
            frame.hideFromLegend(" chosen");
        }

        /** A bar along the axis of the factor, since it is an interval of the setting and not of the response. */
        private void interval(Interval interval) {
            Span span = interval.span();
            double at = y.at(BAR_AT);
            double end = BAR_END * y.width();
            double low = Math.max(span.low(), x.low());
            double high = Math.min(span.high(), x.high());
            frame.line(
                    interval.of() + ", 90 %",
                    List.of(
                            new Point(low, at - end),
                            new Point(low, at + end),
                            new Point(low, at),
                            new Point(high, at),
                            new Point(high, at + end),
                            new Point(high, at - end)),
                    Stroke.solid(Palette.BLUISH_GREEN.color()));
        }

        private void reference(Line line) {
            Stroke stroke = switch (line.kind()) {
                case KNOCK_LIMIT -> Stroke.dashed(Palette.VERMILLION.color());
                case PLAN_LIMIT -> Stroke.dotted(look.ink());
                case NEXT -> Stroke.next();
                case RICH_EDGE -> Stroke.dashed(Palette.REDDISH_PURPLE.color()).thin();
                case LEAN_EDGE -> Stroke.dotted(Palette.REDDISH_PURPLE.color());
            };
            frame.upright(line.kind().words(), new ChartFrame.Upright(line.x(), y), stroke);
        }

        private static List<Point> all(SweepPlot plot) {
            List<Point> all = new ArrayList<>();
            Stream.of(plot.points(), plot.doubtful(), plot.knocked(), plot.curve())
                    .forEach(all::addAll);
            plot.band().ifPresent(band -> all.addAll(band.points()));
            plot.chosen().ifPresent(all::add);
            double anyY = all.isEmpty() ? 0 : all.get(0).y();
            plot.lines().stream()
                    .filter(line -> line.kind() == Line.Kind.KNOCK_LIMIT || line.kind() == Line.Kind.NEXT)
                    .forEach(line -> all.add(new Point(line.x(), anyY)));
            return all;
        }
    }
}
