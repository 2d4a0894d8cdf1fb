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
    public static double[] integrate(OdeSystem system, OdeSpan span, double[] start, Watcher watcher) {
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
}
