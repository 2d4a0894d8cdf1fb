package org.nextpull.alarm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.nextpull.alarm.Alarm.Event.Kind;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.Band;
import org.nextpull.plan.Limit;
import org.nextpull.plan.Limits;
import org.nextpull.plan.SweepPlan;
import org.nextpull.unit.Pressure;

/**
 * Watches the plan's limits over rows as they come, in blocks of any size: one row at a time live, a whole log at once in a replay. The
 * same rows give the same events however they are cut. It looks at every row, whether a pull is found there or not, so a pull that is cut
 * short keeps its alarms. Not for use by several threads.
 *
 * <p>A limit is passed beyond its value, not at it; knock at its count of events. Of several sensors the worst counts: for the mixture
 * the leanest. Lean and fuel pressure are watched at full load, oil pressure from the band's lowest speed up, knock wherever the engine
 * is under load ({@link org.nextpull.pull.KnockLoad}), all others always.
 */
public final class AlarmWatch {
    private final Watchers.Watcher[] watchers;
    private final EngineRunning state;
    private OptionalDouble lastTimeS = OptionalDouble.empty();

    public AlarmWatch(Rules rules) {
        this(Watchers.of(rules.limits()), new EngineRunning(rules));
    }

    private AlarmWatch(List<Watchers.Watcher> watchers, EngineRunning state) {
        this.watchers = watchers.toArray(Watchers.Watcher[]::new);
        this.state = state;
    }

    /** A watch that goes on under other limits, knowing of the engine what this one knows. What sounds now sounds anew if it still must. */
    public AlarmWatch withLimits(Limits limits) {
        AlarmWatch watch = new AlarmWatch(Watchers.of(limits), state);
        watch.lastTimeS = lastTimeS;
        return watch;
    }

    /** Every stretch of these samples in which a limit was passed, by its first row; one that goes on to the end is among them. */
    public static List<Alarm> over(Rules rules, Samples samples) {
        AlarmWatch watch = new AlarmWatch(rules);
        List<Alarm> alarms = new ArrayList<>();
        watch.take(samples).stream()
                .filter(event -> event.kind() == Kind.CLEARED)
                .map(Alarm.Event::alarm)
                .forEach(alarms::add);
        alarms.addAll(watch.sounding());
        alarms.sort(
                Comparator.comparingLong((Alarm alarm) -> alarm.since().line()).thenComparing(Alarm::limit));
        return List.copyOf(alarms);
    }

    /**
     * A warning for each limit of the plan that no channel can watch, lambda among them where the mixture is swept.
     *
     * @param plan the plan
     * @param channels what is logged
     * @param place the log or the source
     */
    public static List<Finding> unwatched(SweepPlan plan, List<Channel> channels, Place place) {
        Set<Role> logged = channels.stream().map(Channel::role).collect(Collectors.toSet());
        Rules rules = Rules.of(plan);
        List<Finding> findings = new ArrayList<>();
        for (Limit limit : plan.watched()) {
            if (!isCovered(limit, logged, rules)) {
                findings.add(Finding.warning(
                        FindingCode.LIMIT_NOT_WATCHED,
                        place,
                        Detail.of("limit", limit.id()),
                        Detail.of("channel", limit.role().id())));
            }
        }
        if (logged.contains(Role.KNOCK_LEVEL) && rules.limits().knockLevel().isEmpty()) {
            findings.add(Finding.note(FindingCode.KNOCK_LEVEL_NOT_USED, place));
        }
        boolean baroKnown = logged.contains(Role.BAROMETER) || rules.baro().isPresent();
        if (rules.limits().boostMost().isPresent() && logged.contains(Role.MANIFOLD_PRESSURE) && !baroKnown) {
            findings.add(Finding.warning(FindingCode.BOOST_WITHOUT_BAROMETER, place));
        }
        return findings;
    }

    private static boolean isCovered(Limit limit, Set<Role> logged, Rules rules) {
        boolean fromRoller = limit == Limit.SPEED
                && logged.contains(Role.ROLLER_SPEED)
                && rules.engineRevPerRollerRev().isPresent();
        boolean byLevel = limit == Limit.KNOCK
                && logged.contains(Role.KNOCK_LEVEL)
                && rules.limits().knockLevel().isPresent();
        return fromRoller || byLevel || logged.contains(limit.role());
    }

    /** Looks at the next rows and says what changed, in their order. */
    public List<Alarm.Event> take(Samples samples) {
        List<Alarm.Event> events = new ArrayList<>();
        Row.BlockView view = new Row.BlockView(samples);
        for (int index = 0; index < samples.rows(); index++) {
            take(Row.of(view, index), events::add);
        }
        return events;
    }

    private void take(Row row, Consumer<Alarm.Event> events) {
        Alarm.RowPlace at = row.moment();
        boolean backwards =
                at.timeS().isPresent() && lastTimeS.isPresent() && at.timeS().getAsDouble() < lastTimeS.getAsDouble();
        if (backwards) {
            for (Watchers.Watcher watcher : watchers) {
                watcher.restart(at, events);
            }
        }
        lastTimeS = at.timeS().isPresent() ? at.timeS() : lastTimeS;
        state.take(row);
        for (Watchers.Watcher watcher : watchers) {
            watcher.take(row, state, events);
        }
    }

    /** How near each limit is that holds at the moment and has been read. */
    public List<Alarm.Headroom> headroom() {
        return Arrays.stream(watchers)
                .map(Watchers.Watcher::headroom)
                .flatMap(Optional::stream)
                .toList();
    }

    /** The alarms that sound now. */
    public List<Alarm> sounding() {
        return Arrays.stream(watchers)
                .map(Watchers.Watcher::sounding)
                .flatMap(Optional::stream)
                .toList();
    }

    /**
     * What the watch needs of a plan.
     *
     * @param limits the limits
     * @param band from whose lowest speed oil pressure is watched; empty for everywhere
     * @param fullLoad throttle from which the load is full, as a fraction, 0.9 for 90 %
     * @param engineRevPerRollerRev engine revolutions for one of the roller, positive; gives the engine's speed where only the roller's is
     *     logged
     * @param baro barometer where the log has none
     * @param lambdaDelayS time from the cylinder to the lambda reading in s, 0 to 5, where the plan gives it
     */
    public record Rules(
            Limits limits,
            Optional<Band> band,
            double fullLoad,
            OptionalDouble engineRevPerRollerRev,
            Optional<Pressure> baro,
            OptionalDouble lambdaDelayS) {

        public static Rules of(SweepPlan plan) {
            return new Rules(
                    plan.limits(),
                    plan.band(),
                    plan.pull().fullLoad(),
                    plan.dyno().gearing().engineRevPerRollerRev(),
                    plan.air().baro(),
                    plan.log().lambdaDelayS());
        }

        public Rules withLimits(Limits newLimits) {
            return new Rules(newLimits, band, fullLoad, engineRevPerRollerRev, baro, lambdaDelayS);
        }
    }
}
