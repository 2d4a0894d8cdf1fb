package org.nextpull.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.nextpull.advice.Advisor;
import org.nextpull.advice.Verdict;
import org.nextpull.response.MeasuredPull;

/** A day as it stood after each of its pulls. The logs are read once; what the operator changes by hand is worked out again without them. */
public final class DayByPull {
    private final SessionInput input;
    private final MeasuredDay day;
    private final DaySoFar soFar = new DaySoFar();
    private final SessionResult whole;

    private DayByPull(SessionInput input, MeasuredDay day) {
        this.input = input;
        this.day = day;
        this.whole = Session.conclude(input, day, soFar);
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
        return Session.conclude(input, day.first(pulls), soFar);
    }

    /** The day after its first pulls with what was said after each of them. */
    public Replay replay(int pulls) {
        List<Replay.Step> steps = new ArrayList<>();
        for (int count = 1; count <= pulls; count++) {
            MeasuredPull.Curve last = whole.measured().get(count - 1);
            boolean isLastOfDay = count == pulls
                    || dayOf(last.pull()) != dayOf(whole.measured().get(count).pull());
            Optional<Verdict> verdict = Session.said(
                    input, day.measured().subList(0, count), soFar, isLastOfDay ? Advisor::judge : Advisor::say);
            verdict.ifPresent(said -> steps.add(new Replay.Step(last.pull(), last.alarms(), said)));
        }
        return new Replay(pulls == pulls() ? whole : after(pulls), steps, days(steps));
    }

    private List<Replay.OneDay> days(List<Replay.Step> steps) {
        Map<Integer, List<Replay.Step>> byDay = steps.stream()
                .collect(Collectors.groupingBy(step -> dayOf(step.pull()), TreeMap::new, Collectors.toList()));
        List<Replay.OneDay> days = new ArrayList<>();
        if (byDay.size() > 1) {
            Map<Integer, List<MeasuredPull.Curve>> pulls =
                    day.measured().stream().collect(Collectors.groupingBy(one -> dayOf(one.pull())));
            byDay.forEach((number, own) -> Session.said(
                            input, pulls.getOrDefault(number, List.of()), new DaySoFar(), Advisor::judge)
                    .ifPresent(alone -> days.add(new Replay.OneDay(own, alone))));
        }
        return days;
    }

    private static int dayOf(MeasuredPull pull) {
        return pull.origin().day();
    }
}
