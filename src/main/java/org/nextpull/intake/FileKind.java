package org.nextpull.intake;

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
        return kind == ZIP || kind == WORKBOOK;
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
