package org.nextpull.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.Map;

/**
 * Hands on text without what a terminal takes for a command. Names of files, labels, plans and typed lines come from elsewhere: printed as
 * they are, an escape code in one of them could hide or forge what stands beside it. The bell stays, since alarms ring it. A terminal
 * that shows no UTF-8 gets the signs of units in plain ASCII.
 */
final class PlainWriter extends FilterWriter {
    private static final char INSTEAD = '?';
    private static final Map<Character, String> IN_ASCII =
            Map.of('°', "deg", '·', ".", '²', "2", '³', "3", '±', "+-", 'µ', "u");

    private final boolean inAscii;

    /**
     * Writes through.
     *
     * @param inAscii whether what reads it knows no signs beyond ASCII
     */
    PlainWriter(Writer out, boolean inAscii) {
        super(out);
        this.inAscii = inAscii;
    }

    @Override
    public void write(int c) throws IOException {
        write(String.valueOf((char) c));
    }

    @Override
    public void write(char[] text, int offset, int length) throws IOException {
        StringBuilder plain = new StringBuilder(length);
        for (int at = offset; at < offset + length; at++) {
            plain.append(inAscii ? IN_ASCII.getOrDefault(text[at], plain(text[at])) : plain(text[at]));
        }
        out.write(plain.toString());
    }

    @Override
    public void write(String text, int offset, int length) throws IOException {
        write(text.toCharArray(), offset, length);
    }

    private static String plain(char c) {
        boolean wanted = c == '\n' || c == '\r' || c == '\t' || c == '\u0007';
        return String.valueOf(wanted || !Character.isISOControl(c) ? c : INSTEAD);
    }
}
