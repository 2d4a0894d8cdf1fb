package org.nextpull.engine.cycle;

import org.nextpull.engine.gas.Gas;
import org.nextpull.math.OdeSolver;

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

    public static Result solve(Run run, Wiebe wiebe) {
        return solve(run, wiebe, STEP_DEG);
    }

    /**
     * Integrates with steps of a given length.
     *
     * @param run the cycle
     * @param wiebe how it burns
     * @param stepDeg longest step in degrees
     */
    public static Result solve(Run run, Wiebe wiebe, double stepDeg) {
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
        y = OdeSolver.integrate(equations, OdeSolver.Span.withSteps(start, spark, stepDeg), y, watcher);
        y = OdeSolver.integrate(equations, OdeSolver.Span.withSteps(spark, knockEnd, burnStep), y, watcher);
        double integral = y[CycleEquations.KNOCK];
        y = OdeSolver.integrate(equations, OdeSolver.Span.withSteps(knockEnd, burnEnd, burnStep), y, watcher);
        y = OdeSolver.integrate(equations, OdeSolver.Span.withSteps(burnEnd, end, stepDeg), y, watcher);

        double kelvins = y[CycleEquations.TEMPERATURE];
        Gas.State opening = new Gas.State(equations.pressure(end, kelvins), kelvins);
        double stored = equations.internalEnergy(end, kelvins) - equations.internalEnergy(start, first);
        double released = run.charge().heat() * wiebe.fraction(end);
        Energy energy = new Energy(released, y[CycleEquations.WORK], new Energy.Kept(y[CycleEquations.LOSS], stored));
        return new Result(energy, peak.pressure(), opening, new Knock(integral, peak.unburnedAtOnset()));
    }

    private static double clip(Run run, double deg) {
        return Math.max(run.filling().deg(), Math.min(run.exhaustOpensDeg(), deg));
    }

    /**
     * What came out of a closed cycle.
     *
     * @param energy where the heat went
     * @param peak highest pressure
     * @param opening state when the exhaust valve opens
     * @param knock autoignition
     */
    public record Result(Energy energy, PeakPressure peak, Gas.State opening, Knock knock) {}

    /**
     * A closed cycle to be calculated.
     *
     * @param cylinder its size
     * @param filling what is trapped at the start
     * @param charge the gas and the heat in it
     * @param walls what heat is lost to
     * @param rpm engine speed
     * @param exhaustOpensDeg crank angle in degrees after top dead centre at which the cycle ends
     */
    public record Run(
            Cylinder cylinder, Filling filling, Charge charge, Walls walls, double rpm, double exhaustOpensDeg) {}

    /**
     * What is trapped when the inlet valve closes.
     *
     * @param state pressure and temperature
     * @param volume volume in m3
     * @param deg crank angle in degrees after top dead centre of combustion, negative
     */
    public record Filling(Gas.State state, double volume, double deg) {}

    /** Watches a cycle for its highest pressure and for the onset of autoignition. */
    private static final class Peak {
        private double lastDeg;
        private double last;
        private double beforeDeg;
        private double before;
        private PeakPressure best = new PeakPressure(0, 0);
        private double lastBurned;
        private double lastIntegral;
        private double unburnedAtOnset;

        void see(double deg, double pascals) {
            if (last >= before && last > pascals && last > best.pascals()) {
                best = vertex(deg, pascals);
            }
            beforeDeg = lastDeg;
            before = last;
            lastDeg = deg;
            last = pascals;
        }

        void seeKnock(double burned, double integral) {
            if (integral >= 1 && lastIntegral < 1) {
                double share = (1 - lastIntegral) / (integral - lastIntegral);
                unburnedAtOnset = 1 - lastBurned - share * (burned - lastBurned);
            }
            lastBurned = burned;
            lastIntegral = integral;
        }

        PeakPressure pressure() {
            return best.pascals() > last ? best : new PeakPressure(last, lastDeg);
        }

        /** Fraction of the charge that was not burned when the end gas lit itself; 0 when it never did. */
        double unburnedAtOnset() {
            return unburnedAtOnset;
        }

        /** Top of the parabola through three neighbours. */
        private PeakPressure vertex(double deg, double pascals) {
            double left = lastDeg - beforeDeg;
            double right = deg - lastDeg;
            double slopeLeft = (last - before) / left;
            double slopeRight = (pascals - last) / right;
            double bend = (slopeRight - slopeLeft) / (left + right);
            double slope = (slopeLeft * right + slopeRight * left) / (left + right);
            if (bend >= 0) {
                return new PeakPressure(last, lastDeg);
            }
            return new PeakPressure(last - slope * slope / (4 * bend), lastDeg - slope / (2 * bend));
        }
    }

    /**
     * The highest cylinder pressure.
     *
     * @param pascals pressure in Pa
     * @param deg where it is, in degrees after top dead centre
     */
    public record PeakPressure(double pascals, double deg) {}

    /**
     * Where the heat of a closed cycle went, in J.
     *
     * @param released heat of combustion
     * @param work work on the piston
     * @param kept what did not become work
     */
    public record Energy(double released, double work, Kept kept) {
        /**
         * What did not become work.
         *
         * @param lost heat given to the walls in J
         * @param stored rise of internal energy in J
         */
        public record Kept(double lost, double stored) {}
    }

    /**
     * Autoignition of the end gas in the mean cycle.
     *
     * @param integral integral of Livengood and Wu when nine tenths are burned; from 1 up the mean cycle knocks
     * @param unburnedAtOnset fraction of the charge ahead of the flame when the integral reached 1; 0 when it did not before that
     */
    public record Knock(double integral, double unburnedAtOnset) {}

    /**
     * The walls that the gas loses heat to.
     *
     * @param kelvins temperature in K
     * @param scale factor on the correlation; 1 as published, 0 for no loss
     */
    public record Walls(double kelvins, double scale) {}

    /**
     * The trapped gas and the heat in it.
     *
     * @param unburned the gas ahead of the flame
     * @param burned the gas behind it
     * @param mass trapped mass in kg
     * @param heat heat of combustion of the whole charge in J
     * @param endGas what decides whether it knocks
     */
    public record Charge(Gas unburned, Gas burned, double mass, double heat, EndGas endGas) {
        /**
         * What decides whether a charge knocks.
         *
         * @param octane octane number of the fuel, above 0, as the delay correlation takes it
         * @param hotterK how much warmer than the mean the hottest part of the gas is when the inlet closes, in K
         */
        public record EndGas(double octane, double hotterK) {}
    }
}
