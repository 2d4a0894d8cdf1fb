package org.nextpull.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.report.csv.PullsCsv;
import org.nextpull.report.json.AdviseJson;

/**
 * The sheet of a day in a file and, beside it under the same name, its pulls as CSV and its figures as JSON. All or none of them may be
 * written: nothing that was read, and nothing beside the sheet that is somebody's own, is written over. Not for the event thread.
 */
public final class SheetFiles {
    private static final Pattern ENDING = Pattern.compile("\\.html?$", Pattern.CASE_INSENSITIVE);

    private SheetFiles() {}

    /**
     * Writes the files.
     *
     * @param out name of the sheet's file; the others follow from it
     * @param order how the sheet is written
     * @return what was written
     */
    public static Outcome<List<Path>> write(String out, DaySheet sheet, DaySheet.Order order) {
        String stem = ENDING.matcher(out).replaceFirst("");
        Map<Path, String> texts = new LinkedHashMap<>();
        try {
            Path named = Path.of(out);
            WrittenFiles files = new WrittenFiles(named, List.of(Path.of(stem + ".csv"), Path.of(stem + ".json")));
            Optional<Finding> refused = files.refusal(sheet.files());
            if (refused.isPresent()) {
                return Outcome.failed(refused.get());
            }
            texts.put(named, sheet.html(order));
            texts.put(files.beside().get(0), PullsCsv.of(sheet.replay().whole()));
            texts.put(
                    files.beside().get(1),
                    new AdviseJson().advise(sheet.replay().whole()) + "\n");
            for (Map.Entry<Path, String> text : texts.entrySet()) {
                Files.writeString(text.getKey(), text.getValue(), StandardCharsets.UTF_8);
            }
            return Outcome.of(List.copyOf(texts.keySet()));
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
    public static Outcome<Path> write(String folder, String name, DaySheet sheet, DaySheet.Order order) {
        try {
            Path into = Files.createDirectories(Path.of(folder.isBlank() ? "." : folder.strip()));
            return write(into.resolve(name + ".html").toString(), sheet, order).map(written -> into);
        } catch (IOException | InvalidPathException fault) {
            return Outcome.failed(WrittenFiles.notWritable(folder, fault));
        }
    }
}
