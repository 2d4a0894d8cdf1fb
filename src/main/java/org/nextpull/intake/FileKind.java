package org.nextpull.intake;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;

/** Kinds of file that are told by their first bytes, whatever their name says. */
public enum FileKind {
    GZIP(0x1f, 0x8b),
    ZIP('P', 'K', 3, 4),
    EMPTY_ZIP('P', 'K', 5, 6),
    /** The older binary workbook. */
    WORKBOOK(0xd0, 0xcf, 0x11, 0xe0),
    PDF('%', 'P', 'D', 'F'),
    XZ(0xfd, '7', 'z', 'X', 'Z'),
    SEVEN_ZIP('7', 'z', 0xbc, 0xaf),
    BZIP2('B', 'Z', 'h'),
    ZSTANDARD(0x28, 0xb5, 0x2f, 0xfd),
    OTHER;

    /** Bytes that are enough to tell every kind. */
    static final int ENOUGH_BYTES = 8;

    /** Where a zip holds the name of its first entry, and its length: APPNOTE.TXT 4.3.7. */
    private static final int ZIP_NAME = 30;

    private static final int ZIP_NAME_LENGTH = 26;
    /** The parts of a workbook; of what logs are packed in none is first. */
    private static final Pattern WORKBOOK_ENTRY = Pattern.compile("mimetype|.*\\.(?:xml|rels|bin)");

    private final String first;

    FileKind(int... bytes) {
        StringBuilder text = new StringBuilder();
        for (int b : bytes) {
            text.append((char) b);
        }
        this.first = text.toString();
    }

    static FileKind of(byte[] head) {
        for (FileKind kind : values()) {
            if (kind.fits(head)) {
                return kind;
            }
        }
        return OTHER;
    }

    /** Whether the bytes start a workbook of a spreadsheet program, which must be saved as CSV first. */
    public static boolean isWorkbook(byte[] head) {
        FileKind kind = of(head);
        return kind == WORKBOOK
                || (kind == ZIP && WORKBOOK_ENTRY.matcher(firstEntry(head)).matches());
    }

    /** Whether the bytes start something packed, as what was unpacked should not. */
    public static boolean isPacked(byte[] head) {
        return List.of(GZIP, ZIP, EMPTY_ZIP).contains(of(head));
    }

    /** Name of the first entry of a zip, as far as it is there. */
    private static String firstEntry(byte[] zip) {
        String text = new String(zip, StandardCharsets.ISO_8859_1);
        int length =
                text.length() < ZIP_NAME ? 0 : text.charAt(ZIP_NAME_LENGTH) + (text.charAt(ZIP_NAME_LENGTH + 1) << 8);
        return text.substring(Math.min(ZIP_NAME, text.length()), Math.min(ZIP_NAME + length, text.length()));
    }

    /** Whether the bytes start some other kind of file that is known to be no text. */
    public static boolean isKnownBinary(byte[] head) {
        return of(head) != OTHER;
    }

    private boolean fits(byte[] head) {
        if (head.length < first.length()) {
            return false;
        }
        for (int index = 0; index < first.length(); index++) {
            if ((head[index] & 0xff) != first.charAt(index)) {
                return false;
            }
        }
        return true;
    }
}
