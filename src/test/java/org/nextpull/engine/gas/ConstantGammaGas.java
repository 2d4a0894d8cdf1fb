package org.nextpull.engine.gas;

/**
 * A perfect gas: heat capacities that do not depend on temperature, as in the air-standard cycle.
 *
 * @param gasConstant specific gas constant in J/(kg.K), positive
 * @param gamma ratio of specific heats, above 1
 */
public record ConstantGammaGas(double gasConstant, double gamma) implements Gas {
    private static final double REFERENCE_K = 298.15;

    public ConstantGammaGas {
        if (!(gasConstant > 0) || !(gamma > 1)) {
            throw new IllegalArgumentException("not a gas: R " + gasConstant + ", gamma " + gamma);
        }
    }

    @Override
    public double heatCapacity(double kelvins) {
        return gasConstant / (gamma - 1);
    }

    @Override
    public double internalEnergy(double kelvins) {
        return heatCapacity(kelvins) * (kelvins - REFERENCE_K);
    }
}
