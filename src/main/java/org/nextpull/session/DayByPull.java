package org.nextpull.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.nextpull.advice.SaidStops;
import org.nextpull.advice.Verdict;
import org.nextpull.response.MeasuredPull;

/** A day as it stood after each of its pulls. The logs are read once; what the operator changes by hand is worked out again without them. */
public final class DayByPull {
    private final SessionInput input;
    private final MeasuredDay day;
    private final Judged judged = Judged.nothing();
    private final SessionResult whole;

    private DayByPull(SessionInput input, MeasuredDay day) {
        this.input = input;
        this.day = day;
        this.whole = Session.conclude(input, day);
    }

    /** Reads the logs of a day. */
    public static DayByPull of(SessionInput input) {
        return of(input, Session.read(input));
    }

    /** A day whose logs were read before. */
    public static DayByPull of(SessionInput input, List<SourcePulls> sources) {
        return new DayByPull(input, MeasuredDay.of(input, sources));
    }

    /**
     * The same day with something else changed by hand.
     *
     * @param changed what the day is made from, with the same logs
     */
    public DayByPull with(SessionInput changed) {
        return new DayByPull(changed, MeasuredDay.of(changed, day.sources()));
    }

    /** What the day is made from. */
    public SessionInput input() {
        return input;
    }

    /** The whole day. */
    public SessionResult whole() {
        return whole;
    }

    /** Number of pulls of the whole day. */
    public int pulls() {
        return whole.measured().size();
    }

    /**
     * The day after its first pulls.
     *
     * @param pulls how many, from 0 to {@link #pulls}
     */
    public SessionResult after(int pulls) {
        return Session.conclude(input, day.first(pulls), judged);
    }

    /** The day after its first pulls with what was said after each of them. */
    public Replay replay(int pulls) {
        List<Replay.Step> steps = new ArrayList<>();
        for (int count = 1; count <= pulls; count++) {
            MeasuredPull.Curve last = whole.measured().get(count - 1);
            boolean isLastOfDay = count == pulls
                    || dayOf(last.pull()) != dayOf(whole.measured().get(count).pull());
            Optional<Verdict> verdict =
                    isLastOfDay ? after(count).verdict() : Session.said(input, day.first(count), judged);
            verdict.ifPresent(said -> steps.add(new Replay.Step(last.pull(), last.alarms(), said)));
        }
        return new Replay(pulls == pulls() ? whole : after(pulls), steps, days(steps));
    }

    private List<Replay.OneDay> days(List<Replay.Step> steps) {
        Map<Integer, List<Replay.Step>> byDay = steps.stream()
                .collect(Collectors.groupingBy(step -> dayOf(step.pull()), TreeMap::new, Collectors.toList()));
        List<Replay.OneDay> days = new ArrayList<>();
        if (byDay.size() > 1) {
            byDay.forEach((number, own) -> Session.conclude(input, day.only(pull -> dayOf(pull) == number))
                    .verdict()
                    .ifPresent(alone -> days.add(new Replay.OneDay(own, alone))));
        }
        return days;
    }

    private static int dayOf(MeasuredPull pull) {
        return pull.origin().day();
    }

    /**
     * What is known from other states of a day that is gone through pull by pull, so that each state costs what its last pull adds. Grows.
     *
     * @param sweeps sweeps of candidates that have ended
     * @param stops the stops that were said
     * @param heard pulls by their place in the day that no later pull says more of
     */
    record Judged(
            Map<CandidatePlanner.Sweep, Verdict> sweeps, SaidStops stops, Map<Integer, MeasuredPull.Curve> heard) {
        static Judged nothing() {
            return new Judged(new HashMap<>(), new SaidStops(), new HashMap<>());
        }
    }
}
