package org.nextpull.fuel;

import org.nextpull.unit.Power;
import org.nextpull.unit.Unit;

/**
 * Fuel for each unit of work at the crank (brake specific fuel consumption).
 *
 * @param kilogramsPerJoule kg of fuel for a joule at the crank, positive and finite
 */
public record SpecificConsumption(double kilogramsPerJoule) {
    /**
     * Accepts any positive finite consumption.
     *
     * @throws IllegalArgumentException when it is NaN, infinite, 0 or negative
     */
    public SpecificConsumption {
        if (!(kilogramsPerJoule > 0) || !Double.isFinite(kilogramsPerJoule)) {
            throw new IllegalArgumentException("a specific consumption is positive: " + kilogramsPerJoule);
        }
    }

    /**
     * In the usual unit: petrol at full load 270 to 330 (common practice, no source).
     *
     * @param grams in g/(kW.h), positive and finite
     * @throws IllegalArgumentException when it is NaN, infinite, 0 or negative
     */
    public static SpecificConsumption ofGramsPerKilowattHour(double grams) {
        return new SpecificConsumption(Unit.GRAM_PER_KILOWATT_HOUR.toSi(grams));
    }

    /**
     * In pounds: petrol at full load 0.45 to 0.55 (common practice, no source).
     *
     * @param pounds in lb/(hp.h), positive and finite
     * @throws IllegalArgumentException when it is NaN, infinite, 0 or negative
     */
    public static SpecificConsumption ofPoundsPerHorsepowerHour(double pounds) {
        return new SpecificConsumption(Unit.POUND_PER_HORSEPOWER_HOUR.toSi(pounds));
    }

    /** In g/(kW.h). */
    public double gramsPerKilowattHour() {
        return Unit.GRAM_PER_KILOWATT_HOUR.fromSi(kilogramsPerJoule);
    }

    /** Consumption on another fuel that makes the same power from the same air. */
    public SpecificConsumption on(FlowComparison other) {
        return new SpecificConsumption(kilogramsPerJoule * other.massRatio());
    }

    /** Fuel flow in kg/s at a power of the crank. */
    public double flow(Power power) {
        return power.watts() * kilogramsPerJoule;
    }
}
