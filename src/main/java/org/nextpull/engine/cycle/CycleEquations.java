package org.nextpull.engine.cycle;

import org.nextpull.engine.gas.Gas;
import org.nextpull.math.OdeSolver;

/**
 * Energy balance of the trapped gas over crank angle, in one zone with burned and unburned gas at one pressure, and beside it the end
 * gas ahead of the flame. The state is temperature in K, work in J, heat lost in J, temperature of the end gas in K, and the integral
 * of autoignition. Serves one integration at a time: the geometry of the last angle is kept, since the method asks twice for it.
 */
final class CycleEquations implements OdeSolver.Equations {
    static final int TEMPERATURE = 0;
    static final int WORK = 1;
    static final int LOSS = 2;
    static final int END_GAS = 3;
    static final int KNOCK = 4;
    private static final int SIZE = 5;

    private final SliderCrank crank;
    private final Wiebe wiebe;
    private final Woschni woschni;
    private final ClosedCycle.Charge charge;
    private final ClosedCycle.Walls walls;
    private final KnockDelay delay;
    private final double degPerSecond;

    private double angle = Double.NaN;
    private double volume;
    private double volumeRate;
    private double burned;
    private double burnRate;
    private double motored;

    CycleEquations(ClosedCycle.Run run, Wiebe wiebe) {
        this.crank = new SliderCrank(run.cylinder());
        this.wiebe = wiebe;
        this.woschni = new Woschni(run.cylinder(), run.rpm(), run.filling());
        this.charge = run.charge();
        this.walls = run.walls();
        this.delay = KnockDelay.ofOctane(run.charge().endGas().octane());
        this.degPerSecond = 6 * run.rpm();
    }

    @Override
    public int dimension() {
        return SIZE;
    }

    @Override
    public void derivatives(double deg, double[] y, double[] rates) {
        moveTo(deg);
        Gas fresh = charge.unburned();
        Gas product = charge.burned();
        double kelvins = y[TEMPERATURE];
        double constant = fresh.gasConstant() + burned * (product.gasConstant() - fresh.gasConstant());
        double capacity = (1 - burned) * fresh.heatCapacity(kelvins) + burned * product.heatCapacity(kelvins);
        double pressure = charge.mass() * constant * kelvins / volume;
        double transfer = transfer(new Gas.State(pressure, kelvins));
        double lossRate = transfer * (kelvins - walls.kelvins());
        double composition =
                charge.mass() * (product.internalEnergy(kelvins) - fresh.internalEnergy(kelvins)) * burnRate;
        double kelvinRate = (charge.heat() * burnRate - lossRate - pressure * volumeRate - composition)
                / (charge.mass() * capacity);
        double pressureRate = kelvinRate / kelvins
                + (product.gasConstant() - fresh.gasConstant()) * burnRate / constant
                - volumeRate / volume;
        rates[TEMPERATURE] = kelvinRate;
        rates[WORK] = pressure * volumeRate;
        rates[LOSS] = lossRate;
        rates[END_GAS] = endGasRate(new Gas.State(pressure, y[END_GAS]), pressureRate, transfer);
        rates[KNOCK] = delay.rate(new Gas.State(pressure, y[END_GAS])) / degPerSecond;
    }

    /** Pressure in Pa at a state. */
    double pressure(double deg, double kelvins) {
        moveTo(deg);
        Gas fresh = charge.unburned();
        double constant = fresh.gasConstant() + burned * (charge.burned().gasConstant() - fresh.gasConstant());
        return charge.mass() * constant * kelvins / volume;
    }

    /** Internal energy of the trapped gas in J, without its heat of combustion. */
    double internalEnergy(double deg, double kelvins) {
        moveTo(deg);
        return charge.mass()
                * ((1 - burned) * charge.unburned().internalEnergy(kelvins)
                        + burned * charge.burned().internalEnergy(kelvins));
    }

    private void moveTo(double deg) {
        if (deg != angle) {
            angle = deg;
            volume = crank.volume(deg);
            volumeRate = crank.volumeRate(deg);
            burned = wiebe.fraction(deg);
            burnRate = wiebe.rate(deg, burned);
            motored = woschni.motoredPressure(volume);
        }
    }

    /** Heat lost in W per degree of angle and K of difference. */
    private double transfer(Gas.State state) {
        if (walls.scale() == 0) {
            return 0;
        }
        return walls.scale() * woschni.coefficient(state, motored) * crank.wallArea(volume) / degPerSecond;
    }

    /** Compression by the flame and loss to the wall that the end gas touches, taken as its share of the volume. */
    private double endGasRate(Gas.State endGas, double relativePressureRate, double transfer) {
        Gas fresh = charge.unburned();
        double capacity = fresh.heatCapacity(endGas.kelvins()) + fresh.gasConstant();
        double perKelvin = fresh.gasConstant() * endGas.kelvins() / capacity;
        return perKelvin
                * (relativePressureRate
                        - transfer * (endGas.kelvins() - walls.kelvins()) / (endGas.pascals() * volume));
    }

    /**
     * Delay of autoignition of the end gas: {@code tau = 17.68 ms (ON/100)^3.402 p^-1.7 exp(3800 K/T)} with p in atm.
     *
     * <p>Douaud A.M., Eyzat P., "Four-octane-number method for predicting the anti-knock behavior of fuels and engines", SAE 780080,
     * 1978, from memory. Integrated as Livengood and Wu (1955): knock when the integral of dt/tau reaches 1 before the flame arrives.
     *
     * @param factor {@code 17.68e-3 s (ON/100)^3.402}
     */
    record KnockDelay(double factor) {
        private static final double SCALE_S = 17.68e-3;
        private static final double OCTANE_POWER = 3.402;
        private static final double PRESSURE_POWER = 1.7;
        private static final double ACTIVATION_K = 3800;
        private static final double ATMOSPHERE_PA = 101325;

        static KnockDelay ofOctane(double octane) {
            return new KnockDelay(SCALE_S * Math.pow(octane / 100, OCTANE_POWER));
        }

        /** One over the delay, in 1/s. */
        double rate(Gas.State endGas) {
            double pressure = Math.log(endGas.pascals() / ATMOSPHERE_PA);
            return Math.exp(PRESSURE_POWER * pressure - ACTIVATION_K / endGas.kelvins()) / factor;
        }
    }
}
