package org.nextpull.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import examples.AdviceOnLogs;
import examples.LabelsInTurn;
import examples.OwnLogger;
import examples.SparkSweep;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The handbook page "As a library" shows the examples of the test tree, and what they print; {@code -Dnextpull.remake=true} prints anew. */
class LibraryPageTest {
    private static final Path PAGE = Path.of("src/site/markdown/library.md");
    private static final Path SOURCES = Path.of("src/test/java/examples");
    private static final Pattern CODE = Pattern.compile("```java\\n(.*?)```", Pattern.DOTALL);
    private static final Pattern OUTPUT = Pattern.compile("`(\\w+)` prints\\n\\n```text\\n(.*?)```", Pattern.DOTALL);

    private static final Map<String, Consumer<PrintStream>> EXAMPLES = Map.of(
            "SparkSweep",
            SparkSweep::show,
            "AdviceOnLogs",
            AdviceOnLogs::show,
            "OwnLogger",
            OwnLogger::show,
            "LabelsInTurn",
            LabelsInTurn::show);

    @BeforeAll
    static void remake() throws IOException {
        if (Boolean.getBoolean("nextpull.remake")) {
            String page = OUTPUT.matcher(Files.readString(PAGE))
                    .replaceAll(shown -> Matcher.quoteReplacement(
                            "`" + shown.group(1) + "` prints\n\n```text\n" + output(shown.group(1)) + "```"));
            Files.writeString(PAGE, page);
        }
    }

    private static String output(String example) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Objects.requireNonNull(EXAMPLES.get(example)).accept(new PrintStream(bytes, true, StandardCharsets.UTF_8));
        return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    /** The page breaks lines where it reads well, the formatter where it must. */
    private static String withoutBlanks(String code) {
        return code.replaceAll("\\s+", "");
    }

    @Test
    void itsCodeStandsInTheTestTree() throws IOException {
        String sources = withoutBlanks(
                EXAMPLES.keySet().stream().sorted().map(LibraryPageTest::source).collect(Collectors.joining("\n")));
        List<String> shown = blocks(CODE, 1);
        assertThat(shown).hasSizeGreaterThanOrEqualTo(EXAMPLES.size());
        assertThat(shown).allSatisfy(code -> assertThat(sources).contains(withoutBlanks(code)));
    }

    @Test
    void itSaysWhatEachExamplePrints() throws IOException {
        assertThat(blocks(OUTPUT, 1)).containsExactlyInAnyOrderElementsOf(EXAMPLES.keySet());
        assertThat(blocks(OUTPUT, 2))
                .isEqualTo(
                        blocks(OUTPUT, 1).stream().map(LibraryPageTest::output).toList());
    }

    private static List<String> blocks(Pattern pattern, int group) throws IOException {
        Matcher shown = pattern.matcher(Files.readString(PAGE));
        return shown.results().map(block -> block.group(group)).toList();
    }

    private static String source(String example) {
        try {
            return Files.readString(SOURCES.resolve(example + ".java"));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    @Test
    void theExamplesNeedNoOtherRoomThanTheEntryAndItsWords() {
        ArchRuleDefinition.classes()
                .that()
                .resideInAPackage("examples")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "java..",
                        "org.jspecify..",
                        "examples",
                        "org.nextpull.api",
                        "org.nextpull.unit",
                        "org.nextpull.finding",
                        "org.nextpull.channel",
                        "org.nextpull.advice",
                        "org.nextpull.compare")
                .check(new ClassFileImporter().importPackages("examples"));
        // of the two rooms that decide, only the closed lists
        ArchRuleDefinition.noClasses()
                .that()
                .resideInAPackage("examples")
                .should()
                .dependOnClassesThat()
                .haveNameMatching("org\\.nextpull\\.(advice\\.(?!Action$|AdviceCode$)"
                        + "|compare\\.(?!Comparison\\$(Verdict|PercentInterval)$)).*")
                .check(new ClassFileImporter().importPackages("examples"));
    }
}
