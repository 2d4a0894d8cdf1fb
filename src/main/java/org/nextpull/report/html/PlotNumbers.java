package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.chart.Plot;
import org.nextpull.chart.Point;
import org.nextpull.chart.SpeedPlot;
import org.nextpull.chart.SweepPlot;
import org.nextpull.report.Shown;

/** The numbers of a chart as a table. */
final class PlotNumbers {
    private static final int LINES_OF_CURVE = 9;
    private static final int USUAL_ROWS_RPM = 250;

    private PlotNumbers() {}

    static Section.Grid of(SweepPlot plot) {
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

    static Section.Grid of(SpeedPlot plot, Optional<org.nextpull.plan.Band> band) {
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
