package org.nextpull.session;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.AskedSetting;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.Candidate;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.PullMeasure;

/**
 * Measures the candidates of a day, and each no more than once while the day goes on and nothing else is asked or heard of it. Keeps what the
 * last state of the day was made of and what is known from it, so that a stop that stands is not looked for again. Not for use by several
 * threads at once.
 */
public final class MeasureCache {
    private IdentityHashMap<Candidate, Known> before = new IdentityHashMap<>();
    private IdentityHashMap<Candidate, Known> now = new IdentityHashMap<>();
    private Optional<Stood> stood = Optional.empty();

    /** How the day stood last, and what is known of it. */
    private record Stood(SessionInput input, List<MeasuredPull> pulls, DaySoFar soFar) {
        /** Whether another state goes on from it; what is fitted of candidates that still sweep may wait for a temperature of its moment. */
        boolean goesOn(SessionInput later, List<MeasuredPull> all) {
            return !later.plan().decides()
                    && later.plan().equals(input.plan())
                    && later.amendments().equals(input.amendments())
                    && later.experience().equals(input.experience())
                    && later.next().equals(input.next())
                    && all.size() >= pulls.size()
                    && all.subList(0, pulls.size()).equals(pulls);
        }
    }

    /** A candidate measured, and what for. */
    private record Known(
            SweepPlan plan, Optional<AskedSetting> asked, List<Alarm> alarms, int number, MeasuredPull.Curve curve) {
        boolean isFor(SweepPlan otherPlan, Optional<AskedSetting> otherAsked, List<Alarm> otherAlarms, int other) {
            return number == other && plan.equals(otherPlan) && asked.equals(otherAsked) && alarms.equals(otherAlarms);
        }
    }

    /** A state of the day begins: what the state before it did not ask for is forgotten. */
    void begin() {
        before = now;
        now = new IdentityHashMap<>();
    }

    /** What is known of a day that has come to these pulls: all that its last state told, where it goes on from that. */
    DaySoFar soFar(SessionInput input, List<MeasuredPull.Curve> measured) {
        List<MeasuredPull> pulls =
                measured.stream().map(MeasuredPull.Curve::pull).toList();
        DaySoFar soFar = stood.filter(last -> last.goesOn(input, pulls))
                .map(Stood::soFar)
                .orElseGet(DaySoFar::new);
        stood = Optional.of(new Stood(input, pulls, soFar));
        return soFar;
    }

    /** As {@link PullMeasure#measure}. */
    MeasuredPull.Curve measure(
            SweepPlan plan, Candidate candidate, Optional<AskedSetting> asked, List<Alarm> alarms, int number) {
        Known known = before.get(candidate);
        if (known == null || !known.isFor(plan, asked, alarms, number)) {
            known = new Known(
                    plan, asked, alarms, number, new PullMeasure(plan).measure(candidate, asked, alarms, number));
        }
        now.put(candidate, known);
        return known.curve();
    }
}
