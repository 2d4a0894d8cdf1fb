package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * How far a chosen setting has been proven by the last pulls. New pulls move the fitted best by a step or so; a setting that was being
 * proven stays the chosen one as long as it lies within a step of the best.
 *
 * @param setting the setting that is being proven
 * @param done how many of the last pulls ran it
 * @param gainPercent gain of those pulls over the first pulls of the day, where both were run
 */
record Confirmation(Proposal setting, int done, OptionalDouble gainPercent) {

    static Confirmation of(DayView view, Proposal best) {
        List<MeasuredPull> used = view.used();
        List<MeasuredPull> last = new ArrayList<>();
        for (int index = used.size() - 1; index >= 0 && isNear(view, used.get(index), best); index--) {
            last.add(0, used.get(index));
        }
        Proposal setting = last.isEmpty() ? best : asRun(view, last.get(0), best);
        return new Confirmation(setting, last.size(), gain(view, used, last));
    }

    private static boolean isNear(DayView view, MeasuredPull pull, Proposal best) {
        boolean advance = view.timing()
                .map(axis -> isWithin(axis.of(pull), valueOf(best), axis.step().resolution()))
                .orElse(true);
        boolean lambda = view.mixture().isEmpty()
                || best.lambda().isEmpty()
                || isWithin(DayView.mixtureOf(pull), best.lambda().map(Lambda::value), DayView.ONE_MIXTURE);
        return advance && lambda && view.isClean(pull);
    }

    private static boolean isWithin(OptionalDouble run, Optional<Double> wanted, double most) {
        return run.isPresent() && wanted.isPresent() && Math.abs(run.getAsDouble() - wanted.get()) <= most + 1e-9;
    }

    private static Optional<Double> valueOf(Proposal setting) {
        return setting.advance().or(setting::offset).map(Advance::deg);
    }

    private static Proposal asRun(DayView view, MeasuredPull pull, Proposal best) {
        return view.timing()
                .map(axis -> axis.with(best, axis.again(axis.of(pull).orElseThrow())))
                .orElse(best);
    }

    private static OptionalDouble gain(DayView view, List<MeasuredPull> used, List<MeasuredPull> last) {
        List<Reading> now = Reading.of(last, view.day().plan().goal().response());
        List<Reading> first = Reading.of(
                used.subList(0, Math.min(1, used.size())),
                view.day().plan().goal().response());
        if (now.isEmpty() || first.isEmpty()) {
            return OptionalDouble.empty();
        }
        double mean = now.stream().mapToDouble(Reading::value).average().orElseThrow();
        return OptionalDouble.of(100 * (mean / first.get(0).value() - 1));
    }
}
