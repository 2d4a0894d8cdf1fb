package org.nextpull.advice;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.SparkMap;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.SpeedBand;

/**
 * What a pull tells of how far an engine may go, whether it gave torque or not.
 *
 * @param spark advance that stood over speed: as set where that is known, else as measured
 * @param lambda its mixture; empty where it is not known
 * @param reached speeds that it went through under load
 * @param flags knock heard in it
 * @param metLimit whether it met a limit other than knock; it then clears nothing
 * @param isCooledByAdvance whether that limit was the exhaust's alone and no mixture is swept that could be richer: since advance cools
 *     the exhaust, it then clears the step to more of it, and nothing else
 */
public record TriedPull(
        SparkMap spark,
        Optional<Lambda> lambda,
        SpeedBand reached,
        List<KnockFlag> flags,
        boolean metLimit,
        boolean isCooledByAdvance) {
    private static final double HELD_WITHIN_RPM = 1;

    public TriedPull {
        flags = List.copyOf(flags);
    }

    /** A pull whose limit, if it met one, forbids every way on. */
    public TriedPull(
            SparkMap spark, Optional<Lambda> lambda, SpeedBand reached, List<KnockFlag> flags, boolean metLimit) {
        this(spark, lambda, reached, flags, metLimit, false);
    }

    /** Whether neither knock was heard nor a limit met. */
    public boolean isClean() {
        return flags.isEmpty() && !metLimit;
    }

    /** Whether it ran through most of some speeds, and not only held one or two of them: only then was its spark run as a map. */
    boolean isRunOver(double[] rpm) {
        return 2 * Arrays.stream(rpm).filter(reached::contains).count() > rpm.length;
    }

    /** The speed that it held; empty where it ran through several. */
    OptionalDouble heldRpm() {
        double width = reached.toRpm() - reached.fromRpm();
        return width <= 2 * HELD_WITHIN_RPM ? OptionalDouble.of(reached.fromRpm() + width / 2) : OptionalDouble.empty();
    }

    /** Speeds that a brake clears which holds one. */
    static SpeedBand aroundHeld(double rpm) {
        return new SpeedBand(Math.max(0, rpm - HELD_WITHIN_RPM), rpm + HELD_WITHIN_RPM);
    }

    TriedPull withFlags(List<KnockFlag> newFlags) {
        return new TriedPull(spark, lambda, reached, newFlags, metLimit, isCooledByAdvance);
    }

    /**
     * Knock heard in a pull, as yes or no. Flags that the operator struck are not handed to the planner.
     *
     * @param rpm speed where it was heard; empty where that is not known, and then it forbids at every speed
     * @param isOfLevel whether a graded level was too high, which says how far: half of the margin is then kept
     */
    public record KnockFlag(OptionalDouble rpm, boolean isOfLevel) {
        public static KnockFlag atRpm(double rpm) {
            return new KnockFlag(OptionalDouble.of(rpm), false);
        }

        /** A graded level that was too high at a speed. */
        public static KnockFlag ofLevelAtRpm(double rpm) {
            return new KnockFlag(OptionalDouble.of(rpm), true);
        }

        public static KnockFlag somewhere() {
            return new KnockFlag(OptionalDouble.empty(), false);
        }
    }
}
