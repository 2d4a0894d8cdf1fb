package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.ReferenceRow;

/** {@code fuel} as an operator uses it. */
class FuelCommandTest {
    private static final List<String> FUEL_KEYS = List.of(
            "name",
            "afr",
            "elements",
            "figures",
            "air_energy_mj_kg",
            "mixture_energy_mj_kg",
            "cooling_k",
            "flow",
            "cautions");

    /** Common practice, no source: 12.6 on the petrol scale is 8.4 on E85's scale at 9.8, and the other way round. */
    @Test
    void aGaugeForPetrolIsTurnedIntoThatForAlcoholAndBack() {
        JsonNode there = Run.of("fuel convert e85 --afr 12.6 --scale 14.7 --to 9.8 --json")
                .json();
        assertThat(there.path("lambda").asDouble()).isEqualTo(0.8571);
        assertThat(shows(there, "9.8")).isCloseTo(8.4, within(0.0005));
        JsonNode back = Run.of("fuel convert e85 --afr 8.4 --scale 9.8 --to petrol --json")
                .json();
        assertThat(shows(back, "petrol")).isCloseTo(12.6, within(0.0005));
    }

    static Stream<ReferenceRow> lambdaTable() {
        return ReferenceRow.read("lambda_afr.csv").stream();
    }

    /** Outside table of lambda against air-fuel ratio on several scales. */
    @ParameterizedTest
    @MethodSource("lambdaTable")
    void everyScaleShowsWhatTheTableSays(ReferenceRow row) {
        JsonNode shown = Run.of("fuel convert ethanol --lambda " + row.text("lambda") + " --to 14.6 --to 6.474 --json")
                .json();
        assertThat(shows(shown, "petrol")).isCloseTo(row.number("afr_14.7"), within(0.001));
        assertThat(shows(shown, "14.6")).isCloseTo(row.number("afr_14.6"), within(0.001));
        assertThat(shows(shown, "6.474")).isCloseTo(row.number("afr_6.474_methanol"), within(0.001));
        assertThat(shown.path("true_afr").asDouble()).isCloseTo(row.number("afr_9.0053_ethanol"), within(0.002));
    }

    private static double shows(JsonNode document, String scale) {
        for (JsonNode row : document.path("scales")) {
            if (row.path("scale").asText().equals(scale)) {
                return row.path("shows").asDouble();
            }
        }
        throw new AssertionError("no scale " + scale + " in " + document);
    }

    static Stream<ReferenceRow> ethanolBlends() {
        return ReferenceRow.read("ethanol_blends.csv").stream()
                .filter(row -> List.of("E5", "E10", "E20", "E50", "E85").contains(row.text("blend")));
    }

    /** Outside table of ethanol blends; the volume for the same air follows from its ratios and densities. */
    @ParameterizedTest
    @MethodSource("ethanolBlends")
    void aBlendIsThatOfTheTable(ReferenceRow row) {
        ReferenceRow petrol = ReferenceRow.read("ethanol_blends.csv").get(0);
        double share = row.number("vol_frac_ethanol");
        JsonNode fuel = Run.of("fuel blend --of ethanol=" + share + ",petrol=" + (1 - share) + " --by volume --json")
                .json()
                .path("fuel");
        assertThat(fuel.path("afr").asDouble()).isCloseTo(row.number("afr_stoich"), within(0.005));
        assertThat(fuel.path("figures").path("density_kg_m3").path("value").asDouble())
                .isCloseTo(1000 * row.number("density_kg_L"), within(0.1));
        assertThat(fuel.path("figures")
                        .path("lower_heating_mj_kg")
                        .path("value")
                        .asDouble())
                .isCloseTo(row.number("lhv_MJ_kg"), within(0.005));
        double volume = petrol.number("afr_stoich")
                * petrol.number("density_kg_L")
                / (row.number("afr_stoich") * row.number("density_kg_L"));
        assertThat(fuel.path("flow").path("equal_lambda").path("volume_ratio").asDouble())
                .isCloseTo(volume, within(0.001));
    }

    /**
     * Common practice, no source: E85 wants about 30 % more volume (less for winter grades, more against petrol without ethanol),
     * methanol about twice.
     */
    @ParameterizedTest
    @CsvSource({"e85, e10, 1.27, 1.37", "e70, e10, 1.2, 1.3", "methanol, petrol, 1.9, 2.2"})
    void alcoholWantsAsMuchMoreVolumeAsTheTradeSays(String fuel, String against, double low, double high) {
        JsonNode document = Run.of("fuel compare " + fuel + " --against " + against + " --lambda 0.88 --json")
                .json();
        assertThat(document.path("as_asked").path("volume_ratio").asDouble()).isBetween(low, high);
    }

