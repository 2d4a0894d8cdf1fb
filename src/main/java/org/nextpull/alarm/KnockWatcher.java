package org.nextpull.alarm;

import java.util.Optional;
import java.util.function.Consumer;
import org.nextpull.alarm.AlarmEvent.Kind;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.plan.Limit;

/**
 * Counts knock events from when the speed enters the band until it leaves it. Knock counts at any load: a load that cannot be told must
 * not hide it. Once sounded, a quiet time ends the count, so that a speed held with the spark stepped back is heard afresh.
 */
final class KnockWatcher implements Watcher {
    private static final double QUIET_S = 3;

    private final Episode episode;
    private double events;

    KnockWatcher(int eventsThatCount) {
        this.episode = new Episode(Limit.KNOCK, eventsThatCount, 0);
    }

    @Override
    public void take(Row row, RunningState state, Consumer<AlarmEvent> out) {
        Moment at = row.moment();
        if (!state.isInBand()) {
            events = 0;
            episode.within(at, out);
            return;
        }
        Optional<Channel> heard = loudest(row);
        if (heard.isPresent()) {
            events += sum(row);
            boolean already = episode.sounding().isPresent();
            if (events >= episode.allowed()) {
                episode.beyond(heard.get(), events, at, out);
            }
            if (already) {
                episode.sounding().ifPresent(alarm -> out.accept(new AlarmEvent(Kind.WORSE, alarm, at)));
            }
        } else if (isQuiet(at)) {
            events = 0;
            episode.end(at, out);
        }
    }

    private boolean isQuiet(Moment at) {
        // without a clock the count goes on to the end of the band
        return episode.sounding()
                .filter(alarm -> at.timeS().isPresent())
                .filter(alarm -> at.secondsSince(alarm.until()) >= QUIET_S)
                .isPresent();
    }

    private static Optional<Channel> loudest(Row row) {
        Optional<Channel> loudest = Optional.empty();
        double most = 0;
        for (BlockView.Sensor sensor : row.sensors(Role.KNOCK_EVENTS)) {
            double count = row.find(sensor).orElse(0);
            if (count > most) {
                most = count;
                loudest = Optional.of(sensor.channel());
            }
        }
        return loudest;
    }

    private static double sum(Row row) {
        return row.sensors(Role.KNOCK_EVENTS).stream()
                .mapToDouble(sensor -> Math.max(0, row.find(sensor).orElse(0)))
                .sum();
    }

    @Override
    public Optional<Alarm> sounding() {
        return episode.sounding();
    }

    @Override
    public void restart(Moment at, Consumer<AlarmEvent> out) {
        events = 0;
        episode.end(at, out);
    }
}
