package org.nextpull.intake;

/** Tells files that are no text by their first bytes. */
public final class FileKind {
    private FileKind() {}

    /** Whether the bytes start a workbook of a spreadsheet program, which must be saved as CSV first. */
    public static boolean isWorkbook(byte[] head) {
        Magic magic = Magic.of(head);
        return magic == Magic.ZIP || magic == Magic.WORKBOOK;
    }

    /** Whether the bytes start some other kind of file that is known to be no text. */
    public static boolean isKnownBinary(byte[] head) {
        return Magic.of(head) != Magic.OTHER;
    }
}
