package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A message names its file, and the hint that helps stands in it. */
class HelpfulMessagesTest {
    private static final String PLAN = "sweep-plans/hillclimb-e10-timing.toml";
    private static final String LOG = "sample-logs/hillclimb-e10-timing.csv";

    @TempDir
    private Path folder = Path.of(".");

    private String plan(String from, String to) throws IOException {
        String text = Files.readString(Path.of(PLAN));
        assertThat(text).contains(from);
        return Files.writeString(folder.resolve("plan.toml"), text.replace(from, to))
                .toString();
    }

    @Test
    void aDecimalCommaInAPlan() throws IOException {
        String plan = plan("start_deg = 20 ", "start_deg = 20,5 ");
        Run run = Run.of("advise --no-notebook --plan " + plan + " " + LOG);
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).contains(plan, "line 34", "20,5 has a decimal comma", "write 20.5");
    }

    @Test
    void theVersionWithAndWithoutOtherWords() {
        assertThat(Run.of("--version").out()).startsWith("nextpull ").contains("Java " + Runtime.version());
        assertThat(Run.of("-V advise")).isEqualTo(Run.of("--version"));
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        Console console = new Console(nowhere, nowhere, new BufferedReader(Reader.nullReader()));
        assertThat(Program.commandLine(console, "--version").getSubcommands()).isEmpty();
        assertThat(Program.commandLine(console, "--help").getSubcommands()).containsKeys("advise", "window");
    }

    @Test
    void planAndLogSwapped() {
        Run swapped = Run.of("advise --no-notebook --plan " + LOG + " " + PLAN);
        assertThat(swapped.err()).contains(LOG + " is named as the plan and looks like a log");
        Run twice = Run.of("inspect " + PLAN);
        assertThat(twice.status()).isEqualTo(1);
        assertThat(twice.err()).contains(PLAN + " is named as a log and looks like a plan");
    }

    @ParameterizedTest
    @ValueSource(strings = {"98", "premium", "Super 95", "RON 98", "super plus"})
    void petrolNamedByItsOctane(String name) throws IOException {
        String plan = plan("blend = \"e10\"", "blend = \"" + name + "\"");
        Run run = Run.of("advise --no-notebook --plan " + plan + " " + LOG);
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).contains(plan, "\"" + name + "\" names pump petrol by its octane", "e0, e5 or e10");
    }

    @Test
    void aThrottleThatNeverReachesFullLoad() throws IOException {
        Run run = Run.of("advise --no-notebook --plan " + plan("full_load_percent = 95", "full_load_percent = 99.9")
                + " " + lowThrottle());
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out())
                .startsWith("No pull could be used: see why each was rejected")
                .doesNotContain("No pull was found")
                .contains("never reaches 100 %", "full_load_percent");
        assertThat(Run.of("inspect " + folder.resolve("low.csv")).out())
                .contains("no pull was found in " + folder.resolve("low.csv"));
    }

    private Path lowThrottle() throws IOException {
        String low = Files.readString(Path.of(LOG)).replaceAll(",(?:9\\d\\.\\d|100\\.0),(0|1)\\.", ",80.0,$1.");
        return Files.writeString(folder.resolve("low.csv"), low);
    }

    @Test
    void hundredsOfBrokenRowsOfATableAreOneLine() throws IOException {
        StringBuilder table = new StringBuilder("order,advance_deg,lambda,torque_nm\n");
        table.append("1,20,0.87,190\n1,22,0.87,192\n1,24,0.87,193\n1,24,0.87,193.2\n".repeat(65));
        table.append("2,26,0.87,what\n".repeat(200));
        Path file = Files.writeString(folder.resolve("table.csv"), table);
        Run run = Run.of("advise --no-notebook --plan " + PLAN + " " + file);
        assertThat(run.out()).containsOnlyOnce("\"what\"").contains("(and 199 more like it)");
    }
}
