package org.nextpull.response;

import org.nextpull.finding.Place;

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

    /** The pull as whoever ran it knows it: by its log or session and its number there, not by that of a day which was joined to compare. */
    public Place place() {
        return Place.inFile(source).withPull(candidate);
    }

    Origin onDay(int newDay) {
        return new Origin(source, firstLine, candidate, newDay);
    }
}
