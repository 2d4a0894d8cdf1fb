package org.nextpull.engine;

import org.nextpull.air.AirState;
import org.nextpull.engine.cycle.ClosedCycle;
import org.nextpull.engine.cycle.SliderCrank;
import org.nextpull.engine.gas.Air;
import org.nextpull.engine.gas.EngineFuel;
import org.nextpull.engine.gas.FreshCharge;
import org.nextpull.engine.gas.Gas;
import org.nextpull.engine.gas.GasMixture;
import org.nextpull.engine.gas.Products;
import org.nextpull.unit.Lambda;

/**
 * The gas in a cylinder when its inlet valve closes: what flowed in, and what the last cycle left.
 *
 * <p>Filling goes with dry air pressure and with the root of absolute temperature, as full-load engines do (the exponents of the
 * correction standards). Fuel that evaporates on the way in cools the air, which lets more in, and takes room, which lets less in.
 *
 * @param unburned the gas ahead of the flame
 * @param products the gas behind it
 * @param fuel fuel
 * @param inventory all of it
 * @param filling pressure, temperature and volume
 */
record TrappedCharge(
        GasMixture unburned, Products products, FuelMass fuel, Inventory inventory, ClosedCycle.Filling filling) {
    /**
     * All of the trapped gas.
     *
     * @param mass in kg
     * @param residual mass fraction left from the last cycle
     */
    record Inventory(double mass, double residual) {}

    /**
     * Fuel of one cycle in kg.
     *
     * @param metered all of it
     * @param vapour what is vapour when the flame comes, and burns
     */
    record FuelMass(double metered, double vapour) {}

    private static final double REFERENCE_K = 298.15;
    private static final double FILLING_EXPONENT = 0.5;
    /** Share of the fuel that evaporates at the expense of the air, while little of it does. */
    private static final double EVAPORATING = 0.35;
    /** Air that has been cooled so far in the inlet, or in the cylinder, takes up no more vapour. */
    private static final double MOST_COOLING_K = 30;

    private static final double PORT_HEATING_K = 16;
    private static final double COOLANT_WARM_K = 363.15;
    private static final double PER_COOLANT_K = 0.2;
    private static final double RESIDUAL_K = 1150;

    static TrappedCharge of(EngineDesign design, OperatingPoint point) {
        AirState air = point.surroundings().air();
        EngineFuel fuel = point.fuel();
        Lambda burning = fuel.vapourLambda(point.lambda());
        FreshCharge mixture = new FreshCharge(fuel, burning, air.humidityRatio());
        double boost = design.boost().pascals(point.rpm());
        double barometer = air.barometer().pascals();
        double ratio = (barometer + boost) / barometer;
        double dryPressure = air.dryPressure().pascals() * ratio;
        double inlet = air.temperature().kelvins()
                + design.boost().heating(air.temperature().kelvins(), ratio);
        double latent = fuel.evaporationKelvins(point.lambda());
        double cooling = -MOST_COOLING_K * Math.expm1(-EVAPORATING * latent / MOST_COOLING_K);
        double cooled = inlet - cooling;
        double room = 1 / (1 + cooling / latent * fuel.vapourPerAir(point.lambda()));
        double dense = dryPressure
                / (Air.GAS_CONSTANT * inlet)
                * Math.pow(inlet / REFERENCE_K, FILLING_EXPONENT)
                * Math.pow(inlet / cooled, FILLING_EXPONENT);
        double airMass =
                design.breathing().efficiency(point.rpm()) * design.cylinder().sweptVolume() * dense * room;
        double fuelMass = airMass / fuel.airPerFuel(point.lambda());
        double vapourMass = airMass / fuel.airPerFuel(burning);
        double freshMass = vapourMass * mixture.massPerFuel();

        Products products = Products.of(mixture, design.combustion().spread());
        GasMixture left = products.gas();
        double exhaustPressure = barometer + design.exhaust().pressureAbove(point.rpm()) + boost;
        double leftMass = exhaustPressure * design.cylinder().clearanceVolume() / (left.gasConstant() * RESIDUAL_K);
        GasMixture fresh = mixture.fresh();
        double freshK = cooled
                - cooling
                + PORT_HEATING_K
                + PER_COOLANT_K * (point.surroundings().coolant().kelvins() - COOLANT_WARM_K);
        double freshHeat = freshMass * (fresh.heatCapacity(freshK) + fresh.gasConstant());
        double leftHeat = leftMass * (left.heatCapacity(RESIDUAL_K) + left.gasConstant());
        double kelvins = (freshHeat * freshK + leftHeat * RESIDUAL_K) / (freshHeat + leftHeat);
        GasMixture unburned =
                GasMixture.builder().add(fresh, freshMass).add(left, leftMass).build();
        double mass = freshMass + leftMass;
        double deg = design.valves().inletClosesDeg() - 180;
        double volume = new SliderCrank(design.cylinder()).volume(deg);
        Gas.State state = new Gas.State(mass * unburned.gasConstant() * kelvins / volume, kelvins);
        return new TrappedCharge(
                unburned,
                products,
                new FuelMass(fuelMass, vapourMass),
                new Inventory(mass, leftMass / mass),
                new ClosedCycle.Filling(state, volume, deg));
    }
}
