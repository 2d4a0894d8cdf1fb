package org.nextpull.cli;

import java.util.List;
import java.util.regex.Pattern;
import org.nextpull.finding.Finding;
import org.nextpull.report.csv.PullsCsv;
import org.nextpull.report.json.AdviseJson;
import org.nextpull.session.SessionResult;

/** The sheet and, beside it under the same name, its pulls as CSV and its figures as JSON. */
final class SheetFiles {
    private static final Pattern ENDING = Pattern.compile("\\.html?$", Pattern.CASE_INSENSITIVE);

    private SheetFiles() {}

    static void write(String out, String sheet, SessionResult result, List<Finding> inputFindings, Console console) {
        String stem = ENDING.matcher(out).replaceFirst("");
        TextFile.write(out, sheet, console);
        TextFile.write(stem + ".csv", PullsCsv.of(result), console);
        TextFile.write(stem + ".json", new AdviseJson().advise(result, inputFindings) + "\n", console);
    }
}
