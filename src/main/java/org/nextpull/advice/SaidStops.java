package org.nextpull.advice;

import java.util.Optional;
import java.util.TreeMap;

/** The stops that stood after the first pulls of a day, for one that is gone through pull by pull; grows. Not for use by several threads. */
public final class SaidStops {
    final TreeMap<Integer, Optional<KeptStop.Stop>> standing = new TreeMap<>();
    final MapShown shown = new MapShown();

    /** Forgets what was said after more than so many pulls: one that came next is known to be another now. */
    public void forgetAfter(int pulls) {
        standing.tailMap(pulls, false).clear();
    }
}
