package org.nextpull.advice;

import java.util.OptionalDouble;

/** Why the sweep that decides has ended, and so what decides the setting to leave. */
final class Ending {
    private Ending() {}

    /** The reason of the sweep's planner, which does not know whether knock or another limit capped it. */
    static AdviceCode code(DayView view, SweepState decisive) {
        AdviceCode because = ((SweepStep.End) decisive.next()).because();
        boolean capped = because == AdviceCode.KNOCK_LIMITED && decisive.factor() == Factor.MIXTURE;
        return capped && isCappedByLimit(view) ? AdviceCode.LIMIT_MET : because;
    }

    private static boolean isCappedByLimit(DayView view) {
        OptionalDouble limit = view.bans().leanCeilingOfLimits(view.fuel());
        OptionalDouble any = view.bans().leanCeiling(view.fuel(), OptionalDouble.empty());
        return limit.isPresent() && any.isPresent() && limit.getAsDouble() <= any.getAsDouble();
    }

    static ChosenBy chosenBy(DayView view, SweepState decisive) {
        return switch (code(view, decisive)) {
            case KNOCK_LIMITED -> ChosenBy.KNOCK_LIMIT;
            case PLAN_LIMIT -> ChosenBy.PLAN_LIMIT;
            case SETTLED, SCATTER_LIMITED -> decisive.answer().bracketed() ? ChosenBy.PEAK : ChosenBy.HIGHEST_TRIED;
            default -> ChosenBy.HIGHEST_TRIED;
        };
    }
}
