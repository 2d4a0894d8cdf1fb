package org.nextpull.window.past;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.notebook.KeptSession;
import org.nextpull.report.Shown;
import org.nextpull.report.WrittenFiles;
import org.nextpull.report.csv.PullsCsv;
import org.nextpull.report.html.Heading;
import org.nextpull.report.html.Sheet;
import org.nextpull.report.json.NotebookJson;
import org.nextpull.session.Replay;

/** Writes the sheet of a kept session, with its pulls as CSV and everything as JSON beside it. Not for the event thread. */
final class PastFiles {
    private PastFiles() {}

    /**
     * Writes the files.
     *
     * @param name name of the files, without an ending
     * @return the folder
     */
    static Outcome<Path> write(KeptSession session, String folder, String name, Shown shown) {
        try {
            Path into = Files.createDirectories(Path.of(folder.strip().isEmpty() ? "." : folder.strip()));
            WrittenFiles files = WrittenFiles.sheet(into, name);
            Optional<Finding> refused = files.refusal(List.of());
            if (refused.isPresent()) {
                return Outcome.failed(refused.get());
            }
            Replay replay = Replay.of(session.input(), session.sources());
            Heading heading = new Heading(
                    Optional.empty(),
                    Optional.of("session " + session.id() + " of "
                            + session.summary().started().toString().substring(0, 10)),
                    Optional.of("kept by " + session.summary().version()));
            text(files.named(), Sheet.of(replay, shown, heading));
            text(files.beside().get(0), PullsCsv.of(replay.whole()));
            text(files.beside().get(1), new NotebookJson().session(session, replay.whole()) + "\n");
            return Outcome.of(into);
        } catch (IOException | InvalidPathException fault) {
            return Outcome.failed(Finding.error(
                    FindingCode.FOLDER_NOT_WRITABLE,
                    Place.inFile(folder),
                    Detail.of("why", fault.getClass().getSimpleName() + ": " + fault.getMessage())));
        }
    }

    private static void text(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }
}
