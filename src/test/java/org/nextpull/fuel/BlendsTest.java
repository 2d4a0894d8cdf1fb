package org.nextpull.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.unit.Span;

class BlendsTest {
    private static final Place PLACE = Place.inFile("plan.toml").withKey("blend.of");
    private static final Blends LISTED = Blends.listed();

    @ParameterizedTest
    @CsvSource({
        "E85, e85",
        "gasoline, petrol",
        "E 10, e10",
        "e0, petrol",
        "e100, ethanol",
        "M100, methanol",
        "Iso-Octane, isooctane",
        "AVGAS, avgas-100ll"
    })
    void namesMatchWhateverTheirCaseAndSeparators(String written, String name) {
        assertThat(LISTED.find(written, PLACE).value()).map(Fuel::name).contains(name);
    }

    @ParameterizedTest
    @CsvSource({"ethanoll, ethanol", "metanol, methanol", "petrool, petrol", "e86, e85", "nitrometane, nitromethane"})
    void anUnknownFuelNamesTheNearest(String written, String near) {
        Finding finding = onlyError(LISTED.find(written, PLACE));
        assertThat(finding.code()).isEqualTo(FindingCode.FUEL_UNKNOWN);
        assertThat(finding.text("nearest").orElseThrow()).contains(near);
        assertThat(finding.place()).isEqualTo(PLACE);
    }

    @Test
    void aNameLikeNoOtherListsThemAll() {
        assertThat(onlyError(LISTED.find("unobtainium", PLACE)).text("nearest").orElseThrow())
                .contains("petrol", "e85", "methanol", "toluene");
    }

    @Test
    void waterIsAPartButNoFuel() {
        assertThat(onlyError(LISTED.find("water", PLACE)).code()).isEqualTo(FindingCode.FUEL_DOES_NOT_BURN);
        assertThat(LISTED.findPart("water", PLACE).value()).isPresent();
        assertThat(LISTED.names()).doesNotContain("water").contains("e10", "m85", "avgas-100ll");
        assertThat(LISTED.names()).doesNotHaveDuplicates();
    }

    @Test
    void aBlendByVolumeOfListedPartsIsTheListedBlend() {
        Fuel own = made(BlendRecipe.ofParts(
                "mine", Map.of("petrol", 0.15, "ethanol", 0.85), BlendRecipe.ShareBy.VOLUME, LISTED, PLACE));
        Fuel listed = LISTED.find("e85", PLACE).value().orElseThrow();
        assertThat(own.stoichiometricAirFuelRatio()).isCloseTo(listed.stoichiometricAirFuelRatio(), within(1e-12));
        assertThat(own.density().orElseThrow()).isCloseTo(listed.density().orElseThrow(), within(1e-9));
        assertThat(own.name()).isEqualTo("mine");
    }

    @Test
    void aBlendOfABlendIsTheBlendOfItsParts() {
        Fuel nested = made(BlendRecipe.ofParts(
                "n", Map.of("ethanol", 0.3, "e10", 0.7), BlendRecipe.ShareBy.VOLUME, LISTED, PLACE));
        Fuel flat = made(BlendRecipe.ofParts(
                "f", Map.of("ethanol", 0.37, "petrol", 0.63), BlendRecipe.ShareBy.VOLUME, LISTED, PLACE));
        assertThat(nested.stoichiometricAirFuelRatio()).isCloseTo(flat.stoichiometricAirFuelRatio(), within(1e-12));
        assertThat(nested.lowerHeatingValue().orElseThrow())
                .isCloseTo(flat.lowerHeatingValue().orElseThrow(), within(1e-3));
    }

    @Test
    void aBlendByMassTakesTheSharesAsTheyAre() {
        Fuel blend = made(BlendRecipe.ofParts(
                "b", Map.of("toluene", 0.4, "isooctane", 0.6), BlendRecipe.ShareBy.MASS, LISTED, PLACE));
        double toluene = LISTED.find("toluene", PLACE).value().orElseThrow().stoichiometricAirFuelRatio();
        double isooctane = LISTED.find("isooctane", PLACE).value().orElseThrow().stoichiometricAirFuelRatio();
        assertThat(blend.stoichiometricAirFuelRatio()).isCloseTo(0.4 * toluene + 0.6 * isooctane, within(1e-12));
    }

    @Test
    void octaneNumbersAreNotMixed() {
        Fuel blend = made(BlendRecipe.ofParts(
                "b", Map.of("toluene", 0.5, "petrol", 0.5), BlendRecipe.ShareBy.MASS, LISTED, PLACE));
        assertThat(blend.value(FuelProperty.RESEARCH_OCTANE)).isEmpty();
        assertThat(blend.value(FuelProperty.MOTOR_OCTANE)).isEmpty();
    }

