package org.nextpull.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fuel.InjectorDuty.Injectors;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Power;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Unit;

class FuelFlowTest {
    private static final Lambda STOICHIOMETRIC = Lambda.of(1);

    /** Trade facts, common practice, no source: E85 wants about 30 % more volume than petrol, methanol about twice. */
    @Test
    void alcoholsWantTheVolumeThatTheTradeKnows() {
        FlowComparison e85 = FlowComparison.atBestPower(fuel("e85"), fuel("petrol"));
        assertThat(e85.volumeRatio().orElseThrow()).isBetween(1.25, 1.50);
        FlowComparison e85AtEqualLambdaOverPumpPetrol = equalLambda("e85", "e10");
        assertThat(e85AtEqualLambdaOverPumpPetrol.volumeRatio().orElseThrow()).isBetween(1.28, 1.42);
        FlowComparison methanol = equalLambda("methanol", "petrol");
        assertThat(methanol.volumeRatio().orElseThrow()).isBetween(1.9, 2.3);
    }

    /** Trade fact, common practice, no source: the stoichiometry of E85 against methanol is about 9 to 6.5 for ethanol's part. */
    @Test
    void methanolWantsMoreThanEthanolByTheirStoichiometry() {
        assertThat(equalLambda("methanol", "ethanol").massRatio()).isCloseTo(9 / 6.47, within(0.01));
    }

    @Test
    void theMassRatioIsThatOfRatioTimesLambda() {
        FuelDose rich = new FuelDose(fuel("e85"), Lambda.of(0.82));
        FuelDose petrol = new FuelDose(fuel("petrol"), Lambda.of(0.88));
        FlowComparison comparison = FlowComparison.between(rich, petrol);
        assertThat(comparison.massRatio()).isCloseTo(14.6040 * 0.88 / (9.8006 * 0.82), within(1e-4));
        FlowComparison back = FlowComparison.between(petrol, rich);
        assertThat(back.massRatio() * comparison.massRatio()).isCloseTo(1, within(1e-12));
        assertThat(back.volumeRatio().orElseThrow() * comparison.volumeRatio().orElseThrow())
                .isCloseTo(1, within(1e-12));
        assertThat(comparison.diameterRatio().orElseThrow())
                .isCloseTo(Math.sqrt(comparison.areaRatio().orElseThrow()), within(1e-12));
    }

    /** A jet passes mass with its area and the root of the density, so its ratio lies between those of mass and volume. */
    @Test
    void aJetGrowsLessThanTheVolumeForALighterFuel() {
        FlowComparison comparison = equalLambda("methanol", "petrol");
        assertThat(comparison.areaRatio().orElseThrow())
                .isBetween(comparison.volumeRatio().orElseThrow(), comparison.massRatio());
        assertThat(equalLambda("petrol", "petrol").areaRatio().orElseThrow()).isEqualTo(1);
    }

    @Test
    void withoutADensityThereIsAMassButNoVolume() {
        Fuel sheet = BlendRecipe.ofElements(
                        "s", Map.of(Element.CARBON, 0.86, Element.HYDROGEN, 0.14), Map.of(), Place.nowhere())
                .value()
                .orElseThrow();
        FlowComparison comparison = FlowComparison.atBestPower(sheet, fuel("petrol"));
        assertThat(comparison.massRatio()).isCloseTo(0.88, within(0.02));
        assertThat(comparison.volumeRatio()).isEmpty();
        assertThat(comparison.areaRatio()).isEmpty();
        assertThat(comparison.diameterRatio()).isEmpty();
        assertThat(FuelFacts.EnergyContent.of(sheet)).isEmpty();
        assertThat(comparison.dose().coolingKelvins(1)).isEmpty();
    }

    /** Heywood 1988, section 6.2, from memory: full evaporation cools isooctane mixture by 19 K, methanol by 128 K. */
    @Test
    void evaporationCoolsTheChargeAsTheHandbookSays() {
        assertThat(cooling("isooctane", 1)).isCloseTo(19, Percentage.withPercentage(8));
        assertThat(cooling("methanol", 1)).isCloseTo(128, Percentage.withPercentage(5));
        assertThat(cooling("ethanol", 1)).isBetween(cooling("petrol", 1) * 3, cooling("methanol", 1));
        assertThat(cooling("ethanol", 0.5)).isCloseTo(cooling("ethanol", 1) / 2, within(1e-9));
    }

