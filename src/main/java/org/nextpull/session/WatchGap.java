package org.nextpull.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.nextpull.alarm.ChannelLife;
import org.nextpull.channel.Channel;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;

/**
 * A limit of the plan that no live channel watched in some pulls of a day.
 *
 * @param what the limit, and what was wrong with the channel
 * @param pulls numbers of those pulls, in their order
 * @param inAll whether they are all pulls of the day
 */
public record WatchGap(MeasuredPull.Unwatched what, List<Integer> pulls, boolean inAll) {
    public WatchGap {
        pulls = List.copyOf(pulls);
    }

    public Limit limit() {
        return what.limit();
    }

    /** The gaps of a day, in the order of the limits. */
    static List<WatchGap> of(SweepPlan plan, List<MeasuredPull> pulls) {
        Map<MeasuredPull.Unwatched, List<Integer>> numbers = new LinkedHashMap<>();
        for (Limit limit : plan.watched()) {
            for (MeasuredPull pull : pulls) {
                missing(limit, pull)
                        .forEach(what -> numbers.computeIfAbsent(what, key -> new ArrayList<>())
                                .add(pull.number()));
            }
        }
        return numbers.entrySet().stream()
                .map(entry -> new WatchGap(
                        entry.getKey(), entry.getValue(), entry.getValue().size() == pulls.size()))
                .toList();
    }

    private static List<MeasuredPull.Unwatched> missing(Limit limit, MeasuredPull pull) {
        if (limit == Limit.KNOCK) {
            return pull.isWatched(limit)
                    ? List.of()
                    : List.of(new MeasuredPull.Unwatched(limit, Channel.of(limit.role()), ChannelLife.Life.BLANK));
        }
        return pull.unwatched().stream().filter(what -> what.limit() == limit).toList();
    }
}
