package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.simulator.DemoLogs;

/**
 * Holds the README to what the program prints. With {@code -Dnextpull.remake=true} the sample logs, the README's blocks and its picture
 * are made anew instead, from the program as it is now.
 */
class ReadmeTest {
    private static final Path README = Path.of("README.md");
    private static final Path LOGS = Path.of("sample-logs");
    private static final Path PICTURE = Path.of("src/site/resources/images/spark-advance.png");
    private static final Path BENCH = Path.of("src/site/resources/images/bench-window.png");
    private static final String JAR = "java -jar target/nextpull.jar ";
    private static final String INDENT = "    ";
    private static final String PROMPT = INDENT + "$ " + JAR;
    private static final String REMAKE = "mvn -B -ntp -q test -Dtest=ReadmeTest -Dnextpull.remake=true";

    @TempDir
    private static Path folder;

    @BeforeAll
    static void remake() throws IOException {
        if (!Boolean.getBoolean("nextpull.remake")) {
            return;
        }
        DemoLogs.writeTo(LOGS);
        Files.writeString(README, String.join("\n", withOutput(Files.readAllLines(README))) + "\n");
        Run drawn = Run.of("advise --plan sweep-plans/hillclimb-e10-timing.toml sample-logs/hillclimb-e10-timing.csv"
                + " --charts " + folder);
        assertThat(drawn.status()).as(drawn.err()).isZero();
        Files.copy(folder.resolve(PICTURE.getFileName()), PICTURE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** The lines, with what each shown command prints now in the place of what stood below it. */
    private static List<String> withOutput(List<String> lines) {
        List<String> result = new ArrayList<>();
        boolean below = false;
        for (String line : lines) {
            if (line.startsWith(PROMPT)) {
                result.add(line);
                result.addAll(output(line.substring(PROMPT.length())));
                below = true;
            } else if (below && !line.isEmpty() && !line.startsWith(INDENT)) {
                result.add("");
                result.add(line);
                below = false;
            } else if (!below) {
                result.add(line);
            }
        }
        return result;
    }

    private static List<String> output(String command) {
        return Run.of(command)
                .out()
                .stripTrailing()
                .lines()
                .map(line -> line.isEmpty() ? line : INDENT + line)
                .toList();
    }

    static Stream<String> commands() throws IOException {
        return Files.readAllLines(README).stream()
                .filter(line -> line.contains(JAR) && !line.startsWith(PROMPT))
                .map(line -> line.substring(line.indexOf(JAR) + JAR.length()))
                // needs a display, and is driven by WindowIT
                .filter(command -> !command.startsWith("window "));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void aCommandOfTheReadmeRuns(String command) {
        Run run = Run.of(command);
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out()).isNotBlank();
    }

    @Test
    void theReadmeShowsWhatTheProgramPrints() throws IOException {
        List<String> lines = Files.readAllLines(README);
        assertThat(lines.stream().filter(line -> line.startsWith(PROMPT))).isNotEmpty();
        assertThat(lines).as("after a change that is meant: " + REMAKE).containsExactlyElementsOf(withOutput(lines));
    }

    @Test
    void thePicturesOfTheReadmeAreThere() throws IOException {
        for (Path picture : List.of(PICTURE, BENCH)) {
            assertThat(Files.readString(README)).contains("(" + picture + ")");
            assertThat(Files.size(picture)).isGreaterThan(10_000);
        }
    }
}
