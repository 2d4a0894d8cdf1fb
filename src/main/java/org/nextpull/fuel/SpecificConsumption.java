package org.nextpull.fuel;

import org.nextpull.unit.Power;

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

    /** Consumption on another fuel that makes the same power from the same air. */
    public SpecificConsumption on(FlowComparison other) {
        return new SpecificConsumption(kilogramsPerJoule * other.massRatio());
    }

    /** Fuel flow in kg/s at a power of the crank. */
    public double flow(Power power) {
        return power.watts() * kilogramsPerJoule;
    }
}
