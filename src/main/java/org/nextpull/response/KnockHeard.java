package org.nextpull.response;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.KnockMark;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * Knock of one pull, in the band and beside it.
 *
 * @param told what the channels and the operator say
 * @param events dimensionless count of events under load, where they were counted
 * @param worstLevel highest graded level on the logger's own scale, where one was logged
 * @param at each row in which knock was counted, in their order; empty where only the operator heard it
 * @param levels highest graded level around each speed of the result table, ascending; empty where none was logged
 * @param takenOut advance that the ignition took out by itself, ascending in speed
 * @param isDenied whether the operator says that no knock was heard, which settles what the ignition did but not what was counted
 */
public record KnockHeard(
        KnockMark told,
        OptionalDouble events,
        OptionalDouble worstLevel,
        List<KnockAt> at,
        List<LevelAtSpeed> levels,
        List<SparkTakenOut> takenOut,
        boolean isDenied) {
    public KnockHeard {
        at = List.copyOf(at);
        levels = List.copyOf(levels);
        takenOut = List.copyOf(takenOut);
    }

    /** Lowest and highest speed in rpm, which may be one. */
    public record Speeds(double lowRpm, double highRpm) {}

    public static KnockHeard marked(KnockMark mark) {
        return new KnockHeard(
                mark,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                List.of(),
                mark == KnockMark.NONE);
    }

    /** Heard, none, or not measured; the last is not "none". An ignition that takes out advance has heard it. */
    public KnockMark mark() {
        return !takenOut.isEmpty() && !isDenied ? KnockMark.HEARD : told;
    }

    /** Whether a sensor or the operator says anything at all. */
    public boolean isMeasured() {
        return mark() != KnockMark.NOT_MEASURED;
    }

    public boolean isHeard() {
        return mark() == KnockMark.HEARD;
    }

    /** The speeds at which it was heard, by a counter or by the ignition; empty where nobody heard any or its speed is not known. */
    public Optional<Speeds> speeds() {
        double[] rpm = at.isEmpty()
                ? takenOut.stream().mapToDouble(SparkTakenOut::rpm).toArray()
                : at.stream().flatMapToDouble(knock -> knock.rpm().stream()).toArray();
        if (!isHeard() || rpm.length == 0) {
            return Optional.empty();
        }
        double low = rpm[0];
        double high = rpm[0];
        for (double one : rpm) {
            low = Math.min(low, one);
            high = Math.max(high, one);
        }
        return Optional.of(new Speeds(low, high));
    }

    /** The same with what the ignition took out, in place of what was known of that before. */
    public KnockHeard withTakenOut(List<SparkTakenOut> newTakenOut) {
        return new KnockHeard(told, events, worstLevel, at, levels, newTakenOut, isDenied);
    }

    /**
     * Knock in one row of a log.
     *
     * @param rpm speed; empty where the row has none
     * @param advance spark advance that was logged there
     * @param lambda mixture that was logged there, that of the leanest sensor
     * @param events events counted there, one where a level was above its limit; positive
     */
    public record KnockAt(OptionalDouble rpm, Optional<Advance> advance, Optional<Lambda> lambda, double events) {}

    /** Highest graded knock level around a speed in rpm, in the scale of the log. */
    public record LevelAtSpeed(double rpm, double level) {}
}
