package org.nextpull.alarm;

import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.plan.Limit;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Temperature;

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

    /**
     * A change of an alarm.
     *
     * @param kind what changed
     * @param alarm the alarm as it now stands
     * @param at the row that changed it
     */
    public record Event(Kind kind, Alarm alarm, RowPlace at) {

        /** What changed. */
        public enum Kind {
            /** The limit has been passed. */
            SOUNDED,
            /** Knock went on. */
            WORSE,
            /** All is within the limit again. */
            CLEARED
        }
    }

    /**
     * How near a limit is.
     *
     * @param limit the limit
     * @param value the worst reading of the moment, in the project's unit of the limit's quantity
     * @param allowed the plan's limit, in the same unit
     */
    public record Headroom(Limit limit, double value, double allowed) {
        /** How much of the way to the limit is used, 1 at the limit, dimensionless; temperatures count from the freezing point. */
        public double used() {
            double zero = limit.quantity() == Quantity.TEMPERATURE
                    ? Temperature.ofCelsius(0).kelvins()
                    : 0;
            double share = limit.isLeast() ? allowed / value : (value - zero) / (allowed - zero);
            return Double.isFinite(share) ? Math.max(0, share) : 0;
        }
    }

    /**
     * A row of a source.
     *
     * @param line line of the source, from 1
     * @param timeS the log's time in s; empty where it has none
     */
    public record RowPlace(long line, OptionalDouble timeS) {

        /** Time since an earlier row; where the log has no time, as long as you like: an alarm must not wait for a clock that is not there. */
        double secondsSince(RowPlace earlier) {
            return timeS.isPresent() && earlier.timeS.isPresent()
                    ? timeS.getAsDouble() - earlier.timeS.getAsDouble()
                    : Double.POSITIVE_INFINITY;
        }
    }
}
