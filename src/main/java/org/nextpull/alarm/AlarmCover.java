package org.nextpull.alarm;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.Limit;
import org.nextpull.plan.Limits;

/** Which limits of a plan cannot be watched, since nothing is logged for them. */
public final class AlarmCover {
    private AlarmCover() {}

    /**
     * A warning for each limit that the plan sets and the channels do not cover.
     *
     * @param rules the plan's rules
     * @param channels what is logged
     * @param place the log or the source
     */
    public static List<Finding> check(AlarmRules rules, List<Channel> channels, Place place) {
        Set<Role> logged = channels.stream().map(Channel::role).collect(Collectors.toSet());
        List<Finding> findings = new ArrayList<>();
        for (Limit limit : set(rules.limits())) {
            if (!isCovered(limit, logged, rules)) {
                findings.add(Finding.warning(
                        FindingCode.LIMIT_NOT_WATCHED,
                        place,
                        Detail.of("limit", limit.id()),
                        Detail.of("channel", Watchers.role(limit).id())));
            }
        }
        boolean baroKnown = logged.contains(Role.BAROMETER) || rules.baro().isPresent();
        if (rules.limits().boostMost().isPresent() && logged.contains(Role.MANIFOLD_PRESSURE) && !baroKnown) {
            findings.add(Finding.warning(FindingCode.BOOST_WITHOUT_BAROMETER, place));
        }
        return findings;
    }

    private static boolean isCovered(Limit limit, Set<Role> logged, AlarmRules rules) {
        boolean fromRoller = limit == Limit.SPEED
                && logged.contains(Role.ROLLER_SPEED)
                && rules.engineRevPerRollerRev().isPresent();
        return fromRoller || logged.contains(Watchers.role(limit));
    }

    /** The limits that the plan sets; knock only where it names a number of events. */
    private static List<Limit> set(Limits limits) {
        List<Limit> set = new ArrayList<>();
        limits.knockEvents().ifPresent(value -> set.add(Limit.KNOCK));
        limits.lean().ifPresent(value -> set.add(Limit.LEAN));
        limits.most().exhaust().ifPresent(value -> set.add(Limit.EXHAUST));
        limits.most().coolant().ifPresent(value -> set.add(Limit.COOLANT));
        limits.most().oil().ifPresent(value -> set.add(Limit.OIL));
        limits.most().inlet().ifPresent(value -> set.add(Limit.INLET_AIR));
        limits.oilPressureLeast().ifPresent(value -> set.add(Limit.OIL_PRESSURE));
        limits.fuelPressureLeast().ifPresent(value -> set.add(Limit.FUEL_PRESSURE));
        limits.boostMost().ifPresent(value -> set.add(Limit.BOOST));
        limits.mostRpm().ifPresent(value -> set.add(Limit.SPEED));
        limits.injectorDutyMost().ifPresent(value -> set.add(Limit.INJECTOR_DUTY));
        return set;
    }
}
