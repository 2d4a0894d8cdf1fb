package org.nextpull.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.nextpull.app.WrittenFiles;
import org.nextpull.chart.ChartLook;
import org.nextpull.chart.ChartSize;
import org.nextpull.chart.Charts;
import org.nextpull.chart.DifferencePlot;
import org.nextpull.chart.OverlayPlot;
import org.nextpull.chart.SpeedPlots;
import org.nextpull.chart.SweepPlots;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.UnitSystem;

/**
 * Writes the charts of a result into a folder.
 *
 * @param folder where to
 * @param read files that the result comes from, which are not written over
 * @param console says what was written
 */
record ChartFiles(String folder, List<Path> read, Console console) {
    ChartFiles {
        read = List.copyOf(read);
    }

    /** The sweeps and the curves of a day. */
    void write(SessionResult result, UnitSystem units) {
        Charts charts = charts(result);
        Map<String, byte[]> pictures = new LinkedHashMap<>();
        SweepPlots.of(result, units).forEach(plot -> pictures.put(name(plot.title()), charts.draw(plot)));
        SpeedPlots.of(result, units).ifPresent(plot -> pictures.put("torque-and-power.png", charts.draw(plot)));
        write(pictures);
    }

    /** The mean curves of a comparison, and the difference of each label. */
    void write(SessionResult result, MeasuredComparison both, UnitSystem units) {
        Charts charts = charts(result);
        Map<String, byte[]> pictures = new LinkedHashMap<>();
        OverlayPlot.of(both, units).ifPresent(plot -> pictures.put("mean-curves.png", charts.draw(plot)));
        for (DifferencePlot plot : DifferencePlot.of(both)) {
            String name = name(plot.title());
            pictures.put(
                    pictures.containsKey(name) ? name(plot.title() + " " + pictures.size()) : name, charts.draw(plot));
        }
        write(pictures);
    }

    /** A picture goes its own way, so it says which engine, which day and which standard. */
    private static Charts charts(SessionResult result) {
        Stream<String> note = Stream.of(
                        result.plan().engine().name().stream(),
                        result.days().stream().map(LocalDate::toString),
                        Stream.of(result.plan().air().standard().title()))
                .flatMap(parts -> parts);
        return new Charts(ChartSize.paper(), ChartLook.light(), note.collect(Collectors.joining(", ")));
    }

    /** A title as a file name: what a file system might not take becomes a dash. */
    private static String name(String title) {
        return title.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-") + ".png";
    }

    private void write(Map<String, byte[]> pictures) {
        try {
            Path into = Files.createDirectories(TextFile.path(folder));
            for (String name : pictures.keySet()) {
                TextFile.require(WrittenFiles.of(into.resolve(name)), read);
            }
            Map<Path, WrittenFiles.Content> contents = new LinkedHashMap<>();
            pictures.forEach((name, png) -> contents.put(into.resolve(name), out -> out.write(png)));
            WrittenFiles.write(contents);
            contents.keySet().forEach(file -> console.err().println("wrote " + file));
        } catch (IOException unwritable) {
            throw TextFile.notWritable(folder, unwritable);
        }
    }
}
