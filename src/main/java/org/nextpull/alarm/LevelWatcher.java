package org.nextpull.alarm;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.plan.Limit;

/** Watches the worst of all sensors of a role against a fixed level. */
final class LevelWatcher extends Watchers.Watcher {
    private final Role role;
    private final Limit limit;
    private final When when;

    /**
     * When and how a level is read.
     *
     * @param applies whether the limit holds at this moment
     * @param zero what is taken off the reading
     */
    record When(Predicate<EngineRunning> applies, ToDoubleFunction<EngineRunning> zero) {
        static final When ALWAYS = new When(state -> true, state -> 0);
        static final When FULL_LOAD = new When(EngineRunning::isFullLoad, state -> 0);
        static final When FULL_LOAD_AT_SENSOR = new When(EngineRunning::isFullLoadAtSensor, state -> 0);
        static final When ABOVE_BAND_START = new When(EngineRunning::isAboveBandStart, state -> 0);
        static final When ABOVE_BAROMETER = new When(state -> true, EngineRunning::baroPascals);
    }

    LevelWatcher(Role role, Limit limit, When when, LimitEpisode episode) {
        super(episode);
        this.role = role;
        this.limit = limit;
        this.when = when;
    }

    @Override
    void take(Row row, EngineRunning state, Consumer<Alarm.Event> events) {
        if (!when.applies().test(state)) {
            episode.without(row.moment(), events);
            return;
        }
        Optional<Reading> worst = worst(row, when.zero().applyAsDouble(state));
        // a row without a reading says nothing: sensors are logged at different rates
        worst.ifPresent(reading -> {
            episode.saw(reading.value());
            if (isBeyond(reading.value())) {
                episode.beyond(reading.channel(), reading.value(), row.moment(), events);
            } else {
                episode.within(row.moment(), events);
            }
        });
    }

    private Optional<Reading> worst(Row row, double zero) {
        Optional<Reading> worst = Optional.empty();
        for (Channel sensor : row.sensors(role)) {
            OptionalDouble value = row.find(sensor);
            if (value.isPresent()) {
                double level = value.getAsDouble() - zero;
                if (worst.isEmpty() || isWorse(level, worst.get().value())) {
                    worst = Optional.of(new Reading(sensor, level));
                }
            }
        }
        return worst;
    }

    private boolean isWorse(double value, double than) {
        return limit.isLeast() ? value < than : value > than;
    }

    private boolean isBeyond(double value) {
        return isWorse(value, episode.allowed());
    }

    private record Reading(Channel channel, double value) {}
}
