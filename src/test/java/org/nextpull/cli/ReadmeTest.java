package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.simulator.DemoLogs;

/**
 * Holds the README and the page of a first day to what the program prints. With {@code -Dnextpull.remake=true} the sample logs, the README's blocks and its picture
 * are made anew instead, from the program as it is now.
 */
class ReadmeTest {
    private static final Path README = Path.of("README.md");
    private static final Path FIRST_DAY = Path.of("src/site/markdown/first-day.md");
    private static final Path ADVICE = Path.of("src/site/markdown/advice.md");
    private static final Path LOGS = Path.of("sample-logs");
    private static final Path PICTURE = Path.of("src/site/resources/images/spark-advance.png");
    private static final Path BENCH = Path.of("src/site/resources/images/bench-window.png");
    private static final String JAR = "java -jar target/nextpull.jar ";
    private static final String INDENT = "    ";
    /** A command of whose output a part is shown, as a shell would cut it out. */
    private static final Pattern PART = Pattern.compile("(.*) \\| sed -n '/\\^(\\w+)/,/\\^\\$/p'");

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
        for (Path page : List.of(README, FIRST_DAY)) {
            Files.writeString(page, String.join("\n", withOutput(Files.readAllLines(page))) + "\n");
        }
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
        Matcher part = PART.matcher(command);
        if (!part.matches()) {
            return indented(Run.of(command).out().stripTrailing().lines());
        }
        return indented(Run.of(part.group(1))
                .out()
                .lines()
                .dropWhile(line -> !line.startsWith(part.group(2)))
                .takeWhile(line -> !line.isEmpty()));
    }

    private static List<String> indented(Stream<String> lines) {
        return lines.map(line -> line.isEmpty() ? line : INDENT + line).toList();
    }

    static Stream<String> commands() throws IOException {
        return Stream.concat(Files.readAllLines(README).stream(), Files.readAllLines(FIRST_DAY).stream())
                .filter(line -> line.contains(JAR) && !line.startsWith(PROMPT))
                .map(line -> line.substring(line.indexOf(JAR) + JAR.length()))
                // needs a display, and is driven by WindowIT
                .filter(command -> !command.startsWith("window "))
                .distinct();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void aCommandOfTheReadmeRuns(String command) {
        Run run = Run.of(command);
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out() + run.err()).isNotBlank();
    }

    @ParameterizedTest
    @ValueSource(strings = {"README.md", "src/site/markdown/first-day.md"})
    void thePageShowsWhatTheProgramPrints(Path page) throws IOException {
        List<String> lines = Files.readAllLines(page);
        assertThat(lines.stream().filter(line -> line.startsWith(PROMPT))).isNotEmpty();
        assertThat(lines).as("after a change that is meant: " + REMAKE).containsExactlyElementsOf(withOutput(lines));
    }

    /** The page on advice works an answer by hand; its table and its plan give what it says that the program says. */
    @Test
    void theAnswerByHandIsThatOfTheProgram() throws IOException {
        String page = Files.readString(ADVICE);
        Path log = Files.writeString(folder.resolve("paper.csv"), block(page, "csv"));
        Path plan = Files.writeString(folder.resolve("paper.toml"), block(page, "toml"));
        Run run = Run.of("advise", "--plan", plan.toString(), log.toString());
        assertThat(run.out()).as(run.err()).contains(block(page, "text"));
    }

    private static String block(String page, String kind) {
        int from = page.indexOf("```" + kind + "\n") + kind.length() + 4;
        return page.substring(from, page.indexOf("```", from));
    }

    @Test
    void thePicturesOfTheReadmeAreThere() throws IOException {
        for (Path picture : List.of(PICTURE, BENCH)) {
            assertThat(Files.readString(README)).contains("(" + picture + ")");
            assertThat(Files.size(picture)).isGreaterThan(10_000);
        }
    }
}
