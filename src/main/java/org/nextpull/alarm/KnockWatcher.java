package org.nextpull.alarm;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.nextpull.alarm.Alarm.Event.Kind;
import org.nextpull.plan.Limit;
import org.nextpull.pull.KnockReading;

/**
 * Counts knock events while the engine is under load, at whatever speed, from when the load comes until it has been away for a second. It
 * sounds at the plan's {@code knock_events}, which is the first event where the plan names no number. Once sounded, a quiet time ends the
 * count, so that a speed held with the spark stepped back is heard afresh.
 */
final class KnockWatcher extends Watchers.Watcher {
    private static final double QUIET_S = 3;
    private static final double APART_S = 1;

    private final OptionalDouble mostLevel;
    private Optional<Alarm.RowPlace> loaded = Optional.empty();
    private double events;

    KnockWatcher(int eventsThatCount, OptionalDouble mostLevel) {
        super(new LimitEpisode(Limit.KNOCK, eventsThatCount, 0));
        this.mostLevel = mostLevel;
    }

    @Override
    void take(Row row, EngineRunning state, Consumer<Alarm.Event> out) {
        Alarm.RowPlace at = row.moment();
        if (!state.isLoadedForKnock()) {
            if (loaded.map(at::secondsSince).orElse(APART_S) >= APART_S) {
                events = 0;
            }
            episode.within(at, out);
            return;
        }
        loaded = Optional.of(at);
        KnockReading reading = row.view().knock();
        double heard = reading.knocks(row.index(), mostLevel);
        if (heard > 0) {
            events += heard;
            boolean already = episode.sounding().isPresent();
            if (events >= episode.allowed()) {
                episode.beyond(reading.loudest(row.index()), events, at, out);
            }
            if (already) {
                episode.sounding().ifPresent(alarm -> out.accept(new Alarm.Event(Kind.WORSE, alarm, at)));
            }
        } else if (isQuiet(at)) {
            events = 0;
            episode.end(at, out);
        }
    }

    private boolean isQuiet(Alarm.RowPlace at) {
        // without a clock the count goes on while the load is on
        Optional<Alarm> alarm = episode.sounding();
        return alarm.isPresent()
                && at.timeS().isPresent()
                && at.secondsSince(alarm.get().until()) >= QUIET_S;
    }

    @Override
    void restart(Alarm.RowPlace at, Consumer<Alarm.Event> out) {
        events = 0;
        loaded = Optional.empty();
        super.restart(at, out);
    }
}
