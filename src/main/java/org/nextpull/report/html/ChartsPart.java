package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import org.nextpull.chart.ChartLook;
import org.nextpull.chart.ChartSize;
import org.nextpull.chart.Charts;
import org.nextpull.chart.SpeedPlot;
import org.nextpull.chart.SpeedPlots;
import org.nextpull.chart.SweepPlot;
import org.nextpull.chart.SweepPlots;
import org.nextpull.report.Shown;
import org.nextpull.session.SessionResult;

/** The charts, each with its numbers and with words for those who cannot see it. */
final class ChartsPart {
    private final SessionResult result;
    private final Shown shown;
    private final ChartSize size = ChartSize.paper();
    private final Charts charts = new Charts(size, ChartLook.light());

    ChartsPart(SessionResult result, Shown shown) {
        this.result = result;
        this.shown = shown;
    }

    Section section() {
        List<Section.Figure> figures = new ArrayList<>();
        for (SweepPlot plot : SweepPlots.of(result, shown.units())) {
            figures.add(figure(plot.title(), charts.draw(plot), alt(plot), PlotNumbers.of(plot)));
        }
        SpeedPlots.of(result, shown.units())
                .ifPresent(plot -> figures.add(figure(
                        "Corrected torque and power",
                        charts.draw(plot),
                        alt(plot),
                        PlotNumbers.of(plot, result.plan().band()))));
        return Section.of("Curves" + CandidatePart.swept(result)).withFigures(figures);
    }

    private Section.Figure figure(String title, byte[] png, String alt, Section.Grid numbers) {
        String source = "data:image/png;base64," + Base64.getEncoder().encodeToString(png);
        return new Section.Figure(title, source, alt, size.width(), size.height(), numbers);
    }

    private static String alt(SweepPlot plot) {
        int pulls =
                plot.points().size() + plot.doubtful().size() + plot.knocked().size();
        String curve = plot.curve().isEmpty() ? "" : " with the fitted curve and its 90 % interval";
        return "Chart of " + plot.yTitle() + " against " + plot.xTitle() + ": " + Shown.count(pulls, "pull") + curve
                + ". Its numbers are in the table below.";
    }

    private static String alt(SpeedPlot plot) {
        return "Chart of torque and power over speed for "
                + String.join(
                        "; ", plot.lines().stream().map(SpeedPlot.Line::name).toList())
                + ". Its numbers are in the table below.";
    }
}
