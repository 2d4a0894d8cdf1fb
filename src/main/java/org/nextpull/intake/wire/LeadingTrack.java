package org.nextpull.intake.wire;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Tells which source gives the clock of the rows: the one that sent most lines in the last {@link #WINDOW_S}. It only changes where
 * another sent clearly more, so two sources of about one speed do not take turns.
 */
final class LeadingTrack {
    static final double WINDOW_S = 2;

    private static final double CLEARLY_MORE = 1.25;

    private final Map<String, Long> counts = new LinkedHashMap<>();
    private Optional<String> leading = Optional.empty();
    private double windowEndS = Double.NaN;

    /** Notes the time; true when a window ended, after which another may lead. */
    boolean passes(double nowS) {
        if (Double.isNaN(windowEndS) || nowS < windowEndS) {
            return false;
        }
        String best = leading.orElse("");
        double most = counts.getOrDefault(best, 0L) * (leading.isPresent() ? CLEARLY_MORE : 1);
        for (Map.Entry<String, Long> entry : counts.entrySet()) {
            if (entry.getValue() > most) {
                best = entry.getKey();
                most = entry.getValue();
            }
        }
        leading = best.isEmpty() ? leading : Optional.of(best);
        counts.replaceAll((track, count) -> 0L);
        windowEndS += WINDOW_S * (1 + Math.floor((nowS - windowEndS) / WINDOW_S));
        return true;
    }

    void count(String track, int rows, double nowS) {
        if (Double.isNaN(windowEndS)) {
            windowEndS = nowS + WINDOW_S;
        }
        counts.merge(track, (long) rows, Long::sum);
    }

    /** The leading source; empty in the first window. */
    Optional<String> leading() {
        return leading;
    }
}
