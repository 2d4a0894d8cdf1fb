package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shipped day that decides between three fuels, read through the command line. All data here is invented. */
class SampleFuelsTest {
    private static final String PLAN = "sweep-plans/hillclimb-fuels.toml";
    private static final String LOG = "sample-logs/hillclimb-fuels.csv";
    /** Pulls of the sweep of the first fuel. */
    private static final int SWEPT = 7;

    private static final Path TRUTH = Path.of("sample-logs/.truth/hillclimb-fuels.toml");

    private static JsonNode whole;

    @BeforeAll
    static void read() {
        whole = advise(LOG);
    }

    /** The 95 % intervals of the decision runs hold the true gains, and the verdicts name them. */
    @Test
    void theGainsHoldTheTruth() throws IOException {
        JsonNode day = whole.at("/candidates");
        List<Double> truth = Files.readAllLines(TRUTH).stream()
                .filter(line -> line.startsWith("gain_percent"))
                .map(line -> Double.valueOf(line.substring(line.indexOf('=') + 1)))
                .toList();
        assertThat(truth).hasSize(3);
        assertThat(day.at("/decided").asBoolean()).isTrue();
        assertThat(day.at("/each/0/gain_percent").isNull()).isTrue();
        for (int each = 1; each < 3; each++) {
            JsonNode one = day.at("/each/" + each);
            assertThat(truth.get(each))
                    .isBetween(
                            one.at("/low_percent").asDouble(),
                            one.at("/high_percent").asDouble());
            assertThat(one.at("/verdict").asText()).isEqualTo("more");
        }
        assertThat(day.at("/groups").toString()).isEqualTo("[[\"alcohol\"],[\"race\"],[\"pump\"]]");
    }

    /**
     * Alternative Fuels Data Center, fuel properties comparison: E85 holds 73 to 83 % of the energy of petrol by volume. Here it stands
     * against E10, at nearly equal energy for equal power.
     */
    @Test
    void theSamePowerTakesMoreLitresOfAlcohol() {
        JsonNode used = whole.at("/candidates/each/1/at_equal_power");
        assertThat(used.at("/volume_ratio").asDouble()).isBetween(1 / 0.83, 1 / 0.73);
        assertThat(used.at("/energy_ratio").asDouble()).isBetween(0.95, 1.0);
        assertThat(used.at("/cost_ratio").asDouble())
                .isBetween(
                        0.999 * 1.15 / 1.75 * used.at("/volume_ratio").asDouble(),
                        1.001 * 1.15 / 1.75 * used.at("/volume_ratio").asDouble());
    }

    /** The gain is the fuel's at the setting of the reference and that of its own setting, and stands at each speed of the band. */
    @Test
    void theGainIsSplitAndStandsBySpeed() {
        JsonNode each = whole.at("/candidates/each");
        assertThat(each.at("/0/by_itself_percent").isNull()).isTrue();
        assertThat(each.at("/0/knock_low_rpm").asInt()).isPositive();
        assertThat(each.at("/0/knock_limit_deg").asDouble()).isEqualTo(24);
        assertThat(each.at("/1/knock_limit_deg").isNull()).isTrue();
        for (int i = 1; i < 3; i++) {
            JsonNode one = each.at("/" + i);
            double gain = one.at("/gain_percent").asDouble();
            assertThat(one.at("/by_setting_percent/value").asDouble()
                            + one.at("/by_itself_percent/value").asDouble())
                    .isCloseTo(gain, within(2e-4));
            assertThat(one.at("/by_itself_percent/low").asDouble())
                    .isLessThan(one.at("/low_percent").asDouble()
                            - one.at("/by_setting_percent/value").asDouble());
            assertThat(one.at("/rows")).hasSize(14);
            assertThat(one.at("/exhaust_c").asDouble()).isBetween(600.0, 900.0);
            assertThat(one.at("/map").isNull()).isTrue();
        }
        Run text = Run.of("advise", "--no-notebook", "--plan", PLAN, LOG);
        assertThat(text.out())
                .contains(
                        "\"alcohol\" at the setting of \"pump\": +",
                        "which is the fuel; its own spark",
                        "By speed, \"race\"");
    }

    /** Page 1 says which, by how much, at what setting; what was sought in the sweeps is no part of it, nor of a comparison. */
    @Test
    void theSheetAndTheComparisonGoByTheDecisionRuns() {
        JsonNode day = whole.at("/candidates");
        String gain = String.format(
                Locale.ROOT, "%+.2f", day.at("/each/1/gain_percent").asDouble());
        String sheet = Run.of("report", "--no-notebook", "--plan", PLAN, "--out", "-", LOG)
                .out();
        assertThat(sheet)
                .contains(
                        "class=\"answer\">&quot;alcohol&quot; (e85): " + gain + " % (95 % CI +",
                        "over &quot;pump&quot;, at "
                                + day.at("/each/1/advance_deg").asDouble(),
                        "Each at its own best",
                        "Each differs from the next.",
                        "Knock limit of &quot;pump&quot;, margin taken off: 24.0 deg at every speed.",
                        "&quot;race&quot;: Spark sweep, 6 pulls: MBT ",
                        "Curves of &quot;alcohol&quot;",
                        "<li>Pulls 25 to 26: REPEAT ",
                        "<li>e10, e85, race: Its vapour burns",
                        "<li>e85: Much more of it is injected",
                        "<td class=\"n\">" + gain);
        assertThat(sheet.split("<figure class=\"half\">", -1))
                .as("alcohol and race side by side")
                .hasSize(3);
        assertThat(sheet.split("whole-curve 95 % limits</caption>", -1))
                .as("the levels once, two differences")
                .hasSize(4);
        Run compared = Run.of("compare", "--plan", PLAN, "--against", "pump", LOG);
        assertThat(compared.out().lines().filter(line -> line.matches("(pump|alcohol|race) +\\d+ .*")))
                .extracting(line -> Integer.parseInt(line.replaceAll("^\\S+ +(\\d+) .*", "$1")))
                .hasSize(3)
                .satisfies(counts -> assertThat(
                                counts.stream().mapToInt(Integer::intValue).sum())
                        .isEqualTo(day.at("/decision_runs").asInt()));
    }

