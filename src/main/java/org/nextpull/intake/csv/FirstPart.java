package org.nextpull.intake.csv;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.zip.ZipException;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.ByteSource;
import org.nextpull.intake.Encoding;
import org.nextpull.intake.FileKind;

/**
 * The first part of a text, as far as it is needed to understand the whole.
 *
 * @param encoding its character set
 * @param text its first characters; only whole lines where the text is longer
 * @param complete whether that is the whole text
 */
record FirstPart(Encoding encoding, String text, boolean complete) {
    /** Enough for some thousand rows: the magnitudes of a column are judged on them. */
    static final int MOST_CHARS = 1 << 18;

    /** Reads the first part of a source; fails where there is no text. */
    static Outcome<FirstPart> of(ByteSource source) throws IOException {
        Place place = Place.inFile(source.name());
        byte[] head = firstBytes(source);
        if (head.length == 0) {
            return Outcome.failed(Finding.error(FindingCode.FILE_EMPTY, place));
        }
        if (FileKind.isWorkbook(head)) {
            return Outcome.failed(Finding.error(FindingCode.FILE_IS_WORKBOOK, place));
        }
        if (FileKind.isPacked(head)) {
            return Outcome.failed(Finding.error(FindingCode.FILE_PACKED_TWICE, place));
        }
        Encoding encoding = Encoding.of(head);
        if (FileKind.isKnownBinary(head) || encoding.looksBinary(head)) {
            return Outcome.failed(Finding.error(FindingCode.FILE_BINARY, place));
        }
        FirstPart part = read(source, encoding);
        if (part.text().isBlank()) {
            return Outcome.failed(Finding.error(FindingCode.FILE_EMPTY, place));
        }
        return part.isPlan() ? Outcome.failed(Finding.error(FindingCode.FILE_IS_PLAN, place)) : Outcome.of(part);
    }

    /** Whether the text ends behind a line, and not within one. */
    boolean endsWithLine() {
        return text.endsWith("\n") || text.endsWith("\r");
    }

    /** Characters that were looked at of a line which does not end within the first part. */
    int charsOfOpenLine() {
        return endsWithLine() ? MOST_CHARS - text.length() : text.length();
    }

    /** A plan begins with a table in brackets, below nothing but comments. */
    private boolean isPlan() {
        return text.lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .findFirst()
                .filter(line -> line.matches("\\[{1,2}[a-z]+]{1,2}(?:\\s*#.*)?"))
                .isPresent();
    }

    private static byte[] firstBytes(ByteSource source) throws IOException {
        try (InputStream in = source.open()) {
            byte[] head = new byte[Encoding.ENOUGH_BYTES];
            int count = 0;
            try {
                int read;
                while (count < head.length && (read = in.read(head, count, head.length - count)) > 0) {
                    count += read;
                }
            } catch (EOFException | ZipException e) {
                if (count == 0) {
                    throw e;
                }
            }
            return java.util.Arrays.copyOf(head, count);
        }
    }

    private static FirstPart read(ByteSource source, Encoding encoding) throws IOException {
        char[] chars = new char[MOST_CHARS];
        int count = 0;
        boolean complete = false;
        try (Reader reader = encoding.reader(source.open())) {
            while (count < chars.length && !complete) {
                int read = reader.read(chars, count, chars.length - count);
                complete = read < 0;
                count += Math.max(read, 0);
            }
        } catch (EOFException | ZipException e) {
            complete = true;
        }
        String text = new String(chars, 0, count);
        int end = Math.max(text.lastIndexOf('\n'), text.lastIndexOf('\r'));
        return new FirstPart(encoding, complete || end < 0 ? text : text.substring(0, end + 1), complete);
    }
}
