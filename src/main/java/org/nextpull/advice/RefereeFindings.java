package org.nextpull.advice;

import java.util.List;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.fit.Referee;
import org.nextpull.fit.SweepPosterior;
import org.nextpull.unit.Span;

/** What the second opinion on a bracketed peak says: nothing while it agrees. */
final class RefereeFindings {
    private RefereeFindings() {}

    /**
     * Compares the two.
     *
     * @param peak 90 % interval of the peak in the planner's units
     * @param perUnit planner's units in one of the factor's
     */
    static List<Finding> of(SweepPosterior posterior, Span peak, double perUnit) {
        Referee referee = Referee.of(posterior);
        if (referee instanceof Referee.Bounded bounded && !overlap(bounded.ninety(), peak)) {
            return List.of(Finding.warning(
                    FindingCode.PEAK_DISPUTED,
                    Place.nowhere(),
                    Detail.of("low", bounded.ninety().low() / perUnit),
                    Detail.of("high", bounded.ninety().high() / perUnit),
                    Detail.of("fit_low", peak.low() / perUnit),
                    Detail.of("fit_high", peak.high() / perUnit)));
        }
        if (referee instanceof Referee.Unbounded) {
            return List.of(Finding.note(FindingCode.PEAK_NOT_BOUNDED_ALONE, Place.nowhere()));
        }
        return List.of();
    }

    private static boolean overlap(Span one, Span other) {
        return one.low() <= other.high() && other.low() <= one.high();
    }
}
