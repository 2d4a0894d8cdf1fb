package org.nextpull.live;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.advice.HoldNow;
import org.nextpull.advice.PresentConditions;
import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.channel.Samples;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.plan.SweepPlan;
import org.nextpull.session.HoldGuide;

/** What the rows of a session show as they come, each source for itself: values, the course of a pull, held speeds, and alarms. */
final class LiveRows {
    private final LatestValues latest = new LatestValues();
    private final PullTrace trace = new PullTrace();
    private final RowAlarms alarms;
    private final Optional<HoldGuide> guide;

    /** Whether rows come as they are measured; what a file held before it was looked at is no news. */
    private boolean written = true;

    LiveRows(int sources, SweepPlan plan) {
        this.alarms = new RowAlarms(sources, AlarmWatch.Rules.of(plan));
        this.guide = HoldGuide.of(plan);
    }

    /** Something arrived whose rows come next. */
    void see(Arrival arrival) {
        if (arrival instanceof Arrival.FromFile file) {
            written = file.atByte() > 0;
        }
        if (arrival instanceof Arrival.Lost) {
            guide.ifPresent(HoldGuide::cut);
        }
        if (arrival instanceof Arrival.Lost || !written) {
            alarms.restart();
        }
    }

    /** Takes rows of a source; gives the alarms that they begin or end. */
    List<Alarm.Event> take(String source, Samples samples, ArrivalTime now) {
        latest.take(samples, now);
        trace.take(samples, now.seconds());
        guide.ifPresent(hold -> hold.take(samples, now.seconds()));
        List<Alarm.Event> events = written ? alarms.take(source, samples) : List.of();
        if (!alarms.sounding().isEmpty()) {
            guide.ifPresent(HoldGuide::limit);
        }
        return events;
    }

    /** Limits hold from now on. */
    void limits(AlarmWatch.Rules rules) {
        alarms.limits(rules);
        guide.ifPresent(hold -> hold.limits(rules.limits()));
    }

    List<LiveState.LatestValue> values(ArrivalTime now) {
        return latest.all(now);
    }

    PresentConditions conditions(ArrivalTime now) {
        return latest.conditions(now);
    }

    List<Alarm> sounding() {
        return alarms.sounding();
    }

    List<Alarm.Headroom> headroom() {
        return alarms.headroom();
    }

    /** The pull that goes on since that moment of the session, in s. */
    LiveState.PullSoFar pull(OptionalDouble sinceS) {
        return sinceS.isPresent() ? trace.since(sinceS.getAsDouble()) : LiveState.PullSoFar.none();
    }

    Optional<HoldNow> hold() {
        return guide.map(HoldGuide::now);
    }
}
