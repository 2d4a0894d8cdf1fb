package org.nextpull.alarm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.nextpull.alarm.LevelWatcher.When;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.plan.Limit;
import org.nextpull.plan.Limits;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

/** One watcher for each limit of a plan. Knock is always watched; the others when the plan sets them. */
final class Watchers {
    private final List<Watcher> all = new ArrayList<>();

    private Watchers() {}

    static List<Watcher> of(Limits limits) {
        Watchers watchers = new Watchers();
        watchers.all.add(new KnockWatcher(limits.knockEventsThatCount(), limits.knockLevel()));
        limits.lean()
                .ifPresent(lean -> watchers.all.add(new LevelWatcher(
                        Role.LAMBDA,
                        Limit.LEAN,
                        When.FULL_LOAD_AT_SENSOR,
                        new LimitEpisode(Limit.LEAN, lean.leanest().value(), lean.forS()))));
        watchers.temperature(Limit.EXHAUST, limits.most().exhaust());
        watchers.temperature(Limit.COOLANT, limits.most().coolant());
        watchers.temperature(Limit.OIL, limits.most().oil());
        watchers.temperature(Limit.INLET_AIR, limits.most().inlet());
        watchers.level(Limit.OIL_PRESSURE, pascals(limits.oilPressureLeast()), When.ABOVE_BAND_START);
        watchers.level(Limit.FUEL_PRESSURE, pascals(limits.fuelPressureLeast()), When.FULL_LOAD);
        watchers.level(Limit.BOOST, pascals(limits.boostMost()), When.ABOVE_BAROMETER);
        watchers.level(Limit.INJECTOR_DUTY, limits.injectorDutyMost(), When.ALWAYS);
        limits.mostRpm().ifPresent(rpm -> watchers.all.add(new SpeedWatcher(new LimitEpisode(Limit.SPEED, rpm, 0))));
        return List.copyOf(watchers.all);
    }

    private void temperature(Limit limit, Optional<Temperature> most) {
        most.ifPresent(temperature -> level(limit, OptionalDouble.of(temperature.kelvins()), When.ALWAYS));
    }

    private void level(Limit limit, OptionalDouble allowed, When when) {
        allowed.ifPresent(
                value -> all.add(new LevelWatcher(limit.role(), limit, when, new LimitEpisode(limit, value, 0))));
    }

    private static OptionalDouble pascals(Optional<Pressure> pressure) {
        return pressure.stream().mapToDouble(Pressure::pascals).findFirst();
    }

    /** Watches the engine's speed, also where it follows from the roller's. */
    private static final class SpeedWatcher extends Watcher {
        private static final Channel SPEED = Channel.of(Role.ENGINE_SPEED);
        private static final Channel ROLLER = Channel.of(Role.ROLLER_SPEED);

        SpeedWatcher(LimitEpisode episode) {
            super(episode);
        }

        @Override
        void take(Row row, EngineRunning state, Consumer<Alarm.Event> events) {
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
    }

    /** Watches one limit. */
    abstract static class Watcher {
        final LimitEpisode episode;

        Watcher(LimitEpisode episode) {
            this.episode = episode;
        }

        /** Looks at a row. */
        abstract void take(Row row, EngineRunning state, Consumer<Alarm.Event> events);

        /** The alarm that is sounding now. */
        Optional<Alarm> sounding() {
            return episode.sounding();
        }

        /** The latest reading against the limit; empty where it is not one level or does not hold at the moment. */
        Optional<Alarm.Headroom> headroom() {
            return episode.headroom();
        }

        /** The time ran backwards: another recording begins. */
        void restart(Alarm.RowPlace at, Consumer<Alarm.Event> events) {
            episode.end(at, events);
        }
    }
}
