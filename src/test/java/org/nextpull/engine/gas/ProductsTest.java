package org.nextpull.engine.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.unit.Lambda;

class ProductsTest {
    private static final double UNIVERSAL = 8.314462618;

    private static Products burn(EngineFuel fuel, double lambda, double spread) {
        return Products.of(new FreshCharge(fuel, Lambda.of(lambda), 0), spread);
    }

    private static double heatPerAir(double lambda, double spread) {
        return burn(TestFuels.PETROL, lambda, spread).heat() / lambda;
    }

    @Test
    void leanGasReleasesTheWholeHeatingValue() {
        assertThat(burn(TestFuels.PETROL, 1.2, 0).heat())
                .isCloseTo(TestFuels.PETROL.energy().lowerHeatingValue(), within(1e-6));
    }

    /** Combustion efficiency of rich mixture about 0.80 to 0.87 at fuel-air ratio 1.15 (Heywood, figure 3-9, from memory). */
    @Test
    void richGasKeepsChemicalEnergy() {
        double share = burn(TestFuels.PETROL, 1 / 1.15, 0).heat()
                / TestFuels.PETROL.energy().lowerHeatingValue();
        assertThat(share).isBetween(0.80, 0.87);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.7, 0.86, 0.95, 1.0, 1.1})
    void burningMakesMoreMolecules(double lambda) {
        FreshCharge mixture = new FreshCharge(TestFuels.E10, Lambda.of(lambda), 0.01);
        GasMixture gas = Products.of(mixture, 0).gas();
        double moles = gas.gasConstant() / UNIVERSAL * mixture.massPerFuel();
        double freshMoles = mixture.fresh().gasConstant() / UNIVERSAL * mixture.massPerFuel();
        // more molecules behind the flame than ahead of it, the richer the more: 5 to 20 % for petrol
        assertThat(moles / freshMoles).isBetween(1.02, 1.25);
    }

    @Test
    void richerGasHasMoreMoleculesForItsAir() {
        double rich = burn(TestFuels.PETROL, 0.8, 0).gas().gasConstant();
        double lean = burn(TestFuels.PETROL, 1.0, 0).gas().gasConstant();
        assertThat(rich).isGreaterThan(lean);
    }

    @Test
    void unevenMixtureMovesTheRichestEnergyToTheRichSide() {
        assertThat(heatPerAir(1.0, 0)).isGreaterThan(heatPerAir(0.94, 0));
        assertThat(heatPerAir(1.0, 0.1)).isLessThan(heatPerAir(0.94, 0.1));
        assertThat(heatPerAir(0.94, 0.1)).isLessThan(heatPerAir(0.94, 0));
    }

    @Test
    void energyForAirIsNearlyTheSameForAllListedFuels() {
        double petrol = TestFuels.PETROL.energy().lowerHeatingValue() / TestFuels.PETROL.stoichiometricRatio();
        double e85 = TestFuels.E85.energy().lowerHeatingValue() / TestFuels.E85.stoichiometricRatio();
        assertThat(e85 / petrol).isCloseTo(1.005, within(0.005));
    }
}
