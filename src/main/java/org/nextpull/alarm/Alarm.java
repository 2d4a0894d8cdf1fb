package org.nextpull.alarm;

import org.nextpull.channel.Channel;
import org.nextpull.plan.Limit;

/**
 * A stretch in which a limit was passed.
 *
 * @param limit which limit
 * @param channel the channel that passed it; of several sensors the worst
 * @param since the first row beyond the limit
 * @param until the last row beyond it so far
 * @param rows number of rows beyond it so far
 * @param worst the worst value, in the project's unit of the limit's quantity; for knock the events under load
 * @param allowed the plan's limit, in the same unit
 */
public record Alarm(
        Limit limit, Channel channel, RowPlace since, RowPlace until, int rows, double worst, double allowed) {

    /** What to do. */
    public Counsel counsel() {
        return Counsel.of(limit);
    }

    /** Whether a value, in the unit of {@link #worst}, is worse than the worst so far. */
    public boolean isWorse(double value) {
        return limit.isLeast() ? value < worst : value > worst;
    }
}
