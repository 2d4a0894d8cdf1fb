package org.nextpull.engine.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GasMixtureTest {
    private static final double UNIVERSAL = 8.314462618;

    private static Species species(String name) {
        return switch (name) {
            case "N2" -> Species.N2;
            case "O2" -> Species.O2;
            case "CO2" -> Species.CO2;
            case "H2O" -> Species.H2O;
            case "CO" -> Species.CO;
            case "H2" -> Species.H2;
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static GasMixture pure(String name) {
        return GasMixture.builder().add(species(name), 1).build();
    }

    /** Molar heat capacities at constant pressure in J/(mol.K): NIST-JANAF thermochemical tables, from memory. */
    @ParameterizedTest
    @CsvSource({
        "N2,300,29.125",
        "N2,1000,32.697",
        "N2,2000,35.971",
        "O2,300,29.385",
        "O2,1000,34.870",
        "O2,2000,37.741",
        "CO2,300,37.221",
        "CO2,1000,54.308",
        "CO2,2000,60.350",
        "H2O,300,33.596",
        "H2O,1000,41.268",
        "CO,300,29.142",
        "CO,1000,33.183",
        "CO,2000,36.250",
        "H2,300,28.849",
        "H2,1000,30.205",
        "H2,2000,34.280"
    })
    void heatCapacitiesAreThoseOfTheTables(String name, double kelvins, double tabled) {
        GasMixture gas = pure(name);
        double molar =
                (gas.heatCapacity(kelvins) + gas.gasConstant()) * species(name).molarMass();
        assertThat(molar).isCloseTo(tabled, within(0.004 * tabled));
    }

    /** JANAF has 51.18 J/(mol.K) for water at 2000 K; later partition functions (Woolley 1987, from memory) lie 1.1 % above it. */
    @Test
    void hotWaterVapourLiesBetweenTheOldTableAndTheNew() {
        GasMixture water = pure("H2O");
        double molar = (water.heatCapacity(2000) + water.gasConstant()) * Species.H2O.molarMass();
        assertThat(molar).isBetween(51.1, 51.9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"N2", "O2", "CO2", "H2O", "CO", "H2"})
    void internalEnergyIsTheIntegralOfTheHeatCapacityAcrossTheSeam(String name) {
        GasMixture gas = pure(name);
        double step = 0.5;
        double sum = 0;
        for (double kelvins = 298.15; kelvins < 2298; kelvins += step) {
            sum += gas.heatCapacity(kelvins + step / 2) * step;
        }
        assertThat(gas.internalEnergy(298.15)).isCloseTo(0, within(1e-6));
        assertThat(gas.internalEnergy(2298.15)).isCloseTo(sum, within(1e-5 * sum));
    }

    /** Dry air: R 287.05 J/(kg.K), cp 1.005 kJ/(kg.K) at 300 K; any handbook of thermodynamics, from memory. */
    @Test
    void dryAirIsDryAir() {
        GasMixture air = Air.addTo(GasMixture.builder(), 1).build();
        assertThat(air.gasConstant()).isCloseTo(287.05, within(0.1));
        assertThat(air.heatCapacity(300) + air.gasConstant()).isCloseTo(1005, within(3.0));
    }

    @Test
    void amountsAndMassesOfTheSameGasMixAlike() {
        GasMixture parts = GasMixture.builder()
                .add(pure("N2"), 3 * Species.N2.molarMass())
                .add(pure("CO2"), Species.CO2.molarMass())
                .build();
        GasMixture whole =
                GasMixture.builder().add(Species.N2, 3).add(Species.CO2, 1).build();
        assertThat(parts.gasConstant()).isCloseTo(whole.gasConstant(), within(1e-9));
        assertThat(parts.heatCapacity(1500)).isCloseTo(whole.heatCapacity(1500), within(1e-9));
        assertThat(parts.internalEnergy(700)).isCloseTo(whole.internalEnergy(700), within(1e-6));
        assertThat(whole.gasConstant())
                .isCloseTo(4 * UNIVERSAL / (3 * Species.N2.molarMass() + Species.CO2.molarMass()), within(1e-9));
    }

    /** Vapour heat capacities from memory: isooctane 1.65, ethanol 1.42 kJ/(kg.K) at 300 K. */
    @Test
    void fuelVapourHasTheHeatCapacityOfItsFuel() {
        GasMixture petrol = GasMixture.builder().addVapour(TestFuels.PETROL, 1).build();
        GasMixture ethanol =
                GasMixture.builder().addVapour(TestFuels.fuel("ethanol"), 1).build();
        assertThat(petrol.heatCapacity(300) + petrol.gasConstant()).isCloseTo(1650, within(30.0));
        assertThat(ethanol.heatCapacity(300) + ethanol.gasConstant()).isCloseTo(1420, within(30.0));
    }
}
