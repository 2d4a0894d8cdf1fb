package org.nextpull.advice;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The stops that stood after the first pulls of a day, for one that is gone through pull by pull; grows. Not for use by several threads. */
public final class SaidStops {
    final Map<Integer, Optional<KeptStop.Stop>> standing = new HashMap<>();
}
