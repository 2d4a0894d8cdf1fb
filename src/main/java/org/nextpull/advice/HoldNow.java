package org.nextpull.advice;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What to do now on a day of held speeds whose spark is set while the engine runs.
 *
 * @param step what to do
 * @param number which of the held speeds, from 1
 * @param count how many there are
 * @param rpm the speed that is held, or comes next
 * @param advanceDeg advance to set there, degrees; empty where what stands in the engine is held first
 * @param leftS what is left of the time at load, in s; empty while the engine is not loaded
 * @param plateaus plateaus so far at that speed
 * @param other what the log showed where it is not what was asked for; empty where it is
 */
public record HoldNow(
        Step step,
        int number,
        int count,
        double rpm,
        OptionalDouble advanceDeg,
        OptionalDouble leftS,
        int plateaus,
        Optional<OtherAdvance> other) {
    /** The same with another rest of the time at load. */
    public HoldNow withLeftS(OptionalDouble seconds) {
        return new HoldNow(step, number, count, rpm, advanceDeg, seconds, plateaus, other);
    }

    /**
     * An advance that stands where another was asked for, degrees.
     *
     * @param askedDeg what was asked for
     * @param readDeg what the log shows
     */
    public record OtherAdvance(double askedDeg, double readDeg) {}

    /** Whether all speeds are done. */
    public boolean isOver() {
        return step == Step.PROVE;
    }

    /** What to do. */
    public enum Step {
        /** Go to the speed, full load. */
        GO,
        /** Set the advance. */
        SET,
        /** Hold still: torque is settling, or being measured. */
        HOLD,
        /** Close the throttle: torque has turned over, or no limit lets it go on. */
        CLOSE_DONE,
        /** Close the throttle: knock. */
        CLOSE_KNOCK,
        /** Close the throttle: a limit was passed, or the exhaust is about to. */
        CLOSE_LIMIT,
        /** Close the throttle: the time at load is over. */
        CLOSE_TIME,
        /** Close the throttle: nothing came for a while, so the load must begin anew at the same speed. */
        CLOSE_CUT,
        /** Close the throttle: the log shows more advance than a step beyond what ran clean there. */
        CLOSE_ADVANCE,
        /** Close the throttle: the log lacks throttle, torque or advance, so nothing can be said at this speed. */
        CLOSE_UNSEEN,
        /** All speeds are done; a pull over the band proves their map. */
        PROVE;

        /** Whether the throttle is to be closed at once. */
        public boolean isClose() {
            return this != GO && this != SET && this != HOLD && this != PROVE;
        }

        /** Whether the same speed is held again once the throttle was closed. */
        public boolean isHeldAgain() {
            return this == CLOSE_CUT || this == CLOSE_ADVANCE || this == CLOSE_UNSEEN;
        }
    }
}
