package org.nextpull.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.ReferenceRow;
import org.nextpull.finding.Place;

/** Air-fuel ratios from elements, against a table computed from CcHhOo and against values in print. */
class StoichiometryTest {
    /** The tables print four decimals. */
    private static final double PRINTED_RATIO = 1e-4;
    /** Five decimals of mass fraction. */
    private static final double PRINTED_FRACTION = 1e-5;

    private static final Blends LISTED = Blends.listed();

    private static final Map<String, String> NAMES = Map.of(
            "gasoline", "petrol",
            "gasoline_CH1.87", "petrol",
            "MTBE", "mtbe",
            "nitromethane_CH3NO2", "nitromethane");

    static Stream<ReferenceRow> molecules() {
        return ReferenceRow.read("fuel_stoich.csv").stream();
    }

    static Stream<ReferenceRow> listedMolecules() {
        return molecules()
                .filter(row -> LISTED.find(name(row), Place.nowhere()).value().isPresent());
    }

    static Stream<ReferenceRow> publishedRatios() {
        return ReferenceRow.read("fuel_published.csv").stream()
                .filter(row -> row.text("quantity").equals("stoich_afr")
                        && !row.text("fuel").equals("diesel"));
    }

    static Stream<ReferenceRow> ethanolBlends() {
        return ReferenceRow.read("ethanol_blends.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("molecules")
    void aMoleculeHasTheRatioOfTheTable(ReferenceRow row) {
        Composition composition = composition(row);
        assertThat(composition.stoichiometricAirFuelRatio())
                .isCloseTo(row.number("afr_std_dry_air"), within(PRINTED_RATIO));
        assertThat(composition.fraction(Element.CARBON)).isCloseTo(row.number("mass_frac_C"), within(PRINTED_FRACTION));
        assertThat(composition.fraction(Element.HYDROGEN))
                .isCloseTo(row.number("mass_frac_H"), within(PRINTED_FRACTION));
        assertThat(composition.fraction(Element.OXYGEN)).isCloseTo(row.number("mass_frac_O"), within(PRINTED_FRACTION));
    }

    /** The handbook constant 34.56 is 0.03 % lower, the rounder air O2 + 3.76 N2 0.7 %. */
    @ParameterizedTest
    @MethodSource("molecules")
    void otherConventionsOfAirDifferByLessThanOnePercent(ReferenceRow row) {
        double ratio = composition(row).stoichiometricAirFuelRatio();
        assertThat(ratio).isCloseTo(row.number("afr_heywood"), Percentage.withPercentage(0.05));
        assertThat(ratio).isCloseTo(row.number("afr_o2_3.76n2"), Percentage.withPercentage(0.72));
        assertThat(ratio).isCloseTo(row.number("afr_mass23.2"), Percentage.withPercentage(0.28));
    }

    @ParameterizedTest
    @MethodSource("listedMolecules")
    void aListedFuelHasTheRatioOfItsMolecule(ReferenceRow row) {
        assertThat(fuel(name(row)).stoichiometricAirFuelRatio())
                .isCloseTo(row.number("afr_std_dry_air"), within(PRINTED_RATIO));
    }

    /** Mass fractions as a data sheet prints them; the printed five decimals move the ratio by 4e-4 at most. */
    @ParameterizedTest
    @MethodSource("molecules")
    void elementsByMassGiveTheSameRatioAsAtoms(ReferenceRow row) {
        Composition sheet = new Composition(Map.of(
                Element.CARBON, row.number("mass_frac_C"),
                Element.HYDROGEN, row.number("mass_frac_H"),
                Element.OXYGEN, row.number("mass_frac_O")));
        assertThat(sheet.stoichiometricAirFuelRatio()).isCloseTo(row.number("afr_std_dry_air"), within(4e-4));
    }

    @ParameterizedTest
    @MethodSource("publishedRatios")
    void theComputedRatioLiesNearEveryPublishedOne(ReferenceRow row) {
        double tolerance = 1.3;
        assertThat(fuel(name(row)).stoichiometricAirFuelRatio())
                .isCloseTo(row.number("value_SI"), Percentage.withPercentage(tolerance));
    }

    @ParameterizedTest
    @MethodSource("ethanolBlends")
    void ethanolBlendsMixByMassFromTheirElements(ReferenceRow row) {
        Fuel blend = fuel(row.text("blend"));
        assertThat(blend.stoichiometricAirFuelRatio()).isCloseTo(row.number("afr_stoich"), within(2 * PRINTED_RATIO));
        assertThat(blend.density().orElseThrow() / 1000).isCloseTo(row.number("density_kg_L"), within(1e-4));
        assertThat(blend.composition().fraction(Element.OXYGEN))
                .isCloseTo(row.number("mass_frac_O"), within(2 * PRINTED_FRACTION));
        assertThat(blend.value(FuelProperty.ALCOHOL_BY_VOLUME).orElseThrow())
                .isCloseTo(row.number("vol_frac_ethanol"), within(1e-9));
        FuelFacts.EnergyContent energy = FuelFacts.EnergyContent.of(blend).orElseThrow();
        assertThat(energy.perKilogram() / 1e6).isCloseTo(row.number("lhv_MJ_kg"), within(1e-3));
        assertThat(energy.perCubicMetre().orElseThrow() / 1e9).isCloseTo(row.number("lhv_MJ_L"), within(1e-3));
        assertThat(energy.perKilogramOfMixture() / 1e6).isCloseTo(row.number("mj_per_kg_mixture"), within(1e-4));
        assertThat(energy.perKilogramOfAir() / 1e6).isCloseTo(row.number("mj_per_kg_air"), within(1e-4));
    }

    @Test
    void mixingRatiosByVolumeWouldBeTooHigh() {
        ethanolBlends()
                .filter(row -> row.number("vol_frac_ethanol") > 0 && row.number("vol_frac_ethanol") < 1)
                .forEach(row -> assertThat(row.number("afr_pure_vol_mix"))
                        .isGreaterThan(fuel(row.text("blend")).stoichiometricAirFuelRatio()));
    }

    @Test
    void aCompositionRefusesWhatIsNoComposition() {
        assertThatThrownBy(() -> new Composition(Map.of(Element.CARBON, -0.1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Composition(Map.of(Element.CARBON, 0.9, Element.HYDROGEN, 0.2)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Composition(Map.of(Element.CARBON, Double.NaN)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Composition composition(ReferenceRow row) {
        double nitrogen = row.text("fuel").contains("NO2") ? 1 : 0;
        return Composition.ofAtoms(Map.of(
                Element.CARBON, row.number("c"),
                Element.HYDROGEN, row.number("h"),
                Element.OXYGEN, row.number("o"),
                Element.NITROGEN, nitrogen));
    }

    private static String name(ReferenceRow row) {
        return NAMES.getOrDefault(row.text("fuel"), row.text("fuel"));
    }

    private static Fuel fuel(String name) {
        return LISTED.find(name, Place.nowhere()).value().orElseThrow(() -> new AssertionError(name));
    }
}