    @Test
    void aSpreadOfTheBlendComesFromTheSpreadsOfItsParts() {
        SourcedFigure density = LISTED.find("e50", PLACE)
                .value()
                .orElseThrow()
                .sourced(FuelProperty.DENSITY)
                .orElseThrow();
        assertThat(density.spread().low()).isBetween(750.0, density.value());
        assertThat(density.spread().high()).isBetween(density.value(), 790.0);
        assertThat(density.source()).contains("petrol and ethanol");
    }

    @Test
    void aDataSheetOfElementsMakesAFuel() {
        Map<Element, Double> sheet = Map.of(Element.CARBON, 0.522, Element.HYDROGEN, 0.131, Element.OXYGEN, 0.347);
        Map<FuelProperty, SourcedFigure> figures =
                Map.of(FuelProperty.DENSITY, new SourcedFigure(794, Span.of(790, 798), "data sheet"));
        Fuel fuel = made(BlendRecipe.ofElements("race", sheet, figures, PLACE));
        assertThat(fuel.stoichiometricAirFuelRatio()).isCloseTo(9.0, within(0.02));
        assertThat(fuel.density()).hasValue(794);
        assertThat(fuel.lowerHeatingValue()).isEmpty();
    }

    @Test
    void roundedElementsAreTakenAsTheyAddUp() {
        Map<Element, Double> rounded = Map.of(Element.CARBON, 0.867, Element.HYDROGEN, 0.136);
        Outcome<Fuel> outcome = BlendRecipe.ofElements("r", rounded, Map.of(), PLACE);
        assertThat(outcome.findings()).isEmpty();
        double sum = outcome.value().orElseThrow().composition().massFractions().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        assertThat(sum).isCloseTo(1, within(1e-12));
    }

