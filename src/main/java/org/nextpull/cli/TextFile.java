package org.nextpull.cli;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.nextpull.app.WrittenFiles;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/** A text that a command writes into a file. */
final class TextFile {
    private TextFile() {}

    /** The file of that name, or gives up with why there can be none. */
    static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException impossible) {
            throw notWritable(name, impossible);
        }
    }

    /** Gives up when something that was read, or that is somebody's own, would be written over. */
    static void require(WrittenFiles files, List<Path> read) {
        try {
            files.refusal(read).ifPresent(refused -> {
                throw new Program.BadInput(List.of(refused));
            });
        } catch (IOException unreadable) {
            throw notWritable(files.named().toString(), unreadable);
        }
    }

    /** Writes it and says so, or gives up with why it could not be written. */
    static void write(Path out, String text, Console console) {
        write(out, text);
        console.err().println("wrote " + out);
    }

    /** Writes it, or gives up with why it could not be written. */
    static void write(Path out, String text) {
        try {
            WrittenFiles.write(Map.of(out, WrittenFiles.Content.of(text)));
        } catch (IOException unwritable) {
            throw notWritable(out.toString(), unwritable);
        }
    }

    static Program.BadInput notWritable(String file, Exception fault) {
        return new Program.BadInput(List.of(WrittenFiles.notWritable(file, fault)));
    }

    static Program.BadInput notWritable(String file, String why) {
        return new Program.BadInput(
                List.of(Finding.error(FindingCode.FOLDER_NOT_WRITABLE, Place.inFile(file), Detail.of("why", why))));
    }
}
