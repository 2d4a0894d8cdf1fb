package org.nextpull.alarm;

import java.util.Optional;
import java.util.function.Consumer;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;

/** Watches the engine's speed, also where it follows from the roller's. */
final class SpeedWatcher implements Watcher {
    private static final Channel SPEED = Channel.of(Role.ENGINE_SPEED);
    private static final Channel ROLLER = Channel.of(Role.ROLLER_SPEED);

    private final Episode episode;

    SpeedWatcher(Episode episode) {
        this.episode = episode;
    }

    @Override
    public void take(Row row, EngineRunning state, Consumer<AlarmEvent> events) {
        boolean engine = row.find(Role.ENGINE_SPEED).isPresent();
        if (state.rpm().isEmpty() || !(engine || row.find(Role.ROLLER_SPEED).isPresent())) {
            return;
        }
        double rpm = state.rpm().getAsDouble();
        episode.saw(rpm);
        if (rpm > episode.allowed()) {
            episode.beyond(engine ? SPEED : ROLLER, rpm, row.moment(), events);
        } else {
            episode.within(row.moment(), events);
        }
    }

    @Override
    public Optional<Headroom> headroom() {
        return episode.headroom();
    }

    @Override
    public Optional<Alarm> sounding() {
        return episode.sounding();
    }

    @Override
    public void restart(RowPlace at, Consumer<AlarmEvent> events) {
        episode.end(at, events);
    }
}
