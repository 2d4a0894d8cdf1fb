package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shipped day of a map, read through the command line. */
class SampleMapTest {
    private static final String PLAN = "sweep-plans/hillclimb-e10-map.toml";
    private static final String LOG = "sample-logs/hillclimb-e10-map.csv";

    @Test
    void theDocumentHasTheMapAndARowForEachSpeed() {
        JsonNode advice =
                Run.of("advise", "--no-notebook", "--json", "--plan", PLAN, LOG).json();
        assertThat(advice.at("/next/action").asText()).isEqualTo("stop");
        assertThat(advice.at("/next/map").isNull()).isTrue();
        assertThat(advice.at("/chosen/advance_deg").isNull()).isTrue();
        assertThat(advice.at("/chosen/map")).hasSize(8);
        assertThat(advice.at("/chosen/map/0/rpm").asInt()).isEqualTo(3500);
        assertThat(advice.at("/timing/rows_proven").asBoolean()).isTrue();
        assertThat(advice.at("/timing/rows")).hasSize(14);
        for (JsonNode row : advice.at("/timing/rows")) {
            assertThat(row.at("/best_deg").asDouble())
                    .isBetween(
                            row.at("/low_deg").asDouble(), row.at("/high_deg").asDouble());
            assertThat(row.at("/best_deg").asDouble())
                    .isLessThanOrEqualTo(row.at("/run_deg").asDouble());
        }
    }

    @Test
    void theMapIsWrittenAsItIsLeft(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("map.csv");
        Run run = Run.of("advise", "--no-notebook", "--plan", PLAN, "--map", file.toString(), LOG);
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out())
                .startsWith("DONE. Final setting: map of 24.0 to 30.0 deg")
                .doesNotContain("null");
        assertThat(Files.readAllLines(file)).hasSize(9).startsWith("rpm,advance_deg", "3500,24");
    }

    @Test
    void replaySaysALineAPullAndTheMapAndTheReasonWhereAsked() {
        List<String> lines = Run.of("replay", "--no-notebook", "--plan", PLAN, LOG)
                .out()
                .lines()
                .toList();
        assertThat(lines.get(0)).matches("pull +advance +lambda +knock +N·m +use +on first +then");
        assertThat(lines.get(1)).matches(" +1 +21.0 +0.873 +none +177.8 +used +- +SET map of 20.0 to 26.0 deg");
        assertThat(lines.get(6)).matches(" +6 +30.2 .* \\+2.2 % +DONE. Final setting: map of .*");
        assertThat(lines.get(7)).isEmpty();
        Run run = Run.of("replay", "--verbose", "--no-notebook", "--plan", PLAN, LOG);
        assertThat(run.out())
                .contains(
                        "After pull 1 (",
                        "Torque still rises with advance",
                        "SET map of 20.0 to 26.0 deg",
                        "the whole map by +2.0 deg")
                .doesNotContain("null");
    }

    @Test
    void noMapIsWrittenForADayOfOneNumber() {
        Run run = Run.of(
                "advise",
                "--no-notebook",
                "--plan",
                "sweep-plans/hillclimb-e10-timing.toml",
                "--map",
                "-",
                "sample-logs/hillclimb-e10-timing.csv");
        assertThat(run.status()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.out()).isEmpty();
    }
}
