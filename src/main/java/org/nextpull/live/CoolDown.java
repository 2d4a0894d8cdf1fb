package org.nextpull.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.PresentConditions;
import org.nextpull.plan.StartConditions;
import org.nextpull.plan.SweepPlan;
import org.nextpull.unit.Temperature;

/** The time between two pulls: what is left of the one that the plan wants, and when temperatures ask to look at the advice again. */
final class CoolDown {
    private static final double LEAST_S = 1;
    private static final double WHILE_WAITING_S = 2;

    private List<Side> sides = List.of();
    private OptionalDouble askedS = OptionalDouble.empty();
    private int pulls;
    private OptionalDouble lastS = OptionalDouble.empty();

    private enum Side {
        UNKNOWN,
        BELOW,
        WITHIN,
        ABOVE
    }

    /** Notes how many pulls have ended. */
    void see(int ended, double nowS) {
        if (ended > pulls) {
            pulls = ended;
            lastS = OptionalDouble.of(nowS);
        }
    }

    /** What is left in s of the time that the plan wants after the last pull; empty when it is over, or when the plan wants none. */
    OptionalDouble coolDownLeftS(OptionalDouble wantedS, double nowS) {
        if (wantedS.isEmpty() || lastS.isEmpty()) {
            return OptionalDouble.empty();
        }
        double left = wantedS.getAsDouble() - (nowS - lastS.getAsDouble());
        return left > 0 ? OptionalDouble.of(left) : OptionalDouble.empty();
    }

    /** Whether to look again; then it counts as done. */
    boolean isDue(SweepPlan plan, PresentConditions conditions, Optional<Advice> advice, double nowS) {
        double since = askedS.isPresent() ? nowS - askedS.getAsDouble() : Double.POSITIVE_INFINITY;
        List<Side> present = sides(plan, conditions);
        boolean waits = advice.filter(next -> next.action() == Action.WAIT).isPresent();
        if (since < LEAST_S || (present.equals(sides) && !(waits && since >= WHILE_WAITING_S))) {
            return false;
        }
        sides = present;
        askedS = OptionalDouble.of(nowS);
        return true;
    }

    private static List<Side> sides(SweepPlan plan, PresentConditions conditions) {
        List<Side> sides = new ArrayList<>();
        sides.add(side(plan.start().coolant(), conditions.coolant()));
        sides.add(side(plan.start().oil(), conditions.oil()));
        sides.add(side(plan.start().inlet(), conditions.inletAir()));
        return sides;
    }

    private static Side side(Optional<StartConditions.TemperatureWindow> window, Optional<Temperature> now) {
        if (window.isEmpty() || now.isEmpty()) {
            return Side.UNKNOWN;
        }
        if (window.get().contains(now.get())) {
            return Side.WITHIN;
        }
        return now.get().kelvins() < window.get().low().kelvins() ? Side.BELOW : Side.ABOVE;
    }
}
