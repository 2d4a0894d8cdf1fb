package org.nextpull.math;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.ClassicalRungeKuttaIntegrator;

/** Integrates systems of differential equations with the classical Runge-Kutta method of fourth order in fixed steps. */
public final class OdeSolver {
    private static final ClassicalRungeKuttaIntegrator RUNGE_KUTTA = new ClassicalRungeKuttaIntegrator(1);

    private OdeSolver() {}

    /** Receives the state after each step. */
    @FunctionalInterface
    public interface Watcher {
        void after(double t, double[] y);
    }

    /**
     * Integrates over a span.
     *
     * @param system the equations
     * @param span where from, where to, in how many steps
     * @param start the state at the start; not changed
     * @param watcher sees the state after each step
     * @return the state at the end
     */
    public static double[] integrate(Equations system, Span span, double[] start, Watcher watcher) {
        FirstOrderDifferentialEquations equations = new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return system.dimension();
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] rates) {
                system.derivatives(t, y, rates);
            }
        };
        double[] y = start.clone();
        for (int step = 0; step < span.steps(); step++) {
            y = RUNGE_KUTTA.singleStep(equations, span.at(step), y, span.at(step + 1));
            watcher.after(span.at(step + 1), y);
        }
        return y;
    }

    /**
     * A stretch of the independent variable, cut into equal steps.
     *
     * @param from where it starts
     * @param to where it ends, not before the start
     * @param steps number of steps, at least 1
     */
    public record Span(double from, double to, int steps) {
        /**
         * Accepts a span of no length.
         *
         * @throws IllegalArgumentException when the end lies before the start, one of them is NaN, or there is no step
         */
        public Span {
            if (!(to >= from) || steps < 1) {
                throw new IllegalArgumentException("not a span: " + from + " to " + to + " in " + steps);
            }
        }

        /** Steps of at most the given length. */
        public static Span withSteps(double from, double to, double longest) {
            return new Span(from, to, Math.max(1, (int) Math.ceil((to - from) / longest - 1e-9)));
        }

        /** The independent variable after so many steps. */
        public double at(int step) {
            return step == steps ? to : from + (to - from) * step / steps;
        }
    }

    /** A system of ordinary differential equations of first order. */
    public interface Equations {
        int dimension();

        /**
         * Evaluates the derivatives.
         *
         * @param t the independent variable
         * @param y the state; not to be changed
         * @param rates receives dy/dt
         */
        void derivatives(double t, double[] y, double[] rates);
    }
}
