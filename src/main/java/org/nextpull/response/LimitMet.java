package org.nextpull.response;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.nextpull.alarm.Alarm;
import org.nextpull.plan.Limit;

/**
 * A limit that a pull met.
 *
 * @param limit which
 * @param worst worst value, beyond the limit, in the project's unit of the limit's quantity ({@code Quantity.si})
 * @param allowed the plan's limit, in the same unit
 */
public record LimitMet(Limit limit, double worst, double allowed) {
    /** The worst of the alarms of each limit other than knock, which has a mark of its own. */
    static List<LimitMet> worst(List<Alarm> alarms) {
        Map<Limit, Alarm> worst = new EnumMap<>(Limit.class);
        for (Alarm alarm : alarms) {
            if (alarm.limit() != Limit.KNOCK) {
                worst.merge(alarm.limit(), alarm, (one, other) -> one.isWorse(other.worst()) ? other : one);
            }
        }
        List<LimitMet> met = new ArrayList<>();
        worst.forEach((limit, alarm) -> met.add(new LimitMet(limit, alarm.worst(), alarm.allowed())));
        return met;
    }
}
