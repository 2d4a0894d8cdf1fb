package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EngineCommandTest {
    private static final String BAND = """
            [band]
            from_rpm = 4000
            to_rpm = 6000
            rows_every_rpm = 1000
            """;

    private static final String TIMING = """
            [timing]
            start_deg = 20
            least_deg = 14
            most_deg = 36
            """;

    private static final String SMALL = """
            [engine]
            displacement_l = 1.6
            cylinders = 4
            [dyno]
            kind = "engine-brake"
            torque_at = "crank"
            inertia_in_log = true
            """;

    @TempDir
    private Path folder;

    private String file(String name, String... parts) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(file, String.join("", parts));
        return file.toString();
    }

    private Run write(String plan, String out, String... more) {
        List<String> args = new ArrayList<>(List.of(
                "engine", "write", "--plan", plan, "--out", folder.resolve(out).toString()));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    private String text(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }

    @Test
    void oneSeedWritesTheSameBytesAndAnotherSeedOthers() throws IOException {
        String plan = file("plan.toml", SMALL, BAND, TIMING);
        String settings = file("settings.csv", "pull,advance_deg\n1,20\n2,24\n");
        Run first = write(plan, "one.csv", "--seed", "7", "--settings", settings);
        assertThat(first.status()).as(first.err()).isZero();
        assertThat(first.out()).contains("log of 2 pulls").contains("truth");
        assertThat(first.err()).contains("pull 1: 20.0 deg").contains("pull 2: 24.0 deg");
        write(plan, "two.csv", "--seed", "7", "--settings", settings);
        write(plan, "three.csv", "--seed", "8", "--settings", settings);
        assertThat(text("two.csv")).isEqualTo(text("one.csv")).isNotEqualTo(text("three.csv"));
        assertThat(text("two.truth.toml")).isEqualTo(text("one.truth.toml")).isNotEqualTo(text("three.truth.toml"));
        assertThat(text("one.truth.toml")).contains("seed = 7", "peak_deg = ", "scatter_percent = ");
    }

    @Test
    void neitherPlanNorSettingsAreWrittenOver() throws IOException {
        String plan = file("plan.toml", SMALL, BAND, TIMING);
        String settings = file("day.settings.csv", "pull,advance_deg,label\n1,20,before\n2,24,after\n");
        Run over = write(plan, "plan.toml", "--seed", "7", "--settings", settings);
        assertThat(over.status()).isEqualTo(1);
        assertThat(over.err()).contains("plan.toml is one of the inputs");
        assertThat(text("plan.toml")).contains("[timing]");
        assertThat(write(plan, "day.settings.csv", "--seed", "7", "--settings", settings)
                        .status())
                .isEqualTo(1);
        assertThat(text("day.settings.csv")).startsWith("pull,advance_deg");
        file("own.truth.toml", "# somebody's own");
        Run beside = write(plan, "own.csv", "--seed", "7", "--settings", settings);
        assertThat(beside.status()).isEqualTo(1);
        assertThat(beside.err()).contains("own.truth.toml is there already without");
        assertThat(folder.resolve("own.csv")).doesNotExist();
    }

    @Test
    void aDayThatFollowsTheAdviceIsReplayedToTheSameStop() throws IOException {
        String plan = file("plan.toml", SMALL, BAND, TIMING);
        Run written = write(plan, "day.csv", "--seed", "3");
        assertThat(written.status()).as(written.err()).isZero();
        String log = folder.resolve("day.csv").toString();
        Run replayed = Run.of("replay", "--plan", plan, log);
        assertThat(replayed.out()).contains("STOP. Final setting: ").doesNotContain("(0 fewer)");
        long pulls =
                written.err().lines().filter(line -> line.startsWith("pull ")).count();
        assertThat(replayed.out()).contains("Would have stopped after pull " + pulls + " of " + pulls);
    }

    @ParameterizedTest
    @CsvSource({"SEMICOLON, ;", "tabbed_us, '\t'", "COMPACT, engine_speed_rpm"})
    void aLogIsWrittenInTheDialectThatIsNamedAndReadAgain(String dialect, String mark) throws IOException {
        String plan = file("plan.toml", SMALL, BAND, TIMING);
        String settings = file("settings.csv", "pull,advance_deg\n1,20\n2,22\n");
        Run written = write(plan, "log.csv", "--seed", "7", "--settings", settings, "--dialect", dialect);
        assertThat(written.status()).as(written.err()).isZero();
        assertThat(text("log.csv")).startsWith("# invented demo data").contains(mark);
        Run read = Run.of("advise", "--plan", plan, folder.resolve("log.csv").toString());
        assertThat(read.status()).as(read.err()).isZero();
        assertThat(read.out()).contains("20.0").contains("22.0");
    }

    @Test
    void aPlanOfOffsetsGetsASettingsFile() throws IOException {
        String offsets = """
                [timing]
                sets = "offset"
                start_deg = 0
                least_deg = -4
                most_deg = 10
                """;
        String plan = file("plan.toml", SMALL, BAND, offsets);
        String settings = file("asked.csv", "pull,offset_deg\n1,0\n2,2\n");
        Run written = write(plan, "log.csv", "--seed", "7", "--settings", settings);
        assertThat(written.status()).as(written.err()).isZero();
        assertThat(text("log.settings.csv")).isEqualTo("pull,advance_deg,offset_deg,lambda\n1,,0.000,\n2,,2.000,\n");
        String withSettings = file("with.toml", SMALL, BAND, offsets, "[log]\nsettings = \"log.settings.csv\"\n");
        Run read = Run.of(
                "advise", "--plan", withSettings, folder.resolve("log.csv").toString());
        assertThat(read.out()).as(read.err()).contains("SET +");
    }

    @ParameterizedTest
    @CsvSource({"'[engine]\ncompression_ratio = 30\n', compression_ratio", "'[fuel]\nblend = \"hydrogen\"\n', hydrogen"
    })
    void whatMakesNoEngineIsRefusedByName(String table, String name) throws IOException {
        String plan = file("plan.toml", BAND, TIMING, table);
        Run said = write(plan, "log.csv", "--seed", "7");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.err()).contains(name);
        assertThat(folder.resolve("log.csv")).doesNotExist();
    }

    @Test
    void aPlanWithoutABandAndSettingsOutsideThePlanAreRefused() throws IOException {
        String bare = file("bare.toml", TIMING);
        assertThat(write(bare, "log.csv", "--seed", "7").err()).contains("[band] from_rpm");
        String plan = file("plan.toml", SMALL, BAND, TIMING);
        String wide = file("wide.csv", "pull,advance_deg\n1,20\n2,60\n");
        Run said = write(plan, "log.csv", "--seed", "7", "--settings", wide);
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.err()).contains("The plan allows advance from 14.000 to 36.000, not 60.000");
        String other = file("other.csv", "pull,advance_deg,fuel\n1,20,e85\n");
        assertThat(write(plan, "log.csv", "--seed", "7", "--settings", other).err())
                .contains("e85");
    }

    @Test
    void wrongUsageAndUnwritableFoldersAreSaid() throws IOException {
        String plan = file("plan.toml", SMALL, BAND, TIMING);
        assertThat(write(plan, "log.csv").status()).isEqualTo(2);
        assertThat(write(plan, "log.csv", "--seed", "few").status()).isEqualTo(2);
        assertThat(write(plan, "log.csv", "--seed", "1", "--dialect", "morse").status())
                .isEqualTo(2);
        String settings = file("settings.csv", "pull,advance_deg\n1,20\n");
        Run said = write(plan, "no/such/folder/log.csv", "--seed", "7", "--settings", settings);
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.err()).contains("Nothing could be written");
    }

    @Test
    void aPracticeDayGoesThroughAllThatCanBeTyped() throws IOException {
        String plan = file("plan.toml", SMALL, BAND, TIMING);
        String typed =
                "help\nwhy\n\n22,5\nbanana\n60\n999\n21 0.9\nexclude 9\nexclude\nexclude 1 cold oil\nnote smells rich\nend\n";
        Run said = Run.typing(typed, "engine", "practise", "--plan", plan, "--seed", "5");
        assertThat(said.status()).as(said.err()).isZero();
        assertThat(said.err()).contains("--seed 5");
        assertThat(said.out())
                .contains("run what is proposed", "say that you watch")
                .contains("SET 20.0 deg")
                .contains("Pull 1 at 20.0 deg")
                .contains("Pull 2 at 22.5 deg")
                .contains("\"banana\" is neither a number nor a word")
                .contains("The plan allows advance from 14.000 to 36.000, not 60.000")
                .contains("No engine runs at 999.0 deg")
                .contains("This plan sweeps one thing")
                .contains("There is no pull 9 yet (run so far: 2)")
                .contains("exclude needs the number")
                .contains("Pull 1 excluded from the fit", "Noted.")
                .contains("The truth of engine 5")
                .contains("Pulls: 2, with knock: 0");
        assertThat(said.out().lines().filter(line -> line.contains("Pull 3"))).isEmpty();
    }

    @Test
    void practiceOfCandidatesShowsTheChecklistOfAChangeOverAndTheTruthOfEach() throws IOException {
        String plan = file("plan.toml", SMALL, BAND, TIMING, """
                [[candidate]]
                label = "pump"
                fuel = "e10"
                [[candidate]]
                label = "alcohol"
                fuel = "e85"
                """);
        Run early = Run.typing("\n\nend\n", "engine", "practise", "--plan", plan, "--seed", "5");
        assertThat(early.out())
                .containsPattern("True best of \"pump\": .*\n {2}found: [0-9.]+ deg, lambda [0-9.]+, where ")
                .containsPattern("True best of \"alcohol\": .*\n {2}found: no setting of its own\\.\n");
        Run said = Run.typing("\n".repeat(60), "engine", "practise", "--plan", plan, "--seed", "5");
        assertThat(said.out())
                .contains("CHANGE OVER to \"alcohol\"", "drain, flush, prime")
                .containsPattern("True best of \"pump\": MBT [0-9.]+ deg, lambda [0-9.]+, [0-9.]+ N·m\\.")
                .containsPattern(
                        "True best of \"alcohol\": .* N·m, [+-][0-9.]+ %\\."
                                + "\n {2}found: [+-][0-9.]+ % \\(95 % CI [+-][0-9.]+ to [+-][0-9.]+\\) over \"pump\", [0-9.]+ deg");
        double gain = number(said.out(), "\n {2}found: ([+-][0-9.]+) % ");
        assertThat(gain).isCloseTo(number(said.out(), "\"alcohol\": MBT .* N·m, ([+-][0-9.]+) %"), within(1.0));
    }

    @Test
    void theEndOfInputEndsThePracticeDayPolitely() throws IOException {
        String plan = file("plan.toml", SMALL, BAND, TIMING);
        Run said = Run.of("engine", "practise", "--plan", plan, "--seed", "5");
        assertThat(said.status()).isZero();
        assertThat(said.out()).contains("End of input").contains("No final setting");
    }

    @Test
    void followingTheAdviceEndsWithALittleTorqueLeft() throws IOException {
        String plan = file("plan.toml", SMALL, BAND, TIMING);
        Run said = Run.typing("\n".repeat(40), "engine", "practise", "--plan", plan, "--seed", "5");
        assertThat(said.out()).contains("Final setting: ").doesNotContain("End of input");
        String left = said.out()
                .lines()
                .filter(line -> line.startsWith("Your final setting"))
                .findFirst()
                .orElseThrow();
        double percent = Double.parseDouble(left.replaceAll(".*: ([0-9.]+) % of torque is left.*", "$1"));
        assertThat(percent).isLessThan(0.8);
    }

    private static double number(String text, String pattern) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .mapToDouble(found -> Double.parseDouble(found.group(1)))
                .findFirst()
                .orElseThrow();
    }
}
