package org.nextpull.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** The setting that a configuration starts from: the plan's, made as retarded and rich as the day's bans ask. */
final class StartOfDay {
    private StartOfDay() {}

    /** The start setting; empty when what is forbidden leaves none within the plan's limits. */
    static Optional<Proposal> of(DayView view) {
        OptionalDouble lambda = view.sweepMixture();
        if (view.timing().isEmpty()) {
            return Optional.of(new Proposal(
                    Optional.empty(), Optional.empty(), boxed(lambda).map(Lambda::of)));
        }
        Axis axis = view.timing().get();
        double advance = advance(view, axis);
        OptionalDouble ban = view.bans().advanceCeiling(view.fuel(), lambda);
        if (ban.isPresent()) {
            advance = Math.min(advance, axis.below(ban.getAsDouble()));
        }
        if (advance < axis.allowed().low() - 1e-9) {
            return Optional.empty();
        }
        Proposal mixtureOnly = new Proposal(
                Optional.<Advance>empty(),
                Optional.empty(),
                view.mixture().isPresent() ? boxed(lambda).map(Lambda::of) : Optional.empty());
        return Optional.of(axis.with(mixtureOnly, advance));
    }

    /**
     * The advance that a configuration starts from before its own pulls say more: the plan's; where the day knew knock on another
     * fuel or with other parts, no higher than the margin below the lowest advance that knock forbids.
     */
    static double advance(DayView view, Axis axis) {
        OptionalDouble ban = view.bans().lowestAdvanceElsewhere(view.configuration());
        if (ban.isEmpty()) {
            return axis.start();
        }
        double margin = view.day().plan().limits().knockMarginDeg();
        double below = axis.down(ban.getAsDouble() - margin);
        return Math.max(axis.allowed().low(), Math.min(axis.start(), below));
    }

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }
}
