package org.nextpull.engine.cycle;

import org.nextpull.engine.gas.Gas;

/**
 * Heat transfer to the cylinder wall: {@code h = 3.26 B^-0.2 p^0.8 T^-0.55 w^0.8} in W/(m2.K) with p in kPa and
 * {@code w = 2.28 Sp + 0.00324 (Vd Tr)/(pr Vr) (p - pm)} in m/s once it burns.
 *
 * <p>Woschni G., SAE 670931, 1967, as given in Heywood, section 12.4.3, from memory. The motored pressure pm is polytropic with
 * exponent 1.33.
 */
final class Woschni {
    private static final double SCALE = 3.26;
    private static final double PISTON = 2.28;
    private static final double COMBUSTION = 3.24e-3;
    private static final double MOTORED_EXPONENT = 1.33;

    private final double factor;
    private final double pistonPart;
    private final double combustionPart;
    private final double referencePressure;
    private final double referenceVolume;

    Woschni(Cylinder cylinder, double rpm, ClosedCycle.Filling filling) {
        this.factor = SCALE * Math.pow(cylinder.bore(), -0.2) * Math.pow(1e-3, 0.8);
        this.pistonPart = PISTON * cylinder.pistonSpeed(rpm);
        this.combustionPart = COMBUSTION
                * cylinder.sweptVolume()
                * filling.state().kelvins()
                / (filling.state().pascals() * filling.volume());
        this.referencePressure = filling.state().pascals();
        this.referenceVolume = filling.volume();
    }

    /** Pressure without combustion in Pa. */
    double motoredPressure(double volume) {
        return referencePressure * Math.pow(referenceVolume / volume, MOTORED_EXPONENT);
    }

    /** Heat transfer coefficient in W/(m2.K). */
    double coefficient(Gas.State state, double motoredPressure) {
        double rise = Math.max(0, state.pascals() - motoredPressure);
        double velocity = pistonPart + combustionPart * rise;
        return factor * Math.exp(0.8 * Math.log(state.pascals() * velocity) - 0.55 * Math.log(state.kelvins()));
    }
}
