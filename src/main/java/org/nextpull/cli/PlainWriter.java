package org.nextpull.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/**
 * Hands on text without what a terminal takes for a command. Names of files, labels, plans and typed lines come from elsewhere: printed as
 * they are, an escape code in one of them could hide or forge what stands beside it. The bell stays, since alarms ring it.
 */
final class PlainWriter extends FilterWriter {
    private static final char INSTEAD = '?';

    PlainWriter(Writer out) {
        super(out);
    }

    @Override
    public void write(int c) throws IOException {
        out.write(plain((char) c));
    }

    @Override
    public void write(char[] text, int offset, int length) throws IOException {
        char[] plain = new char[length];
        for (int at = 0; at < length; at++) {
            plain[at] = plain(text[offset + at]);
        }
        out.write(plain, 0, length);
    }

    @Override
    public void write(String text, int offset, int length) throws IOException {
        write(text.toCharArray(), offset, length);
    }

    private static char plain(char c) {
        boolean wanted = c == '\n' || c == '\r' || c == '\t' || c == '\u0007';
        return wanted || !Character.isISOControl(c) ? c : INSTEAD;
    }
}
