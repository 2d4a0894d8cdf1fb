package org.nextpull.response;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.alarm.Life;
import org.nextpull.alarm.PullLife;
import org.nextpull.channel.Channel;
import org.nextpull.plan.Limit;

/**
 * A limit of the plan that no live channel watched in a pull.
 *
 * @param limit which
 * @param channel the channel that should have
 * @param life what was wrong with it
 */
public record Unwatched(Limit limit, Channel channel, Life life) {
    static List<Unwatched> in(PullLife pull) {
        List<Unwatched> unwatched = new ArrayList<>();
        pull.unwatched()
                .forEach((limit, channel) -> unwatched.add(new Unwatched(limit, channel.channel(), channel.life())));
        return unwatched;
    }
}
