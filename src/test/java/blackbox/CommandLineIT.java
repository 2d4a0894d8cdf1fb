package blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands on good, bad and hostile input, seen from outside. All data here is invented. */
class CommandLineIT {
    private static final String PLAN = """
            [timing]
            start_deg = 20
            least_deg = 14
            most_deg = 36
            """;

    private static final String TABLE = """
            order,advance_deg,torque_nm,knock
            1,20,190.3,no
            2,20,190.1,no
            3,22,193.4,no
            4,24,195.6,no
            5,28,197.2,no
            6,30,196.2,no
            7,32,194.3,no
            8,26,196.9,no
            """;

    @TempDir
    private Path folder;

    @BeforeEach
    void files() throws Exception {
        Files.writeString(folder.resolve("plan.toml"), PLAN);
        Files.writeString(folder.resolve("day.csv"), TABLE);
    }

    @Test
    void aTableOfResultsIsAdvisedOnAndSaidToBeOne() throws Exception {
        Program.Run text = Program.run(folder, "advise", "--plan", "plan.toml", "day.csv");
        assertThat(text.status()).as(text.err()).isZero();
        assertThat(text.out()).contains("MBT", "bracketed");
        assertThat(text.out()).contains("table of results");

        Program.Run run = Program.run(folder, "advise", "--plan", "plan.toml", "day.csv", "--json");
        JsonNode json = new ObjectMapper().readTree(run.out());
        assertThat(json.get("schema").asInt()).isEqualTo(1);
        assertThat(json.get("pulls")).hasSize(8);
        assertThat(json.at("/timing/bracketed").asBoolean()).isTrue();
        assertThat(json.at("/timing/peak_deg").asDouble()).isBetween(26.5, 29.5);
        assertThat(json.at("/timing/best_deg").asDouble())
                .isLessThan(json.at("/timing/peak_deg").asDouble());
        assertThat(json.at("/next/because").asText()).isNotBlank();
    }

    @Test
    void threePullsOnASlopeGiveNoOptimum() throws Exception {
        Files.writeString(folder.resolve("slope.csv"), "order,advance_deg,torque_nm\n1,20,190\n2,22,193\n3,24,195.5\n");
        Program.Run run = Program.run(folder, "advise", "--plan", "plan.toml", "slope.csv", "--json");
        JsonNode json = new ObjectMapper().readTree(run.out());
        assertThat(json.at("/timing/bracketed").asBoolean()).isFalse();
        assertThat(json.at("/timing/best_deg").isNull()).isTrue();
        assertThat(json.at("/next/action").asText()).isEqualTo("pull");
        assertThat(json.at("/next/advance_deg").asDouble()).isLessThanOrEqualTo(26);
    }

    @Test
    void replayHasALineForEachPull() throws Exception {
        Program.Run run = Program.run(folder, "replay", "--plan", "plan.toml", "day.csv", "--json", "--lines");
        assertThat(run.status()).isZero();
        assertThat(run.out().lines()).hasSize(8).allMatch(line -> line.startsWith("{\"schema\":1"));
    }

    @Test
    void badFilesAreNamedAndDoNotSpoilGoodOnes() throws Exception {
        Files.writeString(folder.resolve("empty.csv"), "");
        Files.writeString(folder.resolve("header.csv"), "Time [s],Engine speed [rpm],Torque [N.m]\n");
        Files.write(folder.resolve("binary.csv"), new byte[] {0, 1, 2, (byte) 0xff, 0, 7, 0, 0, 3, 3, 0, 1});
        Program.Run run = Program.run(
                folder,
                "advise",
                "--plan",
                "plan.toml",
                "empty.csv",
                "header.csv",
                "binary.csv",
                "missing.csv",
                "day.csv");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).contains("empty.csv", "header.csv", "binary.csv", "missing.csv");
        assertThat(run.out()).contains("MBT");
    }

    @Test
    void nothingButBadFilesIsOneLineEachAndStillADocument() throws Exception {
        Program.Run run = Program.run(folder, "advise", "--plan", "plan.toml", "missing.csv", "--json");
        assertThat(run.status()).isEqualTo(1);
        JsonNode json = new ObjectMapper().readTree(run.out());
        assertThat(json.at("/error/file").asText()).isEqualTo("missing.csv");
        assertThat(json.at("/error/code").asText()).isEqualTo("file-not-found");
        assertThat(run.err().lines()).hasSize(1);
    }

    @Test
    void everyErrorOfAPlanIsShownWithItsPlace() throws Exception {
        Files.writeString(
                folder.resolve("bad.toml"),
                "[timing]\nstart_deg = 40\nleast_deg = 14\nmost_deg = 36\nresolutoin_deg = 0.5\n[goal]\nmax_pulls = \"many\"\n");
        Program.Run run = Program.run(folder, "advise", "--plan", "bad.toml", "day.csv");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).contains("resolution_deg", "line 5", "line 7", "max_pulls", "start_deg");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void wrongUsageIsStatusTwo() throws Exception {
        assertThat(Program.run(folder, "advise", "day.csv").status()).isEqualTo(2);
        assertThat(Program.run(folder, "advize").status()).isEqualTo(2);
        assertThat(Program.run(folder, "--help").status()).isZero();
        assertThat(Program.run(folder, "advise", "--help").out()).contains("--plan", "--charts", "--json");
    }

    @Test
    void chartsAreWrittenAsPictures() throws Exception {
        Program.Run run = Program.run(folder, "advise", "--plan", "plan.toml", "day.csv", "--charts", "charts");
        assertThat(run.status()).as(run.err()).isZero();
        byte[] png = Files.readAllBytes(folder.resolve("charts/spark-advance.png"));
        assertThat(new String(png, 1, 3, StandardCharsets.US_ASCII)).isEqualTo("PNG");
    }

    @Test
    void unitsOfPeopleDoNotTouchJson() throws Exception {
        Program.Run us = Program.run(folder, "advise", "--plan", "plan.toml", "day.csv", "--units", "us");
        assertThat(us.out()).contains("lb-ft");
        Program.Run json = Program.run(folder, "advise", "--plan", "plan.toml", "day.csv", "--units", "us", "--json");
        assertThat(new ObjectMapper()
                        .readTree(json.out())
                        .at("/pulls/0/mean_torque_nm")
                        .asDouble())
                .isEqualTo(190.3);
    }
}
