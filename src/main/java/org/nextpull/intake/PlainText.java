package org.nextpull.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;

/** A short text file, read whole: no pipe, which may never end, and no more of it than its reader can use. */
public final class PlainText {
    private PlainText() {}

    /**
     * Reads a file in UTF-8.
     *
     * @param name the file, as the user named it
     * @param mostBytes how long it may be
     * @return its text, or why there is none: not there, no file, too long ({@code PLAN_TOO_LONG}), no text ({@code PLAN_NOT_TEXT}), or
     *     not readable
     */
    public static Outcome<String> read(String name, int mostBytes) {
        Place place = Place.inFile(name);
        try {
            Path path = Path.of(name);
            if (Files.exists(path) && !Files.isRegularFile(path) && !Files.isDirectory(path)) {
                return Outcome.failed(Finding.error(FindingCode.FILE_IS_NO_FILE, place));
            }
            byte[] bytes;
            try (InputStream in = Files.newInputStream(path)) {
                bytes = in.readNBytes(mostBytes + 1);
            }
            if (bytes.length > mostBytes) {
                return Outcome.failed(Finding.error(
                        FindingCode.PLAN_TOO_LONG,
                        place,
                        Detail.of("length", (double) Files.size(path)),
                        Detail.of("most", mostBytes)));
            }
            return Outcome.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (NoSuchFileException | InvalidPathException missing) {
            return Outcome.failed(Finding.error(FindingCode.FILE_NOT_FOUND, place));
        } catch (CharacterCodingException binary) {
            return Outcome.failed(Finding.error(FindingCode.PLAN_NOT_TEXT, place));
        } catch (IOException unreadable) {
            return Outcome.failed(Finding.error(
                    FindingCode.FILE_UNREADABLE, place, Detail.of("why", String.valueOf(unreadable.getMessage()))));
        }
    }
}
