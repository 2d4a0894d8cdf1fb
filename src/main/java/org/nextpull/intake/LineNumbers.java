package org.nextpull.intake;

import java.util.Arrays;
import java.util.StringJoiner;
import java.util.stream.Stream;
import org.nextpull.finding.Detail;

/** Counts lines of one kind and keeps the numbers of the first few. Not for use by several threads. */
public final class LineNumbers {
    private static final int FEW = 5;

    private final StringJoiner first = new StringJoiner(", ");
    private long firstLine;
    private long count;

    public void add(long line) {
        if (count == 0) {
            firstLine = line;
        }
        if (count < FEW) {
            first.add(Long.toString(line));
        }
        count++;
    }

    public long count() {
        return count;
    }

    public boolean isEmpty() {
        return count == 0;
    }

    /** The first of the lines; 0 while there is none. */
    public long firstLine() {
        return firstLine;
    }

    /** The count and the first few lines as details of a finding, behind others. */
    public Detail[] details(Detail... before) {
        return Stream.concat(
                        Arrays.stream(before),
                        Stream.of(Detail.of("count", (double) count), Detail.of("lines", text())))
                .toArray(Detail[]::new);
    }

    /** The first few lines as people write them: {@code 12, 15, 18}, with three dots behind where there are more. */
    public String text() {
        return count > FEW ? first + " ..." : first.toString();
    }
}
