package org.nextpull.app;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.report.Shown;
import org.nextpull.report.html.Sheet;
import org.nextpull.report.json.AdviseJson;
import org.nextpull.report.text.Csv;
import org.nextpull.session.Replay;

/**
 * A day, as far as its sheet goes.
 *
 * @param replay the day and what was said after each pull
 * @param labels label of each source that was named with one
 * @param kept the session of the notebook, where the day is one
 * @param files what the day was read from, which nothing may be written over
 * @param isRunning whether it is today that it is run
 */
public record DaySheet(
        Replay replay, Map<String, String> labels, Optional<SessionSummary> kept, List<Path> files, boolean isRunning) {
    private static final Pattern ENDING = Pattern.compile("\\.html?$", Pattern.CASE_INSENSITIVE);

    public DaySheet {
        labels = Map.copyOf(labels);
        files = List.copyOf(files);
    }

    /** The sheet of a day that was read. */
    public static DaySheet of(DayInput day) {
        return of(day, day.replay());
    }

    /** The sheet of a day that was read, as far as it is gone through. */
    public static DaySheet of(DayInput day, Replay replay) {
        return new DaySheet(replay, day.labels(), day.kept(), day.files(), false);
    }

    /** The sheet of a session that runs. */
    public static DaySheet ofRunning(Replay replay) {
        return new DaySheet(replay, Map.of(), Optional.empty(), List.of(), true);
    }

    /**
     * How a sheet is written.
     *
     * @param title the job in the operator's words; empty takes the name of the engine
     * @param against label that the others are compared with; empty takes the one that ran first
     * @param written the day on which it is written
     * @param software name and version of the program
     * @param shown the units
     */
    public record Order(
            Optional<String> title, Optional<String> against, LocalDate written, String software, Shown shown) {

        /** Without a title and without a reference of one's own. */
        public static Order usual(LocalDate written, String software, Shown shown) {
            return new Order(Optional.empty(), Optional.empty(), written, software, shown);
        }
    }

    /** The day on which it was run; a session that runs is run today. */
    private String ran(LocalDate today) {
        List<LocalDate> days = kept.map(
                        one -> List.of(one.started().atZone(ZoneOffset.UTC).toLocalDate()))
                .orElseGet(() -> isRunning ? List.of(today) : replay.whole().days());
        if (days.isEmpty()) {
            return "The logs do not say on which day they were run";
        }
        LocalDate last = days.get(days.size() - 1);
        return "Run on " + days.get(0) + (days.size() > 1 ? " to " + last : "");
    }

    /** The sheet, with the comparison of the day's labels where there are several. */
    public String html(Order order) {
        Optional<String> session = kept.map(one -> ", session " + one.id() + ", kept by " + one.version());
        Sheet.Heading heading = new Sheet.Heading(
                order.title(),
                Optional.of(ran(order.written()) + session.orElse("") + "; printed " + order.written()),
                Optional.of("by " + order.software()));
        return Sheet.of(
                replay, ComparedLabels.ofSeveral(replay.whole(), labels, order.against()), order.shown(), heading);
    }

    /**
     * Writes a sheet, and beside it the pulls as CSV and all figures as JSON.
     *
     * @param out name of the sheet's file; the others follow from it
     * @param order how the sheet is written
     * @return what was written
     */
    public static Outcome<List<Path>> write(String out, DaySheet sheet, Order order) {
        String stem = ENDING.matcher(out).replaceFirst("");
        try {
            Path named = Path.of(out);
            WrittenFiles files = new WrittenFiles(named, List.of(Path.of(stem + ".csv"), Path.of(stem + ".json")));
            Optional<Finding> refused = files.refusal(sheet.files());
            if (refused.isPresent()) {
                return Outcome.failed(refused.get());
            }
            Map<Path, WrittenFiles.Content> contents = new LinkedHashMap<>();
            contents.put(named, WrittenFiles.Content.of(sheet.html(order)));
            contents.put(
                    files.beside().get(0),
                    WrittenFiles.Content.of(Csv.pulls(sheet.replay().whole())));
            contents.put(files.beside().get(1), json -> {
                Writer writer = new BufferedWriter(new OutputStreamWriter(json, StandardCharsets.UTF_8));
                new AdviseJson().advise(sheet.replay().whole(), writer);
                writer.flush();
            });
            WrittenFiles.write(contents);
            return Outcome.of(List.copyOf(contents.keySet()));
        } catch (IOException | InvalidPathException fault) {
            return Outcome.failed(WrittenFiles.notWritable(out, fault));
        }
    }

    /**
     * Writes the files into a folder, which is made where there is none.
     *
     * @param name name of the files, without an ending
     * @param order how the sheet is written
     * @return the folder
     */
    public static Outcome<Path> write(String folder, String name, DaySheet sheet, Order order) {
        try {
            Path into = Files.createDirectories(Path.of(folder.isBlank() ? "." : folder.strip()));
            return write(into.resolve(name + ".html").toString(), sheet, order).map(written -> into);
        } catch (IOException | InvalidPathException fault) {
            return Outcome.failed(WrittenFiles.notWritable(folder, fault));
        }
    }
}
