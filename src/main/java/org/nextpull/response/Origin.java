package org.nextpull.response;

/**
 * Where a pull came from.
 *
 * @param source name of the file, table or capture
 * @param firstLine its first line there, from 1
 * @param candidate its number among the candidates of that source, from 1, refused ones included
 * @param day which of the days at hand it was run on, from 0 in the order of the pulls; pulls of one day share a level and a drift
 */
public record Origin(String source, long firstLine, int candidate, int day) {
    /** Of the only day, or the first. */
    public Origin(String source, long firstLine, int candidate) {
        this(source, firstLine, candidate, 0);
    }

    Origin onDay(int newDay) {
        return new Origin(source, firstLine, candidate, newDay);
    }
}
