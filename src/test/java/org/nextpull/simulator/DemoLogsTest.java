package org.nextpull.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The shipped logs are those that the program makes now; {@code ReadmeTest} can make them anew. */
class DemoLogsTest {
    private static final Path FOLDER = Path.of("sample-logs");
    private static final long LARGEST = 600_000;
    /** Another processor may round the last digit the other way. */
    private static final double LAST_DIGITS = 2.01;

    private static final List<DemoLog> LOGS = DemoLogs.all();

    static Stream<DemoLog> logs() {
        return LOGS.stream();
    }

    @ParameterizedTest
    @MethodSource("logs")
    void aShippedLogIsMadeAgainFromItsSeed(DemoLog log) throws IOException {
        assertSame(log.log(), Files.readString(FOLDER.resolve(log.name() + ".csv")));
    }

    @ParameterizedTest
    @MethodSource("logs")
    void itsTruthIsMadeAgainToo(DemoLog log) throws IOException {
        assertSame(log.truth(), Files.readString(FOLDER.resolve(".truth").resolve(log.name() + ".toml")));
    }

    @ParameterizedTest
    @MethodSource("logs")
    void aLogSaysThatItIsInventedAndIsSmall(DemoLog log) {
        assertThat(log.log()).startsWith("# invented demo data");
        assertThat(log.log().length()).isLessThan((int) LARGEST);
        assertThat(Files.exists(Path.of("sweep-plans", log.name() + ".toml"))).isTrue();
    }

    @Test
    void theHandbookPageGivesTheSeeds() throws IOException {
        String page = Files.readString(Path.of("src/site/markdown/sample-logs.md"));
        for (DemoLog log : LOGS) {
            assertThat(page).containsPattern("`" + log.name() + "\\.csv`.*" + log.seed());
        }
    }

    private static void assertSame(String made, String shipped) {
        List<String> madeLines = made.lines().toList();
        List<String> shippedLines = shipped.lines().toList();
        assertThat(madeLines)
                .as("made anew by: mvn -B -ntp -q test -Dtest=ReadmeTest -Dnextpull.remake=true")
                .hasSameSizeAs(shippedLines);
        for (int line = 0; line < madeLines.size(); line++) {
            if (!madeLines.get(line).equals(shippedLines.get(line))) {
                assertSameCells(madeLines.get(line), shippedLines.get(line));
            }
        }
    }

    private static void assertSameCells(String made, String shipped) {
        String[] ours = made.split("[,;\\t=]", -1);
        String[] theirs = shipped.split("[,;\\t=]", -1);
        assertThat(ours).as(shipped).hasSameSizeAs(theirs);
        for (int cell = 0; cell < ours.length; cell++) {
            if (!ours[cell].equals(theirs[cell])) {
                int decimals = theirs[cell].contains(".") ? theirs[cell].length() - theirs[cell].indexOf('.') - 1 : 0;
                double digit = Math.pow(10, -decimals);
                assertThat(Double.parseDouble(ours[cell].strip().toLowerCase(Locale.ROOT)))
                        .as(shipped)
                        .isCloseTo(Double.parseDouble(theirs[cell].strip()), within(LAST_DIGITS * digit));
            }
        }
    }
}
