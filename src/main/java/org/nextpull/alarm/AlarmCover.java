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
import org.nextpull.plan.SweepPlan;

/** Which limits of a plan cannot be watched, since nothing is logged for them. */
public final class AlarmCover {
    private AlarmCover() {}

    /**
     * A warning for each limit of the plan that no channel can watch, lambda among them where the mixture is swept.
     *
     * @param plan the plan
     * @param channels what is logged
     * @param place the log or the source
     */
    public static List<Finding> check(SweepPlan plan, List<Channel> channels, Place place) {
        Set<Role> logged = channels.stream().map(Channel::role).collect(Collectors.toSet());
        AlarmWatch.Rules rules = AlarmWatch.Rules.of(plan);
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

    private static boolean isCovered(Limit limit, Set<Role> logged, AlarmWatch.Rules rules) {
        boolean fromRoller = limit == Limit.SPEED
                && logged.contains(Role.ROLLER_SPEED)
                && rules.engineRevPerRollerRev().isPresent();
        boolean byLevel = limit == Limit.KNOCK
                && logged.contains(Role.KNOCK_LEVEL)
                && rules.limits().knockLevel().isPresent();
        return fromRoller || byLevel || logged.contains(limit.role());
    }
}
