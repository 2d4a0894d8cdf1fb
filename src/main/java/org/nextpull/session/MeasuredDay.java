package org.nextpull.session;

import java.util.List;
import java.util.function.Predicate;
import org.nextpull.finding.Finding;
import org.nextpull.response.MeasuredCurve;
import org.nextpull.response.MeasuredPull;

/**
 * The pulls of a day with their curves, before anything is concluded from them.
 *
 * @param sources the logs that were read
 * @param measured all pulls in the order of the day
 * @param orderFrom where that order comes from
 * @param found what was found on the way to them
 */
record MeasuredDay(List<SourcePulls> sources, List<MeasuredCurve> measured, OrderFrom orderFrom, List<Finding> found) {
    MeasuredDay {
        sources = List.copyOf(sources);
        measured = List.copyOf(measured);
        found = List.copyOf(found);
    }

    /** The day as it stood after its first pulls. */
    MeasuredDay first(int pulls) {
        return new MeasuredDay(sources, measured.subList(0, pulls), orderFrom, found);
    }

    /** The day as if there had been these pulls alone. */
    MeasuredDay only(Predicate<MeasuredPull> pulls) {
        return new MeasuredDay(
                sources, measured.stream().filter(one -> pulls.test(one.pull())).toList(), orderFrom, found);
    }
}
