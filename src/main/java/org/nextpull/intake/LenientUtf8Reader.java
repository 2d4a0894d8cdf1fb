package org.nextpull.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * Reads UTF-8, and each byte that is not UTF-8 as windows-1252: a logger that writes its names in one set and the operator's notes
 * in another is still read.
 */
final class LenientUtf8Reader extends Reader {
    private static final int BUFFER_BYTES = 1 << 16;
    private static final String HIGH_1252 = high1252();
    private static final VarHandle EIGHT = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.nativeOrder());
    private static final long HIGH_BITS = 0x8080_8080_8080_8080L;

    private final InputStream in;
    private final byte[] buffer = new byte[BUFFER_BYTES];
    private int position;
    private int limit;
    private boolean ended;
    private char pendingLowSurrogate;

    LenientUtf8Reader(InputStream in) {
        this.in = in;
    }

    @Override
    public int read(char[] target, int offset, int length) throws IOException {
        int written = 0;
        while (written < length) {
            if (pendingLowSurrogate != 0) {
                target[offset + written++] = pendingLowSurrogate;
                pendingLowSurrogate = 0;
                continue;
            }
            if (limit - position < 4 && !ended) {
                if (written > 0) {
                    break;
                }
                fill();
            }
            if (position == limit) {
                break;
            }
            int plain = plainBytes(Math.min(length - written, limit - position));
            if (plain > 0) {
                new String(buffer, position, plain, StandardCharsets.ISO_8859_1)
                        .getChars(0, plain, target, offset + written);
                position += plain;
                written += plain;
            } else {
                target[offset + written++] = character(buffer[position] & 0xff);
            }
        }
        return written == 0 && length > 0 ? -1 : written;
    }

    /** How many of the next bytes are ASCII, which is all of them mostly: eight are looked at together. */
    private int plainBytes(int most) {
        int count = 0;
        while (count + Long.BYTES <= most && ((long) EIGHT.get(buffer, position + count) & HIGH_BITS) == 0) {
            count += Long.BYTES;
        }
        while (count < most && buffer[position + count] >= 0) {
            count++;
        }
        return count;
    }

    private char character(int lead) {
        int extra =
                lead >= 0xf0 && lead < 0xf5 ? 3 : lead >= 0xe0 && lead < 0xf0 ? 2 : lead >= 0xc2 && lead < 0xe0 ? 1 : 0;
        int code = extra == 0 ? -1 : decode(lead, extra);
        if (code < 0) {
            position++;
            return HIGH_1252.charAt(lead - 0x80);
        }
        position += extra + 1;
        if (Character.isBmpCodePoint(code)) {
            return (char) code;
        }
        pendingLowSurrogate = Character.lowSurrogate(code);
        return Character.highSurrogate(code);
    }

    /** The code point, or -1 when the bytes are not UTF-8. */
    private int decode(int lead, int extra) {
        if (limit - position <= extra) {
            return -1;
        }
        int code = lead & (0x3f >> extra);
        for (int index = 1; index <= extra; index++) {
            int next = buffer[position + index] & 0xff;
            if ((next & 0xc0) != 0x80) {
                return -1;
            }
            code = code << 6 | (next & 0x3f);
        }
        boolean tooLong = (extra == 2 && code < 0x800) || (extra == 3 && code < 0x10000);
        boolean impossible = code > Character.MAX_CODE_POINT || (code >= 0xd800 && code <= 0xdfff);
        return tooLong || impossible ? -1 : code;
    }

    private void fill() throws IOException {
        System.arraycopy(buffer, position, buffer, 0, limit - position);
        limit -= position;
        position = 0;
        int count = in.read(buffer, limit, buffer.length - limit);
        if (count < 0) {
            ended = true;
        } else {
            limit += count;
        }
    }

    @Override
    public void close() throws IOException {
        in.close();
    }

    private static String high1252() {
        byte[] high = new byte[128];
        for (int index = 0; index < high.length; index++) {
            high[index] = (byte) (0x80 + index);
        }
        return new String(high, Charset.forName("windows-1252"));
    }
}