    /** Common practice, no source: the ratios of ethanol and methanol are about 9 to 6.5. */
    @Test
    void stoichiometryOfTheAlcoholsIsAboutNineToSixAndAHalf() {
        assertThat(afr("ethanol")).isCloseTo(9, within(0.05));
        assertThat(afr("methanol")).isCloseTo(6.5, within(0.05));
    }

    private static double afr(String fuel) {
        return Run.of("fuel show " + fuel + " --json")
                .json()
                .path("fuel")
                .path("afr")
                .asDouble();
    }

    @Test
    void comparingAFuelWithItselfChangesNothing() {
        JsonNode same =
                Run.of("fuel compare e10 --against e10 --lambda 0.9 --json").json();
        for (String key :
                List.of("mass_ratio", "volume_ratio", "jet_area_ratio", "jet_diameter_ratio", "air_energy_ratio")) {
            assertThat(same.path("as_asked").path(key).asDouble()).as(key).isEqualTo(1);
        }
    }

    @Test
    void eachFuelHasTheLambdaAskedForIt() {
        JsonNode asked = Run.of("fuel compare e85 --against petrol --lambda 0.80 --against-lambda 0.88 --json")
                .json()
                .path("as_asked");
        JsonNode equal = Run.of("fuel compare e85 --lambda 0.88 --json").json().path("as_asked");
        assertThat(asked.path("mass_ratio").asDouble())
                .isCloseTo(equal.path("mass_ratio").asDouble() * 0.88 / 0.80, within(2e-4));
    }

    @Test
    void aListHasEveryFuelWithTheSameKeys() {
        JsonNode fuels = Run.of("fuel list --json").json().path("fuels");
        assertThat(fuels).hasSizeGreaterThan(20);
        fuels.forEach(fuel -> assertThat(keys(fuel)).isEqualTo(FUEL_KEYS));
        assertThat(fuels).anySatisfy(fuel -> {
            assertThat(fuel.path("name").asText()).isEqualTo("avgas-100ll");
            assertThat(fuel.path("cooling_k").isNull()).isTrue();
            assertThat(fuel.path("flow").path("best_power").isNull()).isTrue();
        });
        Run text = Run.of("fuel list");
        assertThat(text.status()).isZero();
        assertThat(text.out()).contains("race-oxygenated").contains("A dash: not known");
    }

    private static List<String> keys(JsonNode node) {
        return Stream.generate(node.fieldNames()::next).limit(node.size()).toList();
    }

    @Test
    void cautionsStandWithEveryFuelAndDeferToItsMaker() {
        for (String line : List.of(
                "fuel show methanol",
                "fuel compare methanol",
                "fuel blend --of methanol=0.85,petrol=0.15",
                "fuel water methanol --water 1L --fuel 10L",
                "fuel injector methanol --injectors 4 --rated 1000cc/min --rated-at 300kPa --flow 60kg/h")) {
            Run run = Run.of(line);
            assertThat(run.status()).as(line).isZero();
            boolean inFull = line.contains("show") || line.contains("blend");
            assertThat(run.out().contains("Attacks aluminium")).as(line).isEqualTo(inFull);
            assertThat(run.out())
                    .as(line)
                    .contains("can blind")
                    .contains("the maker's safety data sheet and local rules outrank");
            assertThat(Run.of(line + " --json").out())
                    .as(line)
                    .contains("\"poisonous\"")
                    .contains("can blind");
        }
        assertThat(Run.of("fuel show avgas").out()).contains("Holds lead");
        assertThat(Run.of("fuel show ethanol").out()).contains("invisible in daylight");
    }

    @Test
    void aLitreOfWaterTakesAlcoholAwayAndCostsFlow() {
        JsonNode document =
                Run.of("fuel water ethanol --water 1L --fuel 20L --json").json();
        assertThat(document.path("with_water").path("alcohol_percent").asDouble())
                .isCloseTo(100 * 20 / 21.0, within(0.01));
        double mass = (20 * 794 + 998.2) / (20 * 794);
        assertThat(document.path("mass_ratio").asDouble()).isCloseTo(mass, within(0.001));
        assertThat(Run.of("fuel water ethanol --water 1gal --fuel 20gal --json").json())
                .isEqualTo(document);
        assertThat(Run.of("fuel water e10 --water 1L --fuel 20L").err()).contains("separates into two layers");
    }

