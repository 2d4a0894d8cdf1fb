package org.nextpull.live;

import java.util.OptionalDouble;

/** The time that the plan wants between pulls, counted from the end of the last. */
final class CoolDown {
    private int pulls;
    private OptionalDouble lastS = OptionalDouble.empty();

    /** Notes how many pulls have ended. */
    void see(int ended, double nowS) {
        if (ended > pulls) {
            pulls = ended;
            lastS = OptionalDouble.of(nowS);
        }
    }

    /** What is left of it in s; empty when it is over, or when the plan wants none. */
    OptionalDouble leftS(OptionalDouble wantedS, double nowS) {
        if (wantedS.isEmpty() || lastS.isEmpty()) {
            return OptionalDouble.empty();
        }
        double left = wantedS.getAsDouble() - (nowS - lastS.getAsDouble());
        return left > 0 ? OptionalDouble.of(left) : OptionalDouble.empty();
    }
}
