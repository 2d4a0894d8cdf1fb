package org.nextpull.advice;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Predicate;
import org.nextpull.response.MeasuredPull;

/**
 * Keeps a stop that was said once: further pulls at settings that were run before it do not open the day again. Read off the pulls
 * alone, so that a day says the same live, replayed and as a whole.
 */
final class KeptStop {
    private final Day day;
    private final Function<Judgement, Verdict> judge;
    private final Predicate<Judgement> goesOn;
    private final SaidStops said;
    private final Map<Integer, Verdict> judged = new HashMap<>();
    private Optional<DayView> lastView = Optional.empty();
    private final Map<Integer, Boolean> newSettings = new HashMap<>();

    /**
     * Looks for a stop.
     *
     * @param said stops of the day after fewer pulls; grows
     * @param judge the verdict of a day by its pulls, whatever was said before
     * @param goesOn whether that verdict is surely no stop
     */
    KeptStop(Day day, SaidStops said, Function<Judgement, Verdict> judge, Predicate<Judgement> goesOn) {
        this.goesOn = goesOn;
        this.said = said;
        this.day = day;
        this.judge = judge;
    }

    /** The verdict of the day, with the stop that stands or what opened it again. */
    Verdict verdict() {
        int pulls = day.pulls().size();
        Verdict now = after(pulls);
        Optional<Stop> stop = standing(pulls);
        if (stop.filter(said -> said.after() < pulls).isPresent()) {
            return kept(now, stop.get());
        }
        return pulls == 0
                ? now
                : standing(pulls - 1)
                        .flatMap(earlier -> reopening(pulls, earlier).map(why -> note(earlier, Optional.of(why))))
                        .map(now::withEarlier)
                        .orElse(now);
    }

    /** The same where nothing but the advice is asked for: a stop that stands is not worked out again. */
    Verdict brief() {
        int pulls = day.pulls().size();
        return standing(pulls)
                .filter(stop -> stop.after() < pulls)
                .map(stop -> kept(Verdict.of(stop.advice()), stop))
                .orElseGet(this::verdict);
    }

    /** A stop, and after how many pulls it was said. */
    record Stop(int after, Advice advice) {}

    private Verdict kept(Verdict now, Stop stop) {
        return now.withAdvice(stop.advice()).withEarlier(note(stop, Optional.empty()));
    }

    private EarlierStop note(Stop stop, Optional<EarlierStop.Reopening> why) {
        return new EarlierStop(
                day.pulls().get(stop.after() - 1).number(), day.pulls().size() - stop.after(), why);
    }

    private Verdict after(int pulls) {
        return judged.computeIfAbsent(pulls, count -> judge.apply(new Judgement(view(count))));
    }

    /** The view of the day after so many pulls; of a long day only that asked for last is kept. */
    private DayView view(int pulls) {
        DayView view = lastView.filter(known -> known.day().pulls().size() == pulls)
                .orElseGet(() -> DayView.of(day.first(pulls)));
        lastView = Optional.of(view);
        return view;
    }

    /** The stop that stands after so many pulls: the one before the last pull where that does not open the day again. */
    private Optional<Stop> standing(int pulls) {
        int known = pulls;
        while (known > 0 && !said.standing.containsKey(known)) {
            known--;
        }
        int first = pulls;
        while (first > known && !isNews(first)) {
            first--;
        }
        Optional<Stop> stop = first == known ? said.standing.getOrDefault(known, Optional.empty()) : Optional.empty();
        for (int count = first == known ? known + 1 : first; count <= pulls; count++) {
            int now = count;
            Optional<Stop> earlier = stop.filter(kept -> reopening(now, kept).isEmpty());
            stop = earlier.or(() -> stopAfter(now));
            said.standing.put(now, stop);
        }
        return stop;
    }

    /** The stop by so many pulls alone; what those before the last show beside it is asked for by nobody. */
    private Optional<Stop> stopAfter(int pulls) {
        Judgement judgement = new Judgement(view(pulls));
        return pulls < day.pulls().size() && goesOn.test(judgement)
                ? Optional.empty()
                : Optional.of(judged.computeIfAbsent(pulls, count -> judge.apply(judgement))
                                .advice())
                        .filter(advice -> advice.action() == Action.STOP)
                        .map(advice -> new Stop(pulls, advice));
    }

    /** Whether the last of so many pulls opens the day whatever was said before it. */
    private boolean isNews(int pulls) {
        return isOtherConfiguration(pulls) || isOtherDay(pulls) || isNewSetting(pulls);
    }

    private Optional<EarlierStop.Reopening> reopening(int pulls, Stop stop) {
        MeasuredPull last = day.pulls().get(pulls - 1);
        if (isOtherConfiguration(pulls) || isOtherDay(pulls)) {
            return Optional.empty();
        }
        return cause(pulls, last, stop).map(cause -> new EarlierStop.Reopening(cause, OptionalInt.of(last.number())));
    }

    private boolean isOtherDay(int pulls) {
        return pulls > 1
                && SurfacePulls.dayOf(day.pulls().get(pulls - 1))
                        != SurfacePulls.dayOf(day.pulls().get(pulls - 2));
    }

    private Optional<EarlierStop.Cause> cause(int pulls, MeasuredPull last, Stop stop) {
        if (last.knock().isHeard()
                && stop.advice()
                        .leave()
                        .filter(left -> view(pulls).isForbidden(left.setting()))
                        .isPresent()) {
            return Optional.of(EarlierStop.Cause.KNOCK);
        }
        if (!last.limitsMet().isEmpty() && !day.lifted().contains(last.number())) {
            return Optional.of(EarlierStop.Cause.LIMIT);
        }
        return isNewSetting(pulls) ? Optional.of(EarlierStop.Cause.NEW_SETTING) : Optional.empty();
    }

    /** Other parts, or another fuel, than those of the stop: a sweep of its own. */
    private boolean isOtherConfiguration(int pulls) {
        if (pulls < 2) {
            return true;
        }
        MeasuredPull before = day.pulls().get(pulls - 2);
        return !before.setting().isSameConfiguration(DayView.configurationAfter(day, pulls));
    }

    private boolean isNewSetting(int pulls) {
        return newSettings.computeIfAbsent(pulls, this::hasNewSetting);
    }

    /** A setting is looked for among the newest pulls first: mostly it was run a few pulls ago. */
    private boolean hasNewSetting(int pulls) {
        MeasuredPull last = day.pulls().get(pulls - 1);
        if (!last.isUsed()) {
            return false;
        }
        return isNewSetting(last, DayView.of(day.first(pulls, SurfacePulls.MOST_PULLS)))
                && (pulls <= SurfacePulls.MOST_PULLS || isNewSetting(last, view(pulls)));
    }

    private static boolean isNewSetting(MeasuredPull last, DayView view) {
        DayReadings maps = new DayReadings(view);
        return view.here().stream()
                .filter(pull -> pull.number() != last.number())
                .noneMatch(pull -> isSameMixture(view, pull, last) && maps.isSameSpark(pull, last));
    }

    private static boolean isSameMixture(DayView view, MeasuredPull one, MeasuredPull other) {
        return view.mixture().isEmpty()
                || isNear(DayView.mixtureOf(one), DayView.mixtureOf(other), DayView.ONE_MIXTURE);
    }

    private static boolean isNear(OptionalDouble one, OptionalDouble other, double most) {
        return one.isEmpty() || other.isEmpty() || Math.abs(one.getAsDouble() - other.getAsDouble()) <= most + 1e-9;
    }
}
