package org.nextpull.alarm;

import java.util.Optional;
import java.util.function.Consumer;
import org.nextpull.alarm.AlarmEvent.Kind;
import org.nextpull.channel.Channel;
import org.nextpull.plan.Limit;

/** One limit and the stretch in which it is passed. Changes as rows come; not for use by several threads. */
final class Episode {
    /** An alarm clears when all has been well for so long: a value that trembles about its limit is one alarm, not many. */
    private static final double CLEAR_AFTER_S = 1;

    /** Times in logs are decimals; their differences miss the last digit. */
    private static final double ROUNDING_S = 1e-9;

    private final Limit limit;
    private final double allowed;
    private final double patienceS;
    private Optional<Alarm> beyond = Optional.empty();
    private boolean sounding;

    /** An episode that sounds when the limit has been passed for {@code patienceS}. */
    Episode(Limit limit, double allowed, double patienceS) {
        this.limit = limit;
        this.allowed = allowed;
        this.patienceS = patienceS;
    }

    double allowed() {
        return allowed;
    }

    Optional<Alarm> sounding() {
        return sounding ? beyond : Optional.empty();
    }

    void beyond(Channel channel, double value, Moment at, Consumer<AlarmEvent> events) {
        beyond = Optional.of(beyond.map(alarm -> longer(alarm, channel, value, at))
                .orElseGet(() -> new Alarm(limit, channel, at, at, 1, value, allowed)));
        Alarm alarm = beyond.get();
        boolean longEnough = patienceS == 0 || at.secondsSince(alarm.since()) >= patienceS - ROUNDING_S;
        if (!sounding && longEnough) {
            sounding = true;
            events.accept(new AlarmEvent(Kind.SOUNDED, alarm, at));
        }
    }

    private static Alarm longer(Alarm alarm, Channel channel, double value, Moment at) {
        boolean worse = alarm.isWorse(value);
        return new Alarm(
                alarm.limit(),
                worse ? channel : alarm.channel(),
                alarm.since(),
                at,
                alarm.rows() + 1,
                worse ? value : alarm.worst(),
                alarm.allowed());
    }

    void within(Moment at, Consumer<AlarmEvent> events) {
        if (!sounding) {
            beyond = Optional.empty();
        } else if (beyond.isPresent() && at.secondsSince(beyond.get().until()) >= CLEAR_AFTER_S) {
            end(at, events);
        }
    }

    /** Clears at once. */
    void end(Moment at, Consumer<AlarmEvent> events) {
        sounding().ifPresent(alarm -> events.accept(new AlarmEvent(Kind.CLEARED, alarm, at)));
        sounding = false;
        beyond = Optional.empty();
    }
}
