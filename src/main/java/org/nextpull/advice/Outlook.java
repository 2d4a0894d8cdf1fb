package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the stages say: where the sweeps stand, what would be left now, and the next step.
 *
 * @param timing the timing sweep that counts now
 * @param mixture the mixture bracket
 * @param chosen the setting to leave, once the sweeps have ended
 * @param draft the next step; empty when what is forbidden leaves no setting to run
 */
record Outlook(
        Optional<SweepState> timing, Optional<SweepState> mixture, Optional<Chosen> chosen, Optional<Draft> draft) {
    static Outlook unfinished(Optional<SweepState> timing, Optional<SweepState> mixture, Optional<Draft> draft) {
        return new Outlook(timing, mixture, Optional.empty(), draft);
    }

    /** What the sweeps show of a setting that was run so. */
    Chosen.Proof proof(DayView view, Chosen.Standing standing) {
        List<Factor> bracketed = Stream.of(timing, mixture)
                .flatMap(Optional::stream)
                .filter(state -> state.answer().bracketed())
                .map(SweepState::factor)
                .toList();
        List<Factor> open = Stream.of(view.timing(), view.mixture())
                .flatMap(Optional::stream)
                .map(Axis::factor)
                .filter(factor -> !bracketed.contains(factor))
                .toList();
        return new Chosen.Proof(bracketed, open, standing);
    }
}
