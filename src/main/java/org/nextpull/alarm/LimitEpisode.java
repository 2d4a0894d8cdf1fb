package org.nextpull.alarm;

import java.util.Optional;
import java.util.function.Consumer;
import org.nextpull.alarm.Alarm.Event.Kind;
import org.nextpull.channel.Channel;
import org.nextpull.plan.Limit;

/** One limit and the stretch in which it is passed. Changes as rows come; not for use by several threads. */
final class LimitEpisode {
    /** An alarm clears when all has been well for so long: a value that trembles about its limit is one alarm, not many. */
    private static final double CLEAR_AFTER_S = 1;

    /** Times in logs are decimals; their differences miss the last digit. */
    private static final double ROUNDING_S = 1e-9;

    private final Limit limit;
    private final double allowed;
    private final double patienceS;
    private Optional<Alarm> beyond = Optional.empty();
    private Optional<Alarm.RowPlace> lastLooked = Optional.empty();
    private double beyondS;
    private boolean wasBeyond;
    private boolean sounding;
    private Optional<Alarm.Headroom> headroom = Optional.empty();

    /** An episode that sounds when the limit has been passed for {@code patienceS} longer than it was kept. */
    LimitEpisode(Limit limit, double allowed, double patienceS) {
        this.limit = limit;
        this.allowed = allowed;
        this.patienceS = patienceS;
    }

    double allowed() {
        return allowed;
    }

    /** Notes a reading, beyond the limit or not. */
    void saw(double value) {
        headroom = Optional.of(new Alarm.Headroom(limit, value, allowed));
    }

    /** The latest reading against the limit; empty while it does not hold. */
    Optional<Alarm.Headroom> headroom() {
        return headroom;
    }

    Optional<Alarm> sounding() {
        return sounding ? beyond : Optional.empty();
    }

    void beyond(Channel channel, double value, Alarm.RowPlace at, Consumer<Alarm.Event> events) {
        count(at);
        wasBeyond = true;
        beyond = Optional.of(beyond.map(alarm -> longer(alarm, channel, value, at))
                .orElseGet(() -> new Alarm(limit, channel, at, at, 1, value, allowed)));
        boolean longEnough = at.timeS().isEmpty() || beyondS >= patienceS - ROUNDING_S;
        if (!sounding && longEnough) {
            sounding = true;
            events.accept(new Alarm.Event(Kind.SOUNDED, beyond.get(), at));
        }
    }

    /**
     * Counts the time beyond the limit less the time within it, down to none: a good reading among many bad ones takes back its own time
     * and no more. Without a clock nothing is counted, and an alarm does not wait.
     */
    private void count(Alarm.RowPlace at) {
        if (at.timeS().isEmpty()) {
            beyondS = 0;
            return;
        }
        double passedS = lastLooked.map(at::secondsSince).orElse(0.0);
        beyondS = wasBeyond ? beyondS + passedS : Math.max(0, beyondS - passedS);
        lastLooked = Optional.of(at);
    }

    private static Alarm longer(Alarm alarm, Channel channel, double value, Alarm.RowPlace at) {
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

    void within(Alarm.RowPlace at, Consumer<Alarm.Event> events) {
        count(at);
        wasBeyond = false;
        if (!sounding && beyondS <= 0) {
            beyond = Optional.empty();
        } else if (sounding
                && beyond.isPresent()
                && at.secondsSince(beyond.get().until()) >= CLEAR_AFTER_S) {
            end(at, events);
        }
    }

    /** The limit does not hold at this moment: what was counted towards it is forgotten. */
    void without(Alarm.RowPlace at, Consumer<Alarm.Event> events) {
        within(at, events);
        headroom = Optional.empty();
        if (!sounding) {
            forget();
        }
    }

    private void forget() {
        beyond = Optional.empty();
        beyondS = 0;
        wasBeyond = false;
        lastLooked = Optional.empty();
    }

    /** Clears at once. */
    void end(Alarm.RowPlace at, Consumer<Alarm.Event> events) {
        sounding().ifPresent(alarm -> events.accept(new Alarm.Event(Kind.CLEARED, alarm, at)));
        sounding = false;
        forget();
    }
}
