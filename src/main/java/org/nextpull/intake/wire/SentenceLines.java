package org.nextpull.intake.wire;

/** Sentences as {@link SentenceFrame} has them: the first field is the address, the others are values. */
final class SentenceLines implements LineParser {
    @Override
    public Result parse(byte[] line, int start, int end, Fields values, Names names) {
        names.clear();
        int last = end;
        while (last > start && line[last - 1] <= ' ' && line[last - 1] >= 0) {
            last--;
        }
        int from = SentenceFrame.start(line, start, last);
        SentenceFrame.Result frame = SentenceFrame.check(line, from, last);
        if (frame != SentenceFrame.Result.GOOD) {
            values.line(line, start, end);
            return frame == SentenceFrame.Result.WRONG_CHECKSUM ? Result.WRONG_CHECKSUM : Result.BROKEN;
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
