package org.nextpull.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * Character set of a text, told from its first bytes: a byte order mark if there is one; else UTF-32 or UTF-16 by where the zero bytes fall;
 * else UTF-8 if the bytes are valid UTF-8; else windows-1252, which holds ISO 8859-1 too.
 *
 * @param charset the set
 * @param markBytes length of the byte order mark, to be skipped
 */
public record Encoding(Charset charset, int markBytes) {
    /** Bytes that are enough to tell; more do no harm. */
    public static final int ENOUGH_BYTES = 1 << 14;

    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
    private static final Charset UTF_32LE = Charset.forName("UTF-32LE");
    private static final Charset UTF_32BE = Charset.forName("UTF-32BE");
    /** Share of zero bytes at one place of each pair, or four, from which a text is taken for UTF-16 or UTF-32. */
    private static final double MANY_ZEROS = 0.4;

    private static final double FEW_ZEROS = 0.05;

    /** Tells the character set from the first bytes of a text. */
    public static Encoding of(byte[] head) {
        if (startsWith(head, 0xef, 0xbb, 0xbf)) {
            return new Encoding(StandardCharsets.UTF_8, 3);
        }
        if (startsWith(head, 0xff, 0xfe, 0, 0)) {
            return new Encoding(UTF_32LE, 4);
        }
        if (startsWith(head, 0, 0, 0xfe, 0xff)) {
            return new Encoding(UTF_32BE, 4);
        }
        if (startsWith(head, 0xff, 0xfe)) {
            return new Encoding(StandardCharsets.UTF_16LE, 2);
        }
        if (startsWith(head, 0xfe, 0xff)) {
            return new Encoding(StandardCharsets.UTF_16BE, 2);
        }
        double low = zeroShare(head, 4, 0);
        double high = zeroShare(head, 4, 3);
        if (low < FEW_ZEROS && high > MANY_ZEROS && zeroShare(head, 4, 2) > MANY_ZEROS) {
            return new Encoding(UTF_32LE, 0);
        }
        if (high < FEW_ZEROS && low > MANY_ZEROS && zeroShare(head, 4, 1) > MANY_ZEROS) {
            return new Encoding(UTF_32BE, 0);
        }
        double first = zeroShare(head, 2, 0);
        double second = zeroShare(head, 2, 1);
        if (second > MANY_ZEROS && first < FEW_ZEROS) {
            return new Encoding(StandardCharsets.UTF_16LE, 0);
        }
        if (first > MANY_ZEROS && second < FEW_ZEROS) {
            return new Encoding(StandardCharsets.UTF_16BE, 0);
        }
        return new Encoding(isUtf8(head) ? StandardCharsets.UTF_8 : WINDOWS_1252, 0);
    }

    /** The name as {@code inspect} prints it. */
    public String name() {
        return charset.name();
    }

    /** Whether each byte below 128 is the ASCII character, whatever stands beside it. */
    public boolean holdsAscii() {
        return charset.equals(StandardCharsets.UTF_8) || charset.equals(WINDOWS_1252);
    }

    /** Reads characters from bytes that start with the mark, if there is one; bytes that are no character never stop it. */
    public Reader reader(InputStream bytes) throws IOException {
        bytes.skipNBytes(markBytes);
        return readerBehindMark(bytes);
    }

    /** The same for bytes that stand behind the mark. */
    public Reader readerBehindMark(InputStream bytes) {
        return charset.equals(StandardCharsets.UTF_8)
                ? new LenientUtf8Reader(bytes)
                : new InputStreamReader(bytes, charset);
    }

    /** Whether the first bytes look like no text at all: control characters that no log contains. */
    public boolean looksBinary(byte[] head) {
        String text = new String(head, charset);
        long odd = text.chars()
                .filter(c -> c < ' ' && c != '\t' && c != '\n' && c != '\r' && c != '\f' && c != 0x1a)
                .count();
        return odd * 50 > text.length();
    }

    private static boolean startsWith(byte[] head, int... mark) {
        if (head.length < mark.length) {
            return false;
        }
        for (int index = 0; index < mark.length; index++) {
            if ((head[index] & 0xff) != mark[index]) {
                return false;
            }
        }
        return true;
    }

    /** Share of zeros at one place of each group of so many bytes. */
    private static double zeroShare(byte[] head, int size, int place) {
        int groups = head.length / size;
        int zeros = 0;
        for (int group = 0; group < groups; group++) {
            if (head[size * group + place] == 0) {
                zeros++;
            }
        }
        return groups == 0 ? 0 : (double) zeros / groups;
    }

    /** A character cut in two by the end of the head is no error. */
    private static boolean isUtf8(byte[] head) {
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(ByteBuffer.wrap(head), CharBuffer.allocate(head.length + 1), false);
        return !result.isError();
    }
}
