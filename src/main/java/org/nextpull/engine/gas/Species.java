package org.nextpull.engine.gas;

/**
 * A gas species with its heat capacity as NASA 7-coefficient polynomials, {@code cp/R = a1 + a2 T + a3 T^2 + a4 T^3 + a5 T^4}.
 *
 * <p>Coefficients: thermodynamic data of GRI-Mech 3.0 (Smith et al., 1999), 200 or 300 K to 3500 or 5000 K in two ranges that meet
 * at 1000 K.
 */
final class Species {
    static final Species N2 = new Species(
            28.014e-3,
            new double[] {3.298677, 1.4082404e-03, -3.963222e-06, 5.641515e-09, -2.444854e-12},
            new double[] {2.92664, 1.4879768e-03, -5.68476e-07, 1.0097038e-10, -6.753351e-15});
    static final Species AR = new Species(39.948e-3, new double[] {2.5, 0, 0, 0, 0}, new double[] {2.5, 0, 0, 0, 0});
    static final Species O2 = new Species(
            31.998e-3,
            new double[] {3.78245636, -2.99673416e-03, 9.84730201e-06, -9.68129509e-09, 3.24372837e-12},
            new double[] {3.28253784, 1.48308754e-03, -7.57966669e-07, 2.09470555e-10, -2.16717794e-14});
    static final Species H2O = new Species(
            18.015e-3,
            new double[] {4.19864056, -2.0364341e-03, 6.52040211e-06, -5.48797062e-09, 1.77197817e-12},
            new double[] {3.03399249, 2.17691804e-03, -1.64072518e-07, -9.7041987e-11, 1.68200992e-14});
    static final Species CO2 = new Species(
            44.009e-3,
            new double[] {2.35677352, 8.98459677e-03, -7.12356269e-06, 2.45919022e-09, -1.43699548e-13},
            new double[] {3.85746029, 4.41437026e-03, -2.21481404e-06, 5.23490188e-10, -4.72084164e-14});
    static final Species CO = new Species(
            28.010e-3,
            new double[] {3.57953347, -6.1035368e-04, 1.01681433e-06, 9.07005884e-10, -9.04424499e-13},
            new double[] {2.71518561, 2.06252743e-03, -9.98825771e-07, 2.30053008e-10, -2.03647716e-14});
    static final Species H2 = new Species(
            2.016e-3,
            new double[] {2.34433112, 7.98052075e-03, -1.9478151e-05, 2.01572094e-08, -7.37611761e-12},
            new double[] {3.3372792, -4.94024731e-05, 4.99456778e-07, -1.79566394e-10, 2.00255376e-14});

    private final double molarMass;
    private final double[] low;
    private final double[] high;

    private Species(double molarMass, double[] low, double[] high) {
        this.molarMass = molarMass;
        this.low = low;
        this.high = high;
    }

    /** Molar mass in kg/mol. */
    double molarMass() {
        return molarMass;
    }

    /** Coefficient of {@code T^power} in cp/R below 1000 K. */
    double low(int power) {
        return low[power];
    }

    /** Coefficient of {@code T^power} in cp/R above 1000 K. */
    double high(int power) {
        return high[power];
    }
}
