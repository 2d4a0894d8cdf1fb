package org.nextpull.fuel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.nextpull.finding.Place;
import org.nextpull.unit.Span;

/** The rows of the table of fuels, and that the handbook prints the same ones. */
class FuelFactsTest {
    private static final Fuel PETROL =
            Blends.listed().find("petrol", Place.nowhere()).value().orElseThrow();

    @Test
    void aFuelBesideItselfNeedsTheSameFlow() {
        FuelFacts facts = FuelFacts.of(PETROL, PETROL);
        assertThat(facts.atEqualLambda().massRatio()).isEqualTo(1);
        assertThat(facts.atBestPower().orElseThrow().volumeRatio()).hasValue(1);
        assertThat(facts.airFuelRatio()).isEqualTo(PETROL.stoichiometricAirFuelRatio());
    }

    @Test
    void whatIsNotKnownIsLeftOut() {
        Fuel race =
                Blends.listed().find("race-oxygenated", Place.nowhere()).value().orElseThrow();
        FuelFacts facts = FuelFacts.of(race, PETROL);
        assertThat(facts.energy()).isEmpty();
        assertThat(facts.coolingKelvins()).isEmpty();
        assertThat(facts.atBestPower()).isEmpty();
        assertThat(facts.atEqualLambda().volumeRatio()).isPresent();
    }

    @Test
    void theHandbookListsEveryFuelWithItsFigures() throws IOException {
        List<String> page = Files.readAllLines(Path.of("src/site/markdown/air-and-fuel.md"));
        assertThat(page)
                .containsAll(
                        Blends.listed().all().stream().map(FuelFactsTest::row).toList());
    }

    private static String row(Fuel fuel) {
        FuelFacts facts = FuelFacts.of(fuel, PETROL);
        return String.format(
                Locale.ROOT,
                "| %s | %.2f | %s | %s | %s | %s | %s | %s | %s |",
                fuel.name(),
                facts.airFuelRatio(),
                span(fuel, FuelProperty.PRINTED_AIR_FUEL_RATIO, 1, "%.2f"),
                span(fuel, FuelProperty.DENSITY, 1, "%.0f"),
                span(fuel, FuelProperty.LOWER_HEATING_VALUE, 1e6, "%.2f"),
                span(fuel, FuelProperty.LATENT_HEAT, 1e3, "%.0f"),
                known(facts.coolingKelvins(), "%.0f"),
                known(facts.atEqualLambda().volumeRatio(), "%.2f"),
                span(fuel, FuelProperty.RESEARCH_OCTANE, 1, "%.0f"));
    }

    private static String span(Fuel fuel, FuelProperty property, double unit, String format) {
        return fuel.sourced(property)
                .map(figure -> text(figure.value() / unit, format) + between(figure.spread(), unit, format))
                .orElse("-");
    }

    private static String between(Span spread, double unit, String format) {
        String low = text(spread.low() / unit, format);
        String high = text(spread.high() / unit, format);
        return low.equals(high) ? "" : " (" + low + " to " + high + ")";
    }

    private static String known(OptionalDouble value, String format) {
        return value.isPresent() ? text(value.getAsDouble(), format) : "-";
    }

    private static String text(double value, String format) {
        return String.format(Locale.ROOT, format, value);
    }
}
