package org.nextpull.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.report.csv.PullsCsv;
import org.nextpull.report.json.AdviseJson;
import org.nextpull.session.SessionResult;

/** The sheet and, beside it under the same name, its pulls as CSV and its figures as JSON. */
final class SheetFiles {
    private static final Pattern ENDING = Pattern.compile("\\.html?$", Pattern.CASE_INSENSITIVE);

    private SheetFiles() {}

    static void write(String out, String sheet, SessionResult result, List<Finding> inputFindings, Console console) {
        String stem = ENDING.matcher(out).replaceFirst("");
        write(out, sheet, console);
        write(stem + ".csv", PullsCsv.of(result), console);
        write(stem + ".json", new AdviseJson().advise(result, inputFindings) + "\n", console);
    }

    private static void write(String out, String text, Console console) {
        try {
            Files.writeString(Path.of(out), text, StandardCharsets.UTF_8);
            console.err().println("wrote " + out);
        } catch (IOException | InvalidPathException unwritable) {
            throw new Program.BadInput(List.of(Finding.error(
                    FindingCode.FOLDER_NOT_WRITABLE,
                    Place.inFile(out),
                    Detail.of("why", String.valueOf(unwritable.getMessage())))));
        }
    }
}
