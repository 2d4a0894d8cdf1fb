package org.nextpull.session;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.nextpull.advice.HoldPlanner;

/** Sees that torque has settled at one advance. What came before the advance changed is forgotten. */
final class SteadyTorque {
    /** Halves of a plateau may differ by that much, in percent: less is the noise of its mean and slow warming. */
    private static final double SETTLED_PERCENT = 0.25;
    /** So long after the advance changed nothing counts. */
    private static final double FLINCH_S = 0.5;

    private final double holdS;
    private final double longestS;
    private final double sameDeg;
    private final Deque<Moment> moments = new ArrayDeque<>();

    private record Moment(double atS, double deg, double torqueNm) {}

    /**
     * @param holdS a plateau is measured for so long, s
     * @param settleS longest settling, s; a torque that goes on changing is taken after that and two measuring times
     * @param sameDeg advance that differs by no more is one, degrees
     */
    SteadyTorque(double holdS, double settleS, double sameDeg) {
        this.holdS = holdS;
        longestS = settleS + 2 * holdS;
        this.sameDeg = sameDeg;
    }

    void forget() {
        moments.clear();
    }

    /** Takes a moment; gives the plateau that it completes. */
    Optional<HoldPlanner.Plateau> take(double atS, double deg, double torqueNm) {
        if (!moments.isEmpty() && Math.abs(deg - moments.getFirst().deg()) > sameDeg) {
            forget();
        }
        moments.addLast(new Moment(atS, deg, torqueNm));
        double spanS = atS - moments.getFirst().atS();
        if (spanS < FLINCH_S + holdS || (!isSettled(atS) && spanS < longestS)) {
            return Optional.empty();
        }
        HoldPlanner.Plateau plateau = new HoldPlanner.Plateau(
                mean(atS - holdS, atS, Moment::deg), 100 * Math.log(mean(atS - holdS, atS, Moment::torqueNm)));
        forget();
        return Optional.of(plateau);
    }

    private boolean isSettled(double atS) {
        double early = mean(atS - holdS, atS - holdS / 2, Moment::torqueNm);
        double late = mean(atS - holdS / 2, atS, Moment::torqueNm);
        return Math.abs(100 * Math.log(late / early)) <= SETTLED_PERCENT;
    }

    private double mean(double fromS, double toS, ToDoubleFunction<Moment> figure) {
        return moments.stream()
                .filter(moment -> moment.atS() >= fromS && moment.atS() <= toS)
                .mapToDouble(figure)
                .average()
                .orElse(1);
    }
}
