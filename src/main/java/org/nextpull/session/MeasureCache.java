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
 * last state of the day was made of. Not for use by several threads at once.
 */
public final class MeasureCache {
    private IdentityHashMap<Candidate, Known> before = new IdentityHashMap<>();
    private IdentityHashMap<Candidate, Known> now = new IdentityHashMap<>();

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
