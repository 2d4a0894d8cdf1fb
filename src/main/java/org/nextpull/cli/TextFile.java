package org.nextpull.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/** A text that a command writes into a file. */
final class TextFile {
    private TextFile() {}

    /** Writes it and says so, or gives up with why it could not be written. */
    static void write(String out, String text, Console console) {
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
