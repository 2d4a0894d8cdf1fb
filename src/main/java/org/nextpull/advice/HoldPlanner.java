package org.nextpull.advice;

import java.util.Comparator;
import java.util.List;

/**
 * The next plateau of a held speed whose spark is stepped while it runs: up by the step until torque falls once, then back into the two
 * gaps below the top, then the next speed. The two plateaus on the way back tell the curve from the warming of the engine.
 */
public final class HoldPlanner {
    private static final int GAPS = 2;
    private static final double ROUNDING = 1e-9;

    private final PlannerRules.Spark rules;

    public HoldPlanner(PlannerRules.Spark rules) {
        this.rules = rules;
    }

    /**
     * One plateau.
     *
     * @param advanceDeg advance that was held
     * @param lnTorquePercent 100 times the natural log of the settled torque
     */
    public record Plateau(double advanceDeg, double lnTorquePercent) {}

    /** What to do at the held speed. */
    public sealed interface HoldStep {
        /** Hold another advance. */
        record Set(double advanceDeg) implements HoldStep {}

        /** The speed is done; the next one, or the pull that proves the map. */
        record Done(Reason reason) implements HoldStep {}
    }

    /** Why a speed is done. */
    public enum Reason {
        /** Torque fell, and the gaps below its top are filled as far as the plan goes down. */
        TURNED,
        /** No limit lets it go on, and it had not fallen. */
        LIMITED,
        /** Knock or another limit was met: no more at this speed. */
        ENDED
    }

    /**
     * The next step at a speed.
     *
     * @param plateaus held so far at this speed, in order; one at least
     * @param limitDeg most advance that knock, the level of knock and the plan allow there, degrees
     * @param wasEnded whether knock was heard or a limit met
     */
    public HoldStep next(List<Plateau> plateaus, double limitDeg, boolean wasEnded) {
        if (wasEnded) {
            return new HoldStep.Done(Reason.ENDED);
        }
        int top = firstFall(plateaus);
        if (top == plateaus.size()) {
            return up(mostAdvanced(plateaus, top), limitDeg);
        }
        int back = plateaus.size() - 1 - top;
        if (back == GAPS) {
            return new HoldStep.Done(Reason.TURNED);
        }
        double from = plateaus.get(top).advanceDeg();
        double step = from - mostAdvanced(plateaus, top).advanceDeg();
        double next = floor(from - step / 2 - back * step);
        return next < rules.leastDeg() ? new HoldStep.Done(Reason.TURNED) : new HoldStep.Set(next);
    }

    /** The plateau at which torque first fell with more advance than before; as many as there are where it has not. */
    private static int firstFall(List<Plateau> plateaus) {
        int at = 1;
        while (at < plateaus.size() && !isFall(mostAdvanced(plateaus, at), plateaus.get(at))) {
            at++;
        }
        return at;
    }

    private static boolean isFall(Plateau before, Plateau now) {
        return now.advanceDeg() > before.advanceDeg() && now.lnTorquePercent() < before.lnTorquePercent();
    }

    private static Plateau mostAdvanced(List<Plateau> plateaus, int before) {
        return plateaus.subList(0, before).stream()
                .max(Comparator.comparingDouble(Plateau::advanceDeg))
                .orElseThrow();
    }

    private HoldStep up(Plateau last, double limitDeg) {
        double next = floor(Math.min(last.advanceDeg() + rules.largestStepDeg(), Math.min(limitDeg, rules.mostDeg())));
        return next > last.advanceDeg() ? new HoldStep.Set(next) : new HoldStep.Done(Reason.LIMITED);
    }

    private double floor(double deg) {
        return Math.floor(deg / rules.resolutionDeg() + ROUNDING) * rules.resolutionDeg();
    }
}
