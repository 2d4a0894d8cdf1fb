package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import org.nextpull.plan.Limit;
import org.nextpull.response.MeasuredPull;

/**
 * The limits that guard the way to a danger, and what holds while one of the plan's was not watched in the last pull: a step that way is
 * half as long, and none is asked for before the operator has said to watch it alone. Without a live lambda nothing leaner is asked for
 * at all, and no mixture bracket is run.
 */
final class Guards {
    private static final double HALF = 0.5;

    private final DayView view;

    Guards(DayView view) {
        this.view = view;
    }

    /** Where a setting may go to. */
    enum Way {
        ADVANCE,
        RETARD,
        LEAN;

        private List<Limit> guards() {
            return switch (this) {
                case ADVANCE -> List.of(Limit.KNOCK);
                case RETARD -> List.of(Limit.EXHAUST);
                case LEAN -> List.of(Limit.LEAN, Limit.EXHAUST, Limit.FUEL_PRESSURE, Limit.INJECTOR_DUTY);
            };
        }
    }

    /** The limits of the plan that guard a way and were not watched in the last pull of the day. */
    List<Limit> unwatched(Way way) {
        List<MeasuredPull> pulls =
                view.day().pulls().stream().filter(MeasuredPull::isPull).toList();
        if (pulls.isEmpty()) {
            return List.of();
        }
        MeasuredPull last = pulls.get(pulls.size() - 1);
        List<Limit> wanted = view.day().plan().watched();
        return way.guards().stream()
                .filter(limit -> wanted.contains(limit) && !last.isWatched(limit))
                .toList();
    }

    /** The share of the plan's step that may be gone that way. */
    double shareOfStep(Way way) {
        return unwatched(way).isEmpty() ? 1 : HALF;
    }

    /**
     * Why a setting that goes those ways is not asked for yet; empty when it may be.
     *
     * @param isBracket whether it belongs to a search for the mixture
     */
    Optional<Reason.NotWatched> held(List<Way> ways, boolean isBracket) {
        if (isBracket && unwatched(Way.LEAN).contains(Limit.LEAN)) {
            return Optional.of(new Reason.NotWatched(List.of(Limit.LEAN), false));
        }
        List<Limit> missing = ways.stream()
                .flatMap(way -> unwatched(way).stream())
                .filter(limit -> !view.day().ownWatch().contains(limit))
                .distinct()
                .toList();
        return missing.isEmpty() ? Optional.empty() : Optional.of(new Reason.NotWatched(missing, true));
    }
}
