package org.nextpull.fuel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.ReferenceRow;
import org.nextpull.finding.Place;
import org.nextpull.unit.Span;

/** Listed figures against the published ones: each spread holds what is in print. */
class PublishedFuelTest {
    private record Kind(FuelProperty property, double toSi) {}

    private static final Map<String, Kind> KINDS = Map.of(
            "lhv_MJ_kg", new Kind(FuelProperty.LOWER_HEATING_VALUE, 1e6),
            "lhv_MJ_kg_low", new Kind(FuelProperty.LOWER_HEATING_VALUE, 1e6),
            "lhv_MJ_kg_high", new Kind(FuelProperty.LOWER_HEATING_VALUE, 1e6),
            "density_kg_L", new Kind(FuelProperty.DENSITY, 1000),
            "density_kg_L_low", new Kind(FuelProperty.DENSITY, 1000),
            "density_kg_L_high", new Kind(FuelProperty.DENSITY, 1000),
            "latent_kJ_kg", new Kind(FuelProperty.LATENT_HEAT, 1000),
            "stoich_afr", new Kind(FuelProperty.PRINTED_AIR_FUEL_RATIO, 1));

    static Stream<ReferenceRow> published() {
        return ReferenceRow.read("fuel_published.csv").stream()
                .filter(row -> KINDS.containsKey(row.text("quantity"))
                        && !row.text("fuel").equals("diesel"));
    }

    /** The handbooks' rounding of the fifth digit is left out of the comparison. */
    @ParameterizedTest
    @MethodSource("published")
    void theSpreadOfAListedFigureHoldsThePublishedValue(ReferenceRow row) {
        Kind kind = Optional.ofNullable(KINDS.get(row.text("quantity"))).orElseThrow();
        Fuel fuel = Blends.listed()
                .findPart(row.text("fuel"), Place.nowhere())
                .value()
                .orElseThrow();
        Span spread = fuel.sourced(kind.property()).orElseThrow().spread();
        double value = row.number("value_SI") * kind.toSi();
        assertThat(value).isBetween(spread.low() * 0.9998, spread.high() * 1.0002);
    }

    /** Energy of a litre, printed beside that of a kilogram: within the spread of the density. */
    @Test
    void theEnergyOfALitreIsThatInPrint() {
        ReferenceRow.read("fuel_published.csv").stream()
                .filter(row -> row.text("quantity").equals("lhv_MJ_L"))
                .forEach(row -> {
                    Fuel fuel = Blends.listed()
                            .find(row.text("fuel"), Place.nowhere())
                            .value()
                            .orElseThrow();
                    double perLitre = FuelFacts.EnergyContent.of(fuel)
                                    .orElseThrow()
                                    .perCubicMetre()
                                    .orElseThrow()
                            / 1e9;
                    assertThat(perLitre / row.number("value_SI"))
                            .as(row.toString())
                            .isBetween(0.99, 1.011);
                });
    }

    @Test
    void everyListedFigureNamesItsSource() {
        for (Fuel fuel : Blends.listed().all()) {
            assertThat(fuel.properties()).as(fuel.name()).isNotEmpty();
            fuel.properties()
                    .values()
                    .forEach(figure -> assertThat(figure.source())
                            .as(fuel.name())
                            .containsAnyOf("seen", "from memory", "no source", "definition", "computed"));
            assertThat(fuel.cautions()).as(fuel.name()).contains(Caution.FLAMMABLE);
        }
    }
}
