package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.ReferenceRow;

/** {@code air} as an operator uses it. */
class AirCommandTest {
    private static final Map<String, String> COLUMNS = Map.of(
            "sae-j1349-2004", "sae_j1349_aug04",
            "sae-j1349-1990", "sae_j1349_jun90",
            "iso-1585", "iso1585_r85_jis_si",
            "din-70020", "din70020_total",
            "sae-j607", "sae_j607_std");

    /** The printed digits of the table and the five places of JSON. */
    private static final double ROUNDING = 1.1e-5;

    static Stream<ReferenceRow> factors() {
        return ReferenceRow.read("correction_factors.csv").stream()
                .filter(row -> !row.text("rh").isEmpty());
    }

    /** Outside table of factors, with vapour pressure by another program. */
    @ParameterizedTest
    @MethodSource("factors")
    void everyStandardGivesTheFactorOfTheTable(ReferenceRow row) {
        JsonNode document = Run.of("air --baro " + row.text("baro_kPa") + "kPa --air " + row.text("t_C")
                        + "C --humidity " + 100 * row.number("rh") + "% --json")
                .json();
        COLUMNS.forEach((standard, column) -> assertThat(
                        factor(document, standard).path("factor").asDouble())
                .as(standard)
                .isCloseTo(row.number(column), within(ROUNDING)));
        assertThat(factor(document, "sae-j1349-2004").path("within_range").asBoolean())
                .isEqualTo(Boolean.parseBoolean(row.text("sae_valid")));
        assertThat(factor(document, "iso-1585").path("within_range").asBoolean())
                .isEqualTo(Boolean.parseBoolean(row.text("iso_si_valid")));
    }

    private static JsonNode factor(JsonNode document, String standard) {
        for (JsonNode row : document.path("standards")) {
            if (row.path("standard").asText().equals(standard)) {
                return row;
            }
        }
        throw new AssertionError("no standard " + standard);
    }

    static Stream<ReferenceRow> wetBulbs() {
        return ReferenceRow.read("wetbulb.csv").stream();
    }

    /** Outside table of wet bulbs, ASHRAE energy balance. */
    @ParameterizedTest
    @MethodSource("wetBulbs")
    void aWetBulbGivesTheVapourPressureOfTheTable(ReferenceRow row) {
        JsonNode air = Run.of("air --baro " + row.number("p_Pa") / 1000 + "kPa --air " + row.text("t_C")
                        + "C --wet-bulb " + row.text("twb_C") + "C --json")
                .json()
                .path("air");
        assertThat(1000 * air.path("vapour_kpa").asDouble()).isCloseTo(row.number("pv_ashrae_Pa"), within(0.6));
        assertThat(air.path("wet_bulb_c").asDouble()).isCloseTo(row.number("twb_C"), within(0.02));
    }

    /** A worked example of the trade for the withdrawn standard: 55 °F, 35 %, 30.10 inHg give 0.994. */
    @Test
    void americanReadingsGiveTheTradesExample() {
        JsonNode document =
                Run.of("air --baro 30.10inHg --air 55F --humidity 35% --json").json();
        assertThat(factor(document, "sae-j607").path("factor").asDouble()).isCloseTo(0.994, within(1e-3));
    }

    @Test
    void theSameAirInOtherUnitsIsTheSameAir() {
        JsonNode metric =
                Run.of("air --baro 98kPa --air 30C --dew-point 15C --json").json();
        assertThat(Run.of("air --baro 980hPa --air 86F --dew-point 59F --json").json())
                .isEqualTo(metric);
        assertThat(Run.of("air --baro 980hPa --air 86F --dew-point 59F --json --units us")
                        .json())
                .isEqualTo(metric);
    }

    @Test
    void americanUnitsAreShownWhereTheyAreAskedFor() {
        Run run = Run.of("air --baro 29.92inHg --air 95F --wet-bulb 75F --altitude 2000ft --units us");
        assertThat(run.status()).isZero();
        assertThat(run.out())
                .contains("29.92 inHg")
                .contains("95.0 °F")
                .contains("lb/ft³")
                .contains(" ft\n");
        assertThat(run.out()).doesNotContain("kPa").doesNotContain("°C");
        assertThat(run.err())
                .contains("sea-level pressure")
                .contains("inHg")
                .contains("2000 ft")
                .doesNotContain("kPa");
    }

