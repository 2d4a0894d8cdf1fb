package org.nextpull.engine.gas;

import org.nextpull.unit.Lambda;

/**
 * What comes out of burning a mixture, and the heat of it, per kg of fuel.
 *
 * <p>Lean gas burns completely; rich gas keeps carbon monoxide and hydrogen in water-gas balance, K = 3.5 as frozen in expansion
 * (Heywood, Internal Combustion Engine Fundamentals, section 4.9.2, from memory). No cylinder is quite homogeneous, and hot gas
 * dissociates, so some oxygen stays unused even where the mean would use it all: the mixture is taken as a normal distribution of
 * lambda around its mean and the products are averaged over it. That moves the richest energy to the rich side of 1, as in engines.
 *
 * @param gas the products
 * @param heat heat of combustion in J per kg of fuel
 */
public record Products(GasMixture gas, double heat) {
    private static final double WATER_GAS = 3.5;
    private static final double CO_HEAT = 282.98e3;
    private static final double H2_HEAT = 241.83e3;
    /** Nodes so close that the corner at lambda 1 leaves no visible corner in the mean. */
    private static final int HALF_NODES = 48;

    private static final double WIDTH = 3;
    private static final double[] WEIGHTS = weights();
    private static final double LEAST_LAMBDA = 0.6;

    /**
     * Burns a mixture.
     *
     * @param mixture what burns
     * @param spread standard deviation of lambda within the cylinder
     */
    public static Products of(FreshCharge mixture, double spread) {
        EngineFuel.Elements elements = mixture.fuel().elements();
        double co = 0;
        double h2 = 0;
        double oxygen = 0;
        double weights = 0;
        for (int node = -HALF_NODES; node <= HALF_NODES; node++) {
            double z = WIDTH * node / HALF_NODES;
            double weight = weight(node);
            double lambda = Math.max(LEAST_LAMBDA, mixture.lambda().value() + spread * z);
            if (lambda < 1) {
                double carbonDioxide = carbonDioxide(elements, lambda);
                double water =
                        2 * lambda * elements.oxygenNeeded() + elements.oxygen() - elements.carbon() - carbonDioxide;
                co += weight * (elements.carbon() - carbonDioxide);
                h2 += weight * (elements.hydrogen() / 2 - water);
            } else {
                oxygen += weight * (lambda - 1) * elements.oxygenNeeded();
            }
            weights += weight;
        }
        return assemble(mixture, new Unused(co / weights, h2 / weights), oxygen / weights);
    }

    private static double weight(int node) {
        return WEIGHTS[node + HALF_NODES];
    }

    private static double[] weights() {
        double[] weights = new double[2 * HALF_NODES + 1];
        for (int node = -HALF_NODES; node <= HALF_NODES; node++) {
            double z = WIDTH * node / HALF_NODES;
            weights[node + HALF_NODES] = Math.exp(-z * z / 2);
        }
        return weights;
    }

    private record Unused(double carbonMonoxide, double hydrogen) {
        double heat() {
            return carbonMonoxide * CO_HEAT + hydrogen * H2_HEAT;
        }
    }

    private static Products assemble(FreshCharge mixture, Unused unused, double oxygen) {
        EngineFuel fuel = mixture.fuel();
        EngineFuel.Elements elements = fuel.elements();
        Lambda lambda = mixture.lambda();
        double air = fuel.airPerFuel(lambda);
        GasMixture.Builder builder = GasMixture.builder();
        Air.addInertTo(builder, air);
        double water = elements.hydrogen() / 2 - unused.hydrogen() + air * mixture.humidity() / Species.H2O.molarMass();
        GasMixture gas = builder.add(Species.CO2, elements.carbon() - unused.carbonMonoxide())
                .add(Species.CO, unused.carbonMonoxide())
                .add(Species.H2O, water)
                .add(Species.H2, unused.hydrogen())
                .add(Species.O2, oxygen)
                .add(Species.N2, elements.nitrogen() / 2)
                .build();
        return new Products(gas, fuel.energy().lowerHeatingValue() - unused.heat());
    }

    /** Carbon dioxide of rich gas in mol per kg of fuel: the positive root of the water-gas balance. */
    private static double carbonDioxide(EngineFuel.Elements elements, double lambda) {
        double carbon = elements.carbon();
        double spare = 2 * lambda * elements.oxygenNeeded() + elements.oxygen() - carbon;
        double a = WATER_GAS - 1;
        double b = WATER_GAS * (elements.hydrogen() / 2 - spare) + carbon + spare;
        double c = -carbon * spare;
        return (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
    }
}