    @Test
    void elementsThatLeaveARestAreUsedWithAWarning() {
        Map<Element, Double> partial = Map.of(Element.CARBON, 0.80, Element.HYDROGEN, 0.13);
        Outcome<Fuel> outcome = BlendRecipe.ofElements("p", partial, Map.of(), PLACE);
        assertThat(outcome.value()).isPresent();
        assertThat(outcome.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.FUEL_REMAINDER_INERT);
            assertThat(finding.number("rest").orElseThrow()).isCloseTo(0.07, within(1e-9));
        });
    }

    @Test
    void negativeAndNonsenseFractionsAreAllNamed() {
        Map<Element, Double> elements = Map.of(Element.CARBON, -0.1, Element.HYDROGEN, Double.NaN, Element.OXYGEN, 0.3);
        Outcome<Fuel> outcome = BlendRecipe.ofElements("x", elements, Map.of(), PLACE);
        assertThat(outcome.isFailed()).isTrue();
        assertThat(outcome.findings())
                .hasSize(2)
                .allSatisfy(finding -> assertThat(finding.code()).isEqualTo(FindingCode.FUEL_FRACTION_NEGATIVE));
    }

    @Test
    void percentInPlaceOfFractionsIsRefused() {
        Map<Element, Double> percent = Map.of(Element.CARBON, 86.0, Element.HYDROGEN, 14.0);
        assertThat(onlyError(BlendRecipe.ofElements("x", percent, Map.of(), PLACE))
                        .code())
                .isEqualTo(FindingCode.FUEL_FRACTIONS_OVER_ONE);
        assertThat(onlyError(ofVolumes(Map.of("petrol", 0.9, "ethanol", 0.3)))
                        .number("sum")
                        .orElseThrow())
                .isCloseTo(1.2, within(1e-9));
    }

    @Test
    void partsThatAreMissingUnknownOrNegativeAreRefused() {
        assertThat(onlyError(ofVolumes(Map.of("petrol", 0.6))).code()).isEqualTo(FindingCode.FUEL_PARTS_MISSING);
        assertThat(onlyError(ofVolumes(Map.of("petrol", 0.6, "etanol", 0.4)))
                        .text("nearest")
                        .orElseThrow())
                .contains("ethanol");
        assertThat(onlyError(ofVolumes(Map.of("petrol", 1.2, "ethanol", -0.2))).code())
                .isEqualTo(FindingCode.FUEL_FRACTION_NEGATIVE);
        assertThat(onlyError(ofVolumes(Map.of())).code()).isEqualTo(FindingCode.FUEL_PARTS_MISSING);
    }

    @Test
    void whatDoesNotBurnIsNoFuel() {
        assertThat(onlyError(ofVolumes(Map.of("water", 1.0))).code()).isEqualTo(FindingCode.FUEL_DOES_NOT_BURN);
        assertThat(onlyError(BlendRecipe.ofElements("o", Map.of(Element.OXYGEN, 1.0), Map.of(), PLACE))
                        .code())
                .isEqualTo(FindingCode.FUEL_DOES_NOT_BURN);
        assertThat(onlyError(BlendRecipe.ofElements("none", Map.of(), Map.of(), PLACE))
                        .code())
                .isEqualTo(FindingCode.FUEL_DOES_NOT_BURN);
    }

    @Test
    void aPartWithoutDensityCannotBeMixedByVolume() {
        Map<Element, Double> sheet = Map.of(Element.CARBON, 0.86, Element.HYDROGEN, 0.14);
        Fuel sheetFuel = made(BlendRecipe.ofElements("sheet", sheet, Map.of(), PLACE));
        Blends more = LISTED.with(sheetFuel, PLACE).value().orElseThrow();
        Map<String, Double> shares = Map.of("sheet", 0.5, "ethanol", 0.5);
        assertThat(onlyError(BlendRecipe.ofParts("b", shares, BlendRecipe.ShareBy.VOLUME, more, PLACE))
                        .code())
                .isEqualTo(FindingCode.FUEL_DENSITY_UNKNOWN);
        assertThat(BlendRecipe.ofParts("b", shares, BlendRecipe.ShareBy.MASS, more, PLACE)
                        .value())
                .isPresent();
    }

    @Test
    void anOwnBlendIsFoundAndMayNotTakeAListedName() {
        Fuel own = made(ofVolumes(Map.of("petrol", 0.8, "ethanol", 0.2)));
        Blends more = LISTED.with(own, PLACE).value().orElseThrow();
        assertThat(more.find("Own", PLACE).value()).contains(own);
        assertThat(onlyError(more.with(own, PLACE)).code()).isEqualTo(FindingCode.FUEL_NAME_TAKEN);
        Fuel taken = made(BlendRecipe.ofParts("E-85", Map.of("ethanol", 1.0), BlendRecipe.ShareBy.MASS, LISTED, PLACE));
        assertThat(onlyError(LISTED.with(taken, PLACE)).code()).isEqualTo(FindingCode.FUEL_NAME_TAKEN);
        assertThat(LISTED.find("own", PLACE).isFailed()).isTrue();
    }

    @Test
    void sharesAreByVolumeOrMass() {
        assertThat(BlendRecipe.ShareBy.find("volume", PLACE).value()).contains(BlendRecipe.ShareBy.VOLUME);
        assertThat(BlendRecipe.ShareBy.find("mass", PLACE).value()).contains(BlendRecipe.ShareBy.MASS);
        assertThat(onlyError(BlendRecipe.ShareBy.find("weight", PLACE)).code())
                .isEqualTo(FindingCode.FUEL_SHARE_UNKNOWN);
    }

    @Test
    void cautionsFollowTheParts() {
        assertThat(cautions("methanol")).contains(Caution.POISONOUS, Caution.INVISIBLE_FLAME, Caution.CORROSIVE);
        assertThat(cautions("m15"))
                .contains(Caution.POISONOUS, Caution.SEPARATES_WITH_WATER)
                .doesNotContain(Caution.INVISIBLE_FLAME);
        assertThat(cautions("e10"))
                .contains(Caution.TAKES_UP_WATER)
                .doesNotContain(Caution.INVISIBLE_FLAME, Caution.DILUTES_OIL);
        assertThat(cautions("e98")).contains(Caution.INVISIBLE_FLAME);
        assertThat(cautions("avgas-100ll")).contains(Caution.LEAD);
        assertThat(cautions("nitromethane")).contains(Caution.EXPLOSIVE);
        Fuel leaded = made(ofVolumes(Map.of("avgas-100ll", 0.02, "petrol", 0.98)));
        assertThat(leaded.cautions()).contains(Caution.LEAD);
    }

    private static Set<Caution> cautions(String name) {
        return LISTED.find(name, PLACE).value().orElseThrow().cautions();
    }

    private static Outcome<Fuel> ofVolumes(Map<String, Double> shares) {
        return BlendRecipe.ofParts("own", shares, BlendRecipe.ShareBy.VOLUME, LISTED, PLACE);
    }

    private static Fuel made(Outcome<Fuel> outcome) {
        assertThat(outcome.findings()).isEmpty();
        return outcome.value().orElseThrow();
    }

    private static Finding onlyError(Outcome<?> outcome) {
        assertThat(outcome.isFailed()).isTrue();
        List<Finding> findings = outcome.findings();
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }
}
