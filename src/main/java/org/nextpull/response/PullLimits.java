package org.nextpull.response;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.PullLife;
import org.nextpull.plan.Limit;

/** The limits that a pull met or that nothing watched in it: those met out of the alarms that sounded in it: the worst of each. */
final class PullLimits {
    private PullLimits() {}

    /** Limits other than knock, which has a mark of its own. */
    static List<LimitMet> met(List<Alarm> alarms) {
        Map<Limit, Alarm> worst = new EnumMap<>(Limit.class);
        for (Alarm alarm : alarms) {
            if (alarm.limit() != Limit.KNOCK) {
                worst.merge(alarm.limit(), alarm, PullLimits::worse);
            }
        }
        List<LimitMet> met = new ArrayList<>();
        worst.forEach((limit, alarm) -> met.add(new LimitMet(limit, alarm.worst(), alarm.allowed())));
        return met;
    }

    /** The limits that no live channel watched. */
    static List<Unwatched> unwatched(PullLife life) {
        List<Unwatched> unwatched = new ArrayList<>();
        life.unwatched()
                .forEach((limit, channel) -> unwatched.add(new Unwatched(limit, channel.channel(), channel.life())));
        return unwatched;
    }

    private static Alarm worse(Alarm one, Alarm other) {
        boolean otherIsWorse = one.limit().isLeast() ? other.worst() < one.worst() : other.worst() > one.worst();
        return otherIsWorse ? other : one;
    }

    static boolean hasKnock(List<Alarm> alarms) {
        return alarms.stream().anyMatch(alarm -> alarm.limit() == Limit.KNOCK);
    }
}
