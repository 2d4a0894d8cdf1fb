package org.nextpull.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.nextpull.report.WrittenFiles;
import org.nextpull.report.csv.PullsCsv;
import org.nextpull.report.json.AdviseJson;
import org.nextpull.session.SessionResult;

/** The sheet and, beside it under the same name, its pulls as CSV and its figures as JSON. */
final class SheetFiles {
    private static final Pattern ENDING = Pattern.compile("\\.html?$", Pattern.CASE_INSENSITIVE);

    private final Path sheet;
    private final Path pulls;
    private final Path figures;

    /** Gives up when one of them may not be written. */
    SheetFiles(String out, List<Path> read) {
        String stem = ENDING.matcher(out).replaceFirst("");
        sheet = TextFile.path(out);
        pulls = TextFile.path(stem + ".csv");
        figures = TextFile.path(stem + ".json");
        TextFile.require(new WrittenFiles(sheet, List.of(pulls, figures)), read);
    }

    void write(String text, SessionResult result, DayInput input, Console console) {
        TextFile.write(sheet, text, console);
        TextFile.write(pulls, PullsCsv.of(result), console);
        TextFile.write(figures, new AdviseJson().advise(result, input.findings()) + "\n", console);
    }
}
