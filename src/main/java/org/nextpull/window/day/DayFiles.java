package org.nextpull.window.day;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.report.WrittenFiles;
import org.nextpull.report.csv.PullsCsv;
import org.nextpull.report.html.Sheet;
import org.nextpull.report.json.AdviseJson;
import org.nextpull.session.Replay;
import org.nextpull.session.SourcePulls;

/** Writes the sheet of a day, and its pulls and figures beside it. */
public final class DayFiles {
    private DayFiles() {}

    /** The logs and tables of the day, as far as they are files. */
    private static List<Path> read(Replay day) {
        return Stream.concat(
                        day.whole().sources().stream().map(SourcePulls::name),
                        day.whole().tables().stream()
                                .map(table -> table.description().name()))
                .map(Path::of)
                .toList();
    }

    /**
     * Writes the files.
     *
     * @param name name of the files, without an ending
     * @return a sentence on what was written or why not
     */
    public static String write(String folder, String name, Replay day, Shown shown) {
        try {
            Path into = Files.createDirectories(Path.of(folder.strip()));
            String stem = name.strip().isEmpty() ? "sheet" : name.strip();
            WrittenFiles files = WrittenFiles.sheet(into, stem);
            Optional<Finding> refused = files.refusal(read(day));
            if (refused.isPresent()) {
                return FindingText.in(shown).sentence(refused.get());
            }
            Files.writeString(files.named(), Sheet.of(day, shown), StandardCharsets.UTF_8);
            Files.writeString(files.beside().get(0), PullsCsv.of(day.whole()), StandardCharsets.UTF_8);
            Files.writeString(
                    files.beside().get(1),
                    new AdviseJson().advise(day.whole(), List.of()) + "\n",
                    StandardCharsets.UTF_8);
            return "Wrote " + stem + ".html, .csv and .json into "
                    + into.toAbsolutePath().normalize() + ".";
        } catch (IOException | InvalidPathException unwritable) {
            return FindingText.in(shown)
                    .sentence(Finding.error(
                            FindingCode.FOLDER_NOT_WRITABLE,
                            Place.inFile(folder),
                            Detail.of("why", String.valueOf(unwritable.getMessage()))));
        }
    }
}
