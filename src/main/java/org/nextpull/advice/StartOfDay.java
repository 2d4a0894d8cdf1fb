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
        double advance = axis.start();
        OptionalDouble ban = view.bans().advanceCeiling(view.fuel(), lambda);
        OptionalDouble dayBan = view.bans().lowestAdvanceOfDay();
        if (ban.isPresent()) {
            advance = Math.min(advance, axis.below(ban.getAsDouble()));
        }
        if (dayBan.isPresent()) {
            advance = Math.min(advance, axis.below(dayBan.getAsDouble()));
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

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }
}
