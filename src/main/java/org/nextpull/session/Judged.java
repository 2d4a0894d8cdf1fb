package org.nextpull.session;

import java.util.HashMap;
import java.util.Map;
import org.nextpull.advice.SaidStops;
import org.nextpull.advice.Verdict;
import org.nextpull.response.MeasuredCurve;

/**
 * What is known from other states of a day that is gone through pull by pull, so that each state costs what its last pull adds. Grows.
 *
 * @param sweeps sweeps of candidates that have ended
 * @param stops the stops that were said
 * @param heard pulls by their place in the day that no later pull says more of
 */
record Judged(Map<Deciding.Sweep, Verdict> sweeps, SaidStops stops, Map<Integer, MeasuredCurve> heard) {
    static Judged nothing() {
        return new Judged(new HashMap<>(), new SaidStops(), new HashMap<>());
    }
}
