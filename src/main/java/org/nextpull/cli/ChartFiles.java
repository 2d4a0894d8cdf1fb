package org.nextpull.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.nextpull.chart.ChartLook;
import org.nextpull.chart.ChartSize;
import org.nextpull.chart.Charts;
import org.nextpull.chart.SpeedPlots;
import org.nextpull.chart.SweepPlot;
import org.nextpull.chart.SweepPlots;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.UnitSystem;

/** Writes the charts of a result into a folder. */
final class ChartFiles {
    private ChartFiles() {}

    static void write(SessionResult result, UnitSystem units, String folder, Console console) {
        Charts charts = new Charts(ChartSize.paper(), ChartLook.light());
        try {
            Path into = Files.createDirectories(Path.of(folder));
            for (SweepPlot plot : SweepPlots.of(result, units)) {
                String name = plot.title().toLowerCase(Locale.ROOT).replace(' ', '-') + ".png";
                save(into.resolve(name), charts.draw(plot), console);
            }
            var speeds = SpeedPlots.of(result, units);
            if (speeds.isPresent()) {
                save(into.resolve("torque-and-power.png"), charts.draw(speeds.get()), console);
            }
        } catch (IOException unwritable) {
            throw new Program.BadInput(List.of(Finding.error(
                    FindingCode.FOLDER_NOT_WRITABLE,
                    Place.inFile(folder),
                    Detail.of("why", String.valueOf(unwritable.getMessage())))));
        }
    }

    private static void save(Path file, byte[] png, Console console) throws IOException {
        Files.write(file, png);
        console.err().println("wrote " + file);
    }
}
