package org.nextpull.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;

/** Opens and prints the sheet in a real Chromium; skipped, and said so, where none is installed. Nothing here needs a network. */
class SheetInBrowserIT {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser");
    private static final Path KEPT = Path.of("target/sheets");

    /** A4 less the margins of 13 mm, at 96 pixels an inch. */
    private static final int PAPER_PX = 695;

    @TempDir
    private Path folder = Path.of("unset");

    private static Optional<Path> browser = Optional.empty();

    @BeforeAll
    static void findBrowser() throws IOException {
        browser = Stream.of(System.getenv("PATH").split(":"))
                .flatMap(place -> NAMES.stream().map(name -> Path.of(place, name)))
                .filter(Files::isExecutable)
                .findFirst();
        assumeTrue(browser.isPresent(), "no Chromium on this machine: the sheet was not opened in a browser");
        Files.createDirectories(KEPT);
    }

    private Path sheet(String name, String html) throws IOException {
        return Files.writeString(KEPT.resolve(name), html).toAbsolutePath();
    }

    private String run(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                browser.orElseThrow().toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--enable-logging=stderr",
                "--host-resolver-rules=MAP * ~NOTFOUND",
                "--user-data-dir=" + folder.resolve("profile")));
        command.addAll(List.of(arguments));
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        boolean ended = process.waitFor(120, TimeUnit.SECONDS);
        if (!ended) {
            process.destroyForcibly();
        }
        assertThat(ended).as("Chromium ends").isTrue();
        return Files.readString(said, StandardCharsets.UTF_8);
    }

    @Test
    void theSheetOpensWithoutAWordOnTheConsoleAndPrints() throws IOException, InterruptedException {
        Path file = sheet("demo.html", Sheet.of(Days.demo(folder), new Shown(UnitSystem.METRIC)));
        Path picture = KEPT.resolve("demo.png").toAbsolutePath();
        String said = run(
                "--window-size=1000,2600",
                "--screenshot=" + picture,
                file.toUri().toString());
        assertThat(said).doesNotContain("CONSOLE");
        assertThat(picture).isNotEmptyFile();
        Path paper = KEPT.resolve("demo.pdf").toAbsolutePath();
        run("--no-pdf-header-footer", "--print-to-pdf=" + paper, file.toUri().toString());
        assertThat(Files.readString(paper, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
    }

    @Test
    void hostileTextStaysText() throws IOException, InterruptedException {
        Path file = sheet("hostile.html", Sheet.of(Days.hostile(folder), new Shown(UnitSystem.US)));
        String said = run("--dump-dom", file.toUri().toString());
        assertThat(said).contains("<h1>").doesNotContain("<script", "CONSOLE");
        assertThat(said.split("<img ", -1)).hasSize(1 + 1);
    }

    /** Sizes by ISO 216 (210 mm by 297 mm) and ANSI/ASME Y14.1 (8.5 in by 11 in), in points of 1/72 in. */
    @ParameterizedTest
    @CsvSource({"A4, 594.96, 841.92", "letter, 612, 792"})
    void printsOnPaperOfEitherWorld(String paper, double widthPt, double heightPt)
            throws IOException, InterruptedException {
        String html = Sheet.of(Days.demo(folder), new Shown(UnitSystem.METRIC))
                .replace("@page { margin", "@page { size: " + paper + "; margin");
        Path file = sheet("demo-" + paper + ".html", html);
        Path pdf = KEPT.resolve("demo-" + paper + ".pdf").toAbsolutePath();
        run("--no-pdf-header-footer", "--print-to-pdf=" + pdf, file.toUri().toString());
        Matcher boxes = Pattern.compile("/MediaBox \\[0 0 ([0-9.]+) ([0-9.]+)]")
                .matcher(Files.readString(pdf, StandardCharsets.ISO_8859_1));
        int pages = 0;
        while (boxes.find()) {
            pages++;
            assertThat(Double.parseDouble(boxes.group(1))).isCloseTo(widthPt, within(1.0));
            assertThat(Double.parseDouble(boxes.group(2))).isCloseTo(heightPt, within(1.0));
        }
        assertThat(pages).isBetween(2, 6);
    }

    /** A script in a copy of the sheet measures it at the width that is left between the margins of A4. */
    @Test
    void nothingSticksOutOfThePaper() throws IOException, InterruptedException {
        String measuring = "<script>const wide = [...document.querySelectorAll('body *')]"
                + ".filter(e => e.getBoundingClientRect().right > innerWidth + 1).map(e => e.tagName);"
                + "document.title = 'sticks out: ' + wide.join(' ') + '.';</script></body>";
        String html = Sheet.of(Days.demo(folder), new Shown(UnitSystem.METRIC))
                .replaceFirst("<meta http-equiv=[^>]*>", "")
                .replace("@media print", "@media all")
                .replace("</body>", measuring);
        Path file = sheet("demo-measured.html", html);
        String said = run(
                "--window-size=" + PAPER_PX + ",2000",
                "--force-device-scale-factor=1",
                "--dump-dom",
                file.toUri().toString());
        assertThat(said).contains("<title>sticks out: .</title>");
    }
}