    /**
     * 200 hp at 0.50 lb/(hp.h) take 100 lb/h; four injectors of 42 lb/h at their rated pressure, on a liquid as dense as the fuel, are
     * open 100 / (4 x 42) of the time. Worked by hand.
     */
    @Test
    void injectorsAreOpenAsLongAsHandReckoningSays() {
        String rest = " --injectors 4 --rated 42lb/h --rated-at 43.5psi --test-density 0.745kg/L --json";
        JsonNode ofPower = Run.of("fuel injector petrol --power 200hp --bsfc 0.5lb/hph" + rest)
                .json();
        assertThat(ofPower.path("duty_percent").asDouble()).isCloseTo(100 * 100 / 168.0, within(0.01));
        JsonNode ofFlow = Run.of("fuel injector petrol --flow 100lb/h" + rest).json();
        assertThat(ofFlow.path("duty_percent")).isEqualTo(ofPower.path("duty_percent"));
        JsonNode quadruple = Run.of("fuel injector petrol --flow 100lb/h --across 174psi" + rest)
                .json();
        assertThat(quadruple.path("duty_percent").asDouble()).isCloseTo(50 * 100 / 168.0, within(0.01));
    }

    @Test
    void consumptionOfOneFuelIsTurnedIntoThatOfAnother() {
        String rest = " --injectors 4 --rated 800cc/min --rated-at 300kPa --power 150kW --json --bsfc ";
        double turned = Run.of("fuel injector e85 --bsfc-fuel petrol" + rest + "300g/kWh")
                .json()
                .path("needed_g_s")
                .asDouble();
        double direct = Run.of("fuel injector e85" + rest + "300g/kWh")
                .json()
                .path("needed_g_s")
                .asDouble();
        double ratio = Run.of("fuel compare e85 --json")
                .json()
                .path("as_asked")
                .path("mass_ratio")
                .asDouble();
        assertThat(turned / direct).isCloseTo(ratio, within(0.001));
    }

    @Test
    void injectorsThatAreTooSmallAreSaidToBe() {
        Run run = Run.of("fuel injector e85 --injectors 4 --rated 300cc/min --rated-at 300kPa --flow 60kg/h");
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("would have to be");
        assertThat(run.err()).contains("cannot give this flow");
    }

    @Test
    void americanUnitsAreShownWhereTheyAreAskedFor() {
        assertThat(Run.of("fuel show e85 --units us").out())
                .contains("lb/gal")
                .contains("Btu/lb")
                .contains("°F")
                .doesNotContain("kg/L");
        assertThat(Run.of("fuel show e85 --units us --json").json())
                .isEqualTo(Run.of("fuel show e85 --json").json());
    }

    @Test
    void aPlansOwnBlendsMayBeNamedAndItsTankIsTheDefault(@TempDir Path folder) throws IOException {
        Path plan = folder.resolve("plan.toml");
        Files.writeString(plan, """
                [fuel]
                blend = "mine"

                [[blend]]
                name = "mine"
                of = { ethanol = 0.3, e10 = 0.7 }
                by = "volume"

                [[blend]]
                name = "sheet"
                carbon = 0.834
                hydrogen = 0.129
                oxygen = 0.037
                """);
        JsonNode tank = Run.of("fuel", "show", "--plan", plan.toString(), "--json")
                .json()
                .path("fuel");
        assertThat(tank.path("name").asText()).isEqualTo("mine");
        JsonNode same = Run.of("fuel blend --of ethanol=0.3,e10=0.7 --by volume --json")
                .json()
                .path("fuel");
        assertThat(tank.path("afr")).isEqualTo(same.path("afr"));
        assertThat(Run.of("fuel", "list", "--plan", plan.toString()).out()).contains("sheet");
        Run sheet = Run.of("fuel", "show", "sheet", "--plan", plan.toString());
        assertThat(sheet.out()).contains("13.87").contains("read its data sheet");
        assertThat(Run.of("fuel show mine").status()).isEqualTo(1);
    }

    @Test
    void aDataSheetsElementsGiveTheListedFuel() {
        JsonNode made = Run.of("fuel blend --elements carbon=0.834,H=0.129,oxygen=0.037 --density 0.745kg/L --json")
                .json()
                .path("fuel");
        JsonNode listed = Run.of("fuel show race-oxygenated --json").json().path("fuel");
        assertThat(made.path("afr")).isEqualTo(listed.path("afr"));
        assertThat(made.path("flow").path("equal_lambda"))
                .isEqualTo(listed.path("flow").path("equal_lambda"));
    }

    @Test
    void theFuelInUseMayStandBehindTheOther() {
        assertThat(Run.of("fuel compare e85 e10").out())
                .isEqualTo(Run.of("fuel compare e85 --against e10").out());
        Run twice = Run.of("fuel compare e85 e10 --against petrol");
        assertThat(twice.status()).isEqualTo(2);
        assertThat(twice.err()).contains("Name the fuel in use once: e10 or --against petrol.");
    }
}
