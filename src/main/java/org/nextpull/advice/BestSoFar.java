package org.nextpull.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;

/** The setting to leave while the sweeps go on: the clean pull that read highest, never one beyond what was run. */
final class BestSoFar {
    private BestSoFar() {}

    static Optional<Chosen> of(DayView view, Outlook outlook) {
        List<MeasuredPull> clean = view.used().stream()
                .filter(view::isClean)
                .filter(pull -> !isForbidden(view, pull))
                .toList();
        Optional<Integer> best = Reading.of(clean, view.day().plan().goal().response()).stream()
                .max(Comparator.comparingDouble(Reading::value))
                .map(Reading::pull);
        return best.flatMap(number ->
                        clean.stream().filter(pull -> pull.number() == number).findFirst())
                .map(pull -> new Chosen(
                        new Proposal(
                                pull.setting().offset().isPresent()
                                                && view.timing()
                                                        .filter(axis -> axis.kind() == Axis.Kind.OFFSET)
                                                        .isPresent()
                                        ? Optional.empty()
                                        : pull.setting().advance(),
                                pull.setting().offset(),
                                pull.setting().lambda()),
                        ChosenBy.HIGHEST_TRIED));
    }

    private static boolean isForbidden(DayView view, MeasuredPull pull) {
        var ceiling = view.bans().advanceCeiling(view.fuel(), DayView.mixtureOf(pull));
        var advance = view.advanceOf(pull);
        return ceiling.isPresent() && advance.isPresent() && advance.getAsDouble() >= ceiling.getAsDouble();
    }
}
