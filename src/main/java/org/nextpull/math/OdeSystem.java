package org.nextpull.math;

/** A system of ordinary differential equations of first order. */
public interface OdeSystem {
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