    /** Where the ignition holds a map, knock limits a candidate at the speed at which it was heard, in text, figures and sheet alike. */
    @Test
    void candidatesWithMapsAreLimitedByKnockAtItsSpeed(@TempDir Path folder) throws IOException {
        Path plan = Files.writeString(
                folder.resolve("map.toml"),
                Files.readString(Path.of(PLAN))
                        .replace(
                                "sets = \"flat\"",
                                "sets = \"map\"\nmap_rpm = [3000, 5000, 7000]\npresent_map = [[3000, 20], [7000, 20]]")
                        .replaceFirst("start_deg = 20", "start_deg = 0"));
        String limit = "Knock limit of \"pump\", margin taken off: 24.0 deg at 3500 rpm.";
        Path sheet = folder.resolve("sheet.html");
        Run run = Run.of("report", "--no-notebook", "--plan", plan.toString(), "--out", sheet.toString(), LOG);
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(Files.readString(sheet))
                .contains(limit.replace("\"", "&quot;"))
                .containsPattern("map of [0-9.]+ deg at every speed");
        assertThat(Files.readString(folder.resolve("sheet.json")))
                .containsPattern("\"knock_limits\"\\s*:\\s*\\[\\s*\\{[^}]*3500");
        assertThat(Run.of("advise", "--no-notebook", "--plan", plan.toString(), LOG)
                        .out())
                .contains(limit)
                .containsPattern("pump +e10 +map of [0-9.]+ deg at every speed, lambda 0\\.8");
    }

    /** After the sweep of the first fuel the second is fitted; its first pull flushes, and then its own sweep begins at the start. */
    @Test
    void aSweepEndsWithAChangeOver(@TempDir Path folder) throws IOException {
        JsonNode swept = advise(first(folder, SWEPT)).at("/next");
        assertThat(swept.at("/code").asText()).isEqualTo("change-over");
        assertThat(swept.at("/advance_deg").asDouble()).isEqualTo(20);
        assertThat(swept.at("/because").asText())
                .contains("\"alcohol\" (e85)", "drain, flush, prime", "fuel pressure", "times the litres");
        JsonNode flushed = advise(first(folder, SWEPT + 1));
        assertThat(flushed.at("/pulls/" + SWEPT + "/used").asBoolean()).isFalse();
        assertThat(flushed.at("/next/code").asText()).isEqualTo("baseline");
        assertThat(flushed.at("/candidates/decision_order")).isEmpty();
    }

    /** Where the log has the injector duty, the change-over says what the next fuel asks of it, and that too much must not be run. */
    @Test
    void injectorsThatAreTooSmallAreSaidBeforeTheFirstPull(@TempDir Path folder) throws IOException {
        assertThat(changeOver(folder, "50"))
                .contains("times the litres, 7", "% duty")
                .doesNotContain("DO NOT RUN");
        assertThat(changeOver(folder, "80")).contains("times the litres, 11", "DO NOT RUN IT: that passes 100 % duty");
    }

    private static String changeOver(Path folder, String dutyPercent) throws IOException {
        Path plain = Path.of(first(folder, SWEPT));
        Files.write(
                plain,
                Files.readAllLines(plain).stream()
                        .map(line -> line.startsWith("#")
                                ? line
                                : line + "," + (line.startsWith("Time") ? "Injector duty [%]" : dutyPercent))
                        .toList());
        return advise(plain.toString()).at("/next/because").asText();
    }

    /** The log up to the end of a pull: labels mark where the next begins, and throttle closes between pulls. */
    private static String first(Path folder, int pulls) throws IOException {
        JsonNode all = Run.of("inspect", "--plan", PLAN, "--json", LOG).json().at("/files/0/pulls");
        long last = all.at("/" + (pulls - 1) + "/last_line").asLong();
        Path part = folder.resolve(pulls + ".csv");
        try (Stream<String> lines = Files.lines(Path.of(LOG))) {
            Files.write(part, lines.limit(last + 10).toList());
        }
        return part.toString();
    }

    private static JsonNode advise(String log) {
        Run run = Run.of("advise", "--no-notebook", "--json", "--plan", PLAN, log);
        assertThat(run.status()).as(run.err()).isZero();
        return run.json();
    }
}
