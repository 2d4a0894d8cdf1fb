package org.nextpull.intake.wire;

/**
 * The frame of a sentence as in NMEA 0183: {@code $address,field,field*hh}, where {@code hh} are two hexadecimal digits of the exclusive
 * or of all bytes between the {@code $} (or {@code !}) and the {@code *}. A sentence without a checksum is not taken: nothing would tell
 * half of it from all of it.
 */
public final class SentenceFrame {
    private static final int CHECKSUM_BYTES = 3;

    private SentenceFrame() {}

    /** What a line is. */
    public enum Checked {
        GOOD,
        /** There is no start, or no end that a checksum could stand in. */
        NOT_A_SENTENCE,
        /** The checksum is not that of the bytes. */
        WRONG_CHECKSUM
    }

    /** Where the sentence in a line starts: the last {@code $} or {@code !}, since a broken one may stand before it; else -1. */
    static int start(byte[] line, int start, int end) {
        for (int at = end - 1; at >= start; at--) {
            if (line[at] == '$' || line[at] == '!') {
                return at;
            }
        }
        return -1;
    }

    /** Checks the sentence that a line holds from {@code start}, as {@link #start} gives it, to before {@code end}. */
    static Checked check(byte[] line, int start, int end) {
        int star = end - CHECKSUM_BYTES;
        if (start < 0 || star <= start + 1 || line[star] != '*') {
            return Checked.NOT_A_SENTENCE;
        }
        int sum = 0;
        for (int at = start + 1; at < star; at++) {
            sum ^= line[at] & 0xff;
        }
        int high = Character.digit(line[star + 1], 16);
        int low = Character.digit(line[star + 2], 16);
        if (high < 0 || low < 0) {
            return Checked.NOT_A_SENTENCE;
        }
        return sum == high * 16 + low ? Checked.GOOD : Checked.WRONG_CHECKSUM;
    }

    /** The sentence around an address and its fields, with {@code $}, checksum, carriage return and line feed. */
    public static String of(String addressAndFields) {
        int sum = 0;
        for (int at = 0; at < addressAndFields.length(); at++) {
            sum ^= addressAndFields.charAt(at) & 0xff;
        }
        char high = Character.toUpperCase(Character.forDigit(sum >> 4, 16));
        char low = Character.toUpperCase(Character.forDigit(sum & 15, 16));
        return "$" + addressAndFields + "*" + high + low + "\r\n";
    }

    /** Sentences as {@link SentenceFrame} has them: the first field is the address, the others are values. */
    static final class Lines implements LineParser {
        @Override
        public Result parse(byte[] line, int start, int end, LineFields values, Names names) {
            names.clear();
            int last = end;
            while (last > start && line[last - 1] <= ' ' && line[last - 1] >= 0) {
                last--;
            }
            int from = SentenceFrame.start(line, start, last);
            SentenceFrame.Checked frame = SentenceFrame.check(line, from, last);
            if (frame != SentenceFrame.Checked.GOOD) {
                values.line(line, start, end);
                return frame == SentenceFrame.Checked.WRONG_CHECKSUM ? Result.WRONG_CHECKSUM : Result.BROKEN;
            }
            values.line(line, from + 1, last - 3);
            int comma = 0;
            while (comma < values.length() && values.charAt(comma) != ',') {
                comma++;
            }
            names.address(new String(values.text(), 0, comma));
            if (comma == values.length()) {
                return Result.PASSED_OVER;
            }
            values.split(comma + 1, values.length(), ',');
            return Result.VALUES;
        }
    }
}