    /** By ISO 1585 10 K more cost (308/298)^0.6 - 1 = 2.0 % and 1 kPa less 1.2 %: the formula of the standard. */
    @Test
    void laterWeatherTakesWhatTheFormulaOfTheStandardSays() {
        JsonNode later = Run.of("air --baro 99kPa --air 25C --humidity 0% --later air=35C,baro=98kPa --json")
                .json()
                .path("later");
        JsonNode iso = change(later, "iso-1585");
        assertThat(iso.path("by_temperature_percent").asDouble())
                .isCloseTo(100 * (Math.pow(298.0 / 308, 0.6) - 1), within(0.001));
        assertThat(iso.path("by_pressure_percent").asDouble())
                .isCloseTo(100 * (Math.pow(98.0 / 99, 1.2) - 1), within(0.001));
        assertThat(iso.path("by_moisture_percent").asDouble()).isZero();
    }

    private static JsonNode change(JsonNode later, String standard) {
        for (JsonNode row : later.path("changes")) {
            if (row.path("standard").asText().equals(standard)) {
                return row;
            }
        }
        throw new AssertionError("no standard " + standard);
    }

    @Test
    void waterThatIsNotGivenLaterStaysInTheAir() {
        JsonNode document = Run.of("air --baro 99kPa --air 20C --humidity 60% --later air=30C --json")
                .json();
        assertThat(document.path("later").path("air").path("vapour_kpa").asDouble())
                .isCloseTo(document.path("air").path("vapour_kpa").asDouble(), within(1e-4));
    }

    @Test
    void aFactorBeyondItsStandardIsShownAndSaidToBe() {
        Run run = Run.of("air --baro 88kPa --air 38C --humidity 30%");
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("OUTSIDE air 15 to 35 °C; dry pressure 90 to 105 kPa; factor 0.93 to 1.07");
        assertThat(run.out()).contains("OUTSIDE: this air is beyond what is allowed by sae-j1349-2004, ");
        assertThat(Run.of("air --baro 100kPa --air 20C --humidity 30% --later air=37C")
                        .out())
                .containsOnlyOnce("OUTSIDE: this air is beyond what is allowed by sae-j1349-2004");
        JsonNode sae = factor(
                Run.of("air --baro 88kPa --air 38C --humidity 30% --json").json(), "sae-j1349-2004");
        assertThat(sae.path("findings")).hasSize(3);
    }

    @Test
    void theDocumentHasTheKeysThatTheHandbookLists() {
        JsonNode document =
                Run.of("air --baro 98kPa --air 20C --humidity 50% --json").json();
        assertThat(keys(document)).containsExactly("schema", "air", "standards", "plan_standard", "later", "findings");
        assertThat(keys(document.path("air")))
                .containsExactly(
                        "baro_kpa",
                        "dry_kpa",
                        "vapour_kpa",
                        "air_c",
                        "humidity_percent",
                        "dew_point_c",
                        "wet_bulb_c",
                        "density_kg_m3",
                        "density_altitude_m");
        assertThat(document.path("later").isNull()).isTrue();
        assertThat(document.path("plan_standard").isNull()).isTrue();
    }

    private static List<String> keys(JsonNode node) {
        return Stream.generate(node.fieldNames()::next).limit(node.size()).toList();
    }

    @Test
    void aPlanFillsInWhatNoOptionGivesAndNamesItsStandard(@TempDir Path folder) throws IOException {
        Path plan = folder.resolve("plan.toml");
        Files.writeString(plan, "[air]\nstandard = \"iso-1585\"\nbaro_kpa = 98.5\nair_c = 24\nhumidity_percent = 50\n");
        JsonNode document = Run.of("air", "--plan", plan.toString(), "--air", "30C", "--json")
                .json();
        assertThat(document.path("air").path("baro_kpa").asDouble()).isEqualTo(98.5);
        assertThat(document.path("air").path("air_c").asDouble()).isEqualTo(30);
        assertThat(document.path("plan_standard").asText()).isEqualTo("iso-1585");
        assertThat(Run.of("air", "--plan", plan.toString()).out())
                .contains("The plan corrects by iso-1585: times 1.02");
    }
}
