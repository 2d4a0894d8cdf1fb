package org.nextpull.compare;

import org.nextpull.finding.Place;
import org.nextpull.response.MeasuredPull;

/** A pull as whoever ran it knows it: by its log or session and its number there, not by that of a day which was joined to compare. */
final class PullPlace {
    private PullPlace() {}

    static Place of(MeasuredPull pull) {
        return Place.inFile(pull.origin().source()).withPull(pull.origin().candidate());
    }
}
