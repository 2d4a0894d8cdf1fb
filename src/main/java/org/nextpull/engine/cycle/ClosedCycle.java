package org.nextpull.engine.cycle;

import org.nextpull.engine.gas.GasState;
import org.nextpull.math.OdeSolver;
import org.nextpull.math.OdeSpan;

/** Integrates a closed cycle from inlet closing to exhaust opening. */
public final class ClosedCycle {
    /** Longest step in degrees. */
    public static final double STEP_DEG = 1;

    /** The end gas counts as consumed when so much of the charge is burned. */
    private static final double KNOCK_END = 0.9;

    private static final double BURN_END = 1 - 1e-9;
    /** A short burn still gets so many steps. */
    private static final int LEAST_BURN_STEPS = 24;

    private ClosedCycle() {}

    public static CycleResult solve(Run run, Wiebe wiebe) {
        return solve(run, wiebe, STEP_DEG);
    }

    /**
     * Integrates with steps of a given length.
     *
     * @param run the cycle
     * @param wiebe how it burns
     * @param stepDeg longest step in degrees
     */
    public static CycleResult solve(Run run, Wiebe wiebe, double stepDeg) {
        CycleEquations equations = new CycleEquations(run, wiebe);
        double start = run.filling().deg();
        double end = run.exhaustOpensDeg();
        double spark = clip(run, wiebe.startDeg());
        double knockEnd = clip(run, wiebe.angleOf(KNOCK_END));
        double burnEnd = clip(run, wiebe.angleOf(BURN_END));
        double burnStep = Math.min(stepDeg, stepDeg * wiebe.durationDeg() / (LEAST_BURN_STEPS * STEP_DEG));

        double first = run.filling().state().kelvins();
        double[] y = {first, 0, 0, first + run.charge().endGas().hotterK(), 0};
        Peak peak = new Peak();
        OdeSolver.Watcher watcher = (deg, state) -> {
            peak.see(deg, equations.pressure(deg, state[CycleEquations.TEMPERATURE]));
            peak.seeKnock(wiebe.fraction(deg), state[CycleEquations.KNOCK]);
        };
        y = OdeSolver.integrate(equations, OdeSpan.withSteps(start, spark, stepDeg), y, watcher);
        y = OdeSolver.integrate(equations, OdeSpan.withSteps(spark, knockEnd, burnStep), y, watcher);
        double integral = y[CycleEquations.KNOCK];
        y = OdeSolver.integrate(equations, OdeSpan.withSteps(knockEnd, burnEnd, burnStep), y, watcher);
        y = OdeSolver.integrate(equations, OdeSpan.withSteps(burnEnd, end, stepDeg), y, watcher);

        double kelvins = y[CycleEquations.TEMPERATURE];
        GasState opening = new GasState(equations.pressure(end, kelvins), kelvins);
        double stored = equations.internalEnergy(end, kelvins) - equations.internalEnergy(start, first);
        double released = run.charge().heat() * wiebe.fraction(end);
        Energy energy = new Energy(released, y[CycleEquations.WORK], new Energy.Kept(y[CycleEquations.LOSS], stored));
        return new CycleResult(energy, peak.pressure(), opening, new Knock(integral, peak.unburnedAtOnset()));
    }

    private static double clip(Run run, double deg) {
        return Math.max(run.filling().deg(), Math.min(run.exhaustOpensDeg(), deg));
    }
}
