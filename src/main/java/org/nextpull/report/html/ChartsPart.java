package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.advice.AnswerRow;
import org.nextpull.advice.MapState;
import org.nextpull.advice.Verdict;
import org.nextpull.chart.ChartSize;
import org.nextpull.chart.MapPlot;
import org.nextpull.chart.Plot;
import org.nextpull.chart.Point;
import org.nextpull.chart.SpeedPlot;
import org.nextpull.chart.SpeedPlots;
import org.nextpull.chart.SweepPlot;
import org.nextpull.chart.SweepPlots;
import org.nextpull.plan.Band;
import org.nextpull.report.MapText;
import org.nextpull.report.Shown;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Span;

/** The charts, each with its numbers and with words for those who cannot see it. */
final class ChartsPart {
    /** Three stand on a page. */
    static final ChartSize THIRD = new ChartSize(760, 330, 2);

    private static final int LINES_OF_CURVE = 9;
    private static final int USUAL_ROWS_RPM = 250;

    private final SessionResult result;
    private final Shown shown;

    ChartsPart(SessionResult result, Shown shown) {
        this.result = result;
        this.shown = shown;
    }

    /**
     * The curves of the sweeps.
     *
     * @param alsoOverSpeed whether torque and power over speed belong here, as the first page shows something else
     */
    Section section(boolean alsoOverSpeed) {
        List<Section.Figure> figures = new ArrayList<>();
        for (SweepPlot plot : SweepPlots.of(result, shown.units())) {
            figures.add(Section.Figure.of(plot.title(), plot, THIRD, alt(plot), numbers(plot)));
        }
        result.verdict()
                .flatMap(Verdict::map)
                .ifPresent(state -> MapPlot.of(result)
                        .ifPresent(plot ->
                                figures.add(Section.Figure.of("Spark map", plot, THIRD, alt(state), numbers(state))
                                        .withNumbersInPrint())));
        SpeedPlots.of(result, shown.units())
                .filter(plot -> alsoOverSpeed)
                .ifPresent(plot -> figures.add(Section.Figure.of(
                        "Corrected torque and power",
                        plot,
                        THIRD,
                        alt(plot),
                        numbers(plot, result.plan().band()))));
        return Section.of("Curves" + CandidatePart.swept(result)).withFigures(figures);
    }

    private static String alt(SweepPlot plot) {
        int pulls =
                plot.points().size() + plot.doubtful().size() + plot.knocked().size();
        String curve = plot.curve().isEmpty() ? "" : " with the fitted curve and its 90 % interval";
        return "Chart of " + plot.yTitle() + " against " + plot.xTitle() + ": " + Shown.count(pulls, "pull") + curve
                + ". Its numbers are in the table below.";
    }

    private static String alt(MapState state) {
        return "Chart of spark advance over speed, " + Shown.count(state.rows().size(), "speed")
                + ": what each pull ran, the final map, the 90 % interval of the best. Its numbers are in the table"
                + " below.";
    }

    private static String alt(SpeedPlot plot) {
        return "Chart of torque and power over speed for "
                + String.join(
                        "; ", plot.lines().stream().map(SpeedPlot.Line::name).toList())
                + ". Its numbers are in the table below.";
    }

    /** What a map day says of each speed. */
    static Section.Grid numbers(MapState state) {
        Section.Grid grid = Section.Grid.of(
                "Spark map by speed: degrees before top dead centre, each 90 % CI on its own; run is the most advanced"
                        + " clean pull",
                "rpm", "best", "from", "to", "peak", "run", "knock limit", "decided by");
        for (AnswerRow row : state.rows()) {
            Optional<AnswerRow.Best> best = row.answer();
            Optional<Span> interval = best.flatMap(AnswerRow.Best::interval);
            grid = grid.row(
                    Shown.fixed(row.rpm(), 0),
                    best.map(found -> Shown.fixed(found.deg(), 1)).orElse(""),
                    interval.map(found -> Shown.fixed(found.low(), 1)).orElse(""),
                    interval.map(found -> Shown.fixed(found.high(), 1)).orElse(""),
                    degrees(best.map(AnswerRow.Best::peakDeg).orElse(OptionalDouble.empty())),
                    degrees(row.runDeg()),
                    degrees(state.knockLimits().stream()
                            .filter(limit -> limit.rpm() == row.rpm())
                            .mapToDouble(MapState.KnockAtRow::deg)
                            .findFirst()),
                    MapText.decidedBy(row));
        }
        return grid;
    }

    private static String degrees(OptionalDouble deg) {
        return deg.isPresent() ? Shown.fixed(deg.getAsDouble(), 1) : "";
    }

    static Section.Grid numbers(SweepPlot plot) {
        Section.Grid grid = Section.Grid.of(
                "Pulls and fitted curve: " + plot.yTitle() + " against " + plot.xTitle(),
                "setting",
                "value",
                "from",
                "to",
                "what");
        grid = points(grid, plot.points(), "pull");
        grid = points(grid, plot.doubtful(), "pull with little weight");
        grid = points(grid, plot.knocked(), "pull with knock");
        int step = Math.max(1, plot.curve().size() / (LINES_OF_CURVE - 1));
        for (int index = 0; index < plot.curve().size(); index += step) {
            Point point = plot.curve().get(index);
            grid = grid.row(
                    number(point.x()),
                    Shown.fixed(point.y(), 1),
                    edge(plot.band().map(Plot.Band::low), index),
                    edge(plot.band().map(Plot.Band::high), index),
                    "fitted curve");
        }
        return grid;
    }

    private static Section.Grid points(Section.Grid grid, List<Point> points, String what) {
        if (points.size() > DayParts.MOST_ROWS) {
            return grid.row("", "", "", "", what + ": " + points.size() + " of them, in the CSV file");
        }
        Section.Grid more = grid;
        for (Point point : points) {
            more = more.row(number(point.x()), Shown.fixed(point.y(), 1), "", "", what);
        }
        return more;
    }

    private static String edge(Optional<List<Point>> edge, int index) {
        return edge.map(points -> Shown.fixed(points.get(index).y(), 1)).orElse("");
    }

    private static String number(double setting) {
        return Math.abs(setting) < 3 && setting > 0 ? Shown.fixed(setting, 3) : Shown.fixed(setting, 1);
    }

    static Section.Grid numbers(SpeedPlot plot, Optional<Band> band) {
        int every = (int)
                Math.round(band.map(found -> (double) found.rowsEveryRpm()).orElse((double) USUAL_ROWS_RPM));
        List<String> headings = new ArrayList<>(List.of("rpm"));
        plot.lines().forEach(line -> headings.add("torque, " + line.name()));
        plot.lines().forEach(line -> headings.add("power, " + line.name()));
        Section.Grid grid =
                Section.Grid.of(plot.torqueTitle() + "; " + plot.powerTitle(), headings.toArray(new String[0]));
        for (Point point : plot.lines().get(0).torque()) {
            if (Math.abs(Math.IEEEremainder(point.x(), every)) < 1e-6) {
                List<String> cells = new ArrayList<>(List.of(Shown.fixed(point.x(), 0)));
                plot.lines().forEach(line -> cells.add(at(line.torque(), point.x())));
                plot.lines().forEach(line -> cells.add(at(line.power(), point.x())));
                grid = grid.row(cells.toArray(new String[0]));
            }
        }
        return grid;
    }

    private static String at(List<Point> points, double x) {
        return points.stream()
                .filter(point -> Math.abs(point.x() - x) < 1e-6)
                .map(point -> Shown.fixed(point.y(), 1))
                .findFirst()
                .orElse("");
    }
}