    @Test
    void richerMixtureCoolsMore() {
        double rich =
                new FuelDose(fuel("e85"), Lambda.of(0.8)).coolingKelvins(1).orElseThrow();
        double lean = new FuelDose(fuel("e85"), Lambda.of(1)).coolingKelvins(1).orElseThrow();
        assertThat(rich).isGreaterThan(lean * 1.15);
    }

    /** 0.5 lb/(hp.h) is 304 g/(kW.h), units.csv; 200 hp at it burn 100 lb/h. */
    @Test
    void consumptionAndPowerGiveTheFlow() {
        InjectorDuty.SpecificConsumption consumption =
                new InjectorDuty.SpecificConsumption(Unit.POUND_PER_HORSEPOWER_HOUR.toSi(0.5));
        assertThat(Unit.GRAM_PER_KILOWATT_HOUR.fromSi(consumption.kilogramsPerJoule()))
                .isCloseTo(304.1386939, within(1e-6));
        double flow = consumption.flow(Power.ofWatts(Unit.HORSEPOWER.toSi(200)));
        assertThat(Unit.POUND_PER_HOUR.fromSi(flow)).isCloseTo(100, within(1e-9));
        InjectorDuty.SpecificConsumption onE85 = consumption.on(equalLambda("e85", "petrol"));
        assertThat(onE85.kilogramsPerJoule() / consumption.kilogramsPerJoule())
                .isCloseTo(14.6040 / 9.8006, within(1e-4));
        assertThatThrownBy(() -> new InjectorDuty.SpecificConsumption(0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** By hand: 200 hp at 0.5 lb/(hp.h) on four injectors of 31.25 lb/h is 80 %. */
    @Test
    void dutyIsNeededOverHeldOpenFlow() {
        Pressure rated = Pressure.ofKilopascals(300);
        double each = Unit.POUND_PER_HOUR.toSi(31.25);
        Injectors injectors = new Injectors(4, new InjectorDuty.Rating(each, rated, 745));
        double flow = Unit.POUND_PER_HOUR.toSi(100);
        InjectorDuty duty = made(InjectorDuty.of(flow, injectors, rated, fuel("petrol")));
        assertThat(duty.fraction()).isCloseTo(0.8, within(1e-9));
        assertThat(duty.sizeRatio()).isCloseTo(0.8 / 0.85, within(1e-9));
        InjectorDuty atFourfold = made(InjectorDuty.of(flow, injectors, Pressure.ofKilopascals(1200), fuel("petrol")));
        assertThat(atFourfold.fraction()).isCloseTo(0.4, within(1e-9));
    }

    @Test
    void aRatingByVolumeIsTurnedByTheTestLiquid() {
        double volume = Unit.CUBIC_CENTIMETRE_PER_MINUTE.toSi(440);
        InjectorDuty.Rating rating = InjectorDuty.Rating.ofVolume(
                volume, Pressure.ofKilopascals(300), InjectorDuty.Rating.USUAL_TEST_DENSITY);
        assertThat(rating.kilogramsPerSecond()).isCloseTo(440e-6 / 60 * 684, within(1e-12));
        assertThat(rating.flow(Pressure.ofKilopascals(300), 684 * 1.21))
                .isCloseTo(rating.kilogramsPerSecond() * 1.1, within(1e-12));
    }

    @Test
    void injectorsThatAreTooSmallAreFlaggedAndUselessInputRefused() {
        Pressure rated = Pressure.ofKilopascals(300);
        Injectors injectors = new Injectors(4, new InjectorDuty.Rating(0.004, rated, 745));
        assertThat(codes(InjectorDuty.of(0.0145, injectors, rated, fuel("petrol"))))
                .isEqualTo(FindingCode.FUEL_INJECTOR_DUTY_HIGH);
        assertThat(codes(InjectorDuty.of(0.0165, injectors, rated, fuel("petrol"))))
                .isEqualTo(FindingCode.FUEL_INJECTORS_TOO_SMALL);
        assertThat(codes(InjectorDuty.of(0, injectors, rated, fuel("petrol"))))
                .isEqualTo(FindingCode.FUEL_INJECTOR_INPUT);
        assertThat(codes(InjectorDuty.of(0.01, injectors, Pressure.ofPascals(0), fuel("petrol"))))
                .isEqualTo(FindingCode.FUEL_INJECTOR_INPUT);
        assertThatThrownBy(() -> new Injectors(0, injectors.rating())).isInstanceOf(IllegalArgumentException.class);
    }

    /** By hand, volumes added: 20 L of ethanol and 1 L of water are 95.24 % by volume. */
    @Test
    void aLitreOfWaterThinsTheAlcohol() {
        WaterAdded added = made(WaterAdded.to(fuel("ethanol"), 1 / 20.0));
        assertThat(added.alcoholAfter()).isCloseTo(20 / 21.0, within(1e-12));
        assertThat(added.after().value(FuelProperty.ALCOHOL_BY_VOLUME).orElseThrow())
                .isCloseTo(added.alcoholAfter(), within(1e-12));
        double ethanolMass = 20 * 794.0;
        double share = ethanolMass / (ethanolMass + 998.2);
        assertThat(added.after().stoichiometricAirFuelRatio()).isCloseTo(9.0053 * share, within(1e-4));
        assertThat(added.flow().massRatio()).isCloseTo(1 / share, within(1e-9));
        double energy = share * 26.95e6 - (1 - share) * 2442e3;
        assertThat(added.after().lowerHeatingValue().orElseThrow()).isCloseTo(energy, within(1.0));
        assertThat(cooling(added.after())).isGreaterThan(cooling("ethanol", 1));
    }

    @Test
    void waterInPetrolBlendsIsFlaggedAndInPetrolRefused() {
        assertThat(codes(WaterAdded.to(fuel("e10"), 0.01))).isEqualTo(FindingCode.FUEL_WATER_MAY_SEPARATE);
        assertThat(WaterAdded.to(fuel("e10"), 0.004).findings()).isEmpty();
        assertThat(WaterAdded.to(fuel("methanol"), 0.2).findings()).isEmpty();
        assertThat(codes(WaterAdded.to(fuel("petrol"), 0.01))).isEqualTo(FindingCode.FUEL_WATER_DOES_NOT_MIX);
        assertThat(codes(WaterAdded.to(fuel("race-oxygenated"), 0.01))).isEqualTo(FindingCode.FUEL_ALCOHOL_UNKNOWN);
        assertThat(codes(WaterAdded.to(fuel("ethanol"), -0.1))).isEqualTo(FindingCode.FUEL_WATER_SHARE);
        assertThat(codes(WaterAdded.to(fuel("ethanol"), Double.NaN))).isEqualTo(FindingCode.FUEL_WATER_SHARE);
    }

    /** At equal air and lambda petrol and ethanol differ by 0.6 % in energy, not by the 1.6 of their heating values. */
    @Test
    void energyForTheSameAirIsNearlyTheSame() {
        double petrol = FuelFacts.EnergyContent.of(fuel("petrol")).orElseThrow().perKilogramOfAir();
        double ethanol =
                FuelFacts.EnergyContent.of(fuel("ethanol")).orElseThrow().perKilogramOfAir();
        assertThat(ethanol / petrol).isCloseTo(1.006, within(0.001));
    }

    private static FlowComparison equalLambda(String fuel, String against) {
        return FlowComparison.between(
                new FuelDose(fuel(fuel), STOICHIOMETRIC), new FuelDose(fuel(against), STOICHIOMETRIC));
    }

    private static double cooling(String name, double part) {
        return new FuelDose(fuel(name), STOICHIOMETRIC).coolingKelvins(part).orElseThrow();
    }

    private static double cooling(Fuel fuel) {
        return new FuelDose(fuel, STOICHIOMETRIC).coolingKelvins(1).orElseThrow();
    }

    private static <T> T made(Outcome<T> outcome) {
        assertThat(outcome.findings()).isEmpty();
        return outcome.value().orElseThrow();
    }

    private static FindingCode codes(Outcome<?> outcome) {
        assertThat(outcome.findings()).hasSize(1);
        return outcome.findings().get(0).code();
    }

    private static Fuel fuel(String name) {
        return Blends.listed().find(name, Place.nowhere()).value().orElseThrow(() -> new AssertionError(name));
    }
}
