package org.nextpull.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.report.Cautions;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.day.ReplayedDay;
import org.nextpull.window.look.Look;

/**
 * The window driven under a display: opened, replayed, read by accessible names, and acted in. Pictures of it are left below
 * {@code target/screens}, or in the folder that the property {@code nextpull.screens} names. With {@code -Dnextpull.remake=true} the
 * picture of the bench in the README is made anew.
 */
class WindowIT {
    private static final Path SCREENS = Path.of(System.getProperty("nextpull.screens", "target/screens"));
    private static final Path OF_THE_README = Path.of("src/site/resources/images/bench-window.png");
    private static final Dimension SMALL = new Dimension(1280, 720);
    private static final Dimension LARGE = new Dimension(3840, 2160);
    private static final Look LIGHT = Look.plain();
    private static final Look DARK = LIGHT.otherGround();
    private static final Look TYPE = LIGHT.otherType();

    @TempDir
    private Path folder = Path.of("unset");

    private EventThreadWatch watch;

    @BeforeAll
    static void needDisplay() {
        Display.need();
    }

    @BeforeEach
    void watchTheEventThread() {
        watch = new EventThreadWatch();
    }

    @AfterEach
    void nothingWasChangedOnAnotherThread() {
        watch.close();
        assertThat(watch.trespasses()).isEmpty();
    }

    private static DrivenWindow open(String day, Look look) {
        return new DrivenWindow(ReplayedDay.of(day + ".csv", SampleDays.day(day)), look, SMALL);
    }

    /** Reads the cautions and stands still before the first pull. */
    private static DrivenWindow begun(String day, Look look) {
        DrivenWindow window = open(day, look);
        window.press("ENTER");
        window.until("the day", () -> window.said("Link").contains("after pull"));
        window.press("N");
        window.press("B");
        window.until("its beginning", () -> window.said("Recording").startsWith("Paused"));
        return window;
    }

    private static void to(DrivenWindow window, int pull) {
        for (int times = 0; times < pull; times++) {
            window.press("N");
        }
        window.until("pull " + pull, () -> window.said("Link").contains("after pull " + pull + " of "));
    }

    private static void toEnd(DrivenWindow window) {
        window.until("the end of the day", () -> {
            window.press("N");
            return window.said("Recording").startsWith("At the end");
        });
    }

    @Test
    void theCautionsComeFirstAndAreAcknowledgedByAKey() {
        try (DrivenWindow window = open("hillclimb-e10-timing", LIGHT)) {
            assertThat(window.isShowing("Next step")).isFalse();
            List<String> sentences = Cautions.sentences();
            for (int number = 1; number <= sentences.size(); number++) {
                assertThat(window.said("Caution " + number)).isEqualTo(sentences.get(number - 1));
            }
            window.picture(SCREENS.resolve("cautions.png"));
            window.press("ENTER");
            window.until("the bench page", () -> window.isShowing("Next step"));
            assertThat(window.isShowing("Caution 1")).isFalse();
        }
    }

    @Test
    void theAdviceIsReadByItsNameAndGrowsPullByPull() {
        try (DrivenWindow window = begun("hillclimb-e10-timing", LIGHT)) {
            assertThat(window.said("Next step"))
                    .startsWith("Set, spark advance 20.0 deg. Baseline: the plan's start setting");
            List<String> advice = new ArrayList<>();
            for (int pull = 1; pull <= 4; pull++) {
                int count = pull;
                window.press("N");
                window.until("pull", () -> window.said("Link").contains("after pull " + count + " of "));
                advice.add(window.said("Next step"));
            }
            assertThat(advice).doesNotHaveDuplicates();
            assertThat(window.said("Because")).isNotBlank();
            assertThat(window.said("Response against the factor")).isEqualTo("Spark advance");
            window.press("B");
            window.until("a step back", () -> window.said("Link").contains("after pull 3 of "));
            assertThat(window.said("Next step")).isEqualTo(advice.get(2));
        }
    }

    @Test
    void spaceLetsTheDayRunAndPlusHastensIt() {
        try (DrivenWindow window = begun("hillclimb-e10-timing", LIGHT)) {
            for (int times = 0; times < 4; times++) {
                window.press("PLUS");
            }
            window.until("the pace", () -> window.said("Recording").contains("a pull every 0.25 s"));
            window.press("SPACE");
            window.until("the end of the day", () -> window.said("Recording").startsWith("At the end"));
            assertThat(window.said("Next step")).startsWith("Done, ");
        }
    }

    @Test
    void unitsAreSwitchedInPlace() {
        try (DrivenWindow window = begun("hillclimb-e10-timing", LIGHT)) {
            to(window, 3);
            window.until("degrees Celsius", () -> window.said("Coolant").contains("°C"));
            String advice = window.said("Next step");
            window.press("U");
            window.until("degrees Fahrenheit", () -> window.said("Coolant").contains("°F"));
            assertThat(window.said("Next step")).isEqualTo(advice);
            window.press("U");
            window.until("degrees Celsius again", () -> window.said("Coolant").contains("°C"));
        }
    }

    @Test
    void aPullIsStruckByKeysAndCountsAgain() {
        try (DrivenWindow window = begun("hillclimb-e10-timing", LIGHT)) {
            to(window, 3);
            window.until("the third pull selected", () -> window.selected().startsWith("Pull 3"));
            window.press("LEFT");
            window.until("the second pull selected", () -> window.selected().startsWith("Pull 2"));
            window.press("X");
            window.answer(List.of("Why"), List.of(""));
            assertThat(window.said("What is wrong")).isNotBlank();
            window.answer(List.of("Why"), List.of("throttle slipped"));
            window.until("the pull excluded", () -> window.selected().contains("excluded"));
            assertThat(window.said("Message")).startsWith("Pull 2 excluded from the fit");
            assertThat(window.selected()).contains("Excluded by the operator: throttle slipped");
            window.press("X");
            window.until("a question", () -> window.isShowing("Answer"));
            window.picture(SCREENS.resolve("question.png"));
            window.confirm();
            window.until("the pull counting", () -> !window.selected().contains("excluded"));
        }
    }

    @Test
    void theSheetIsExportedWithItsTables() throws IOException {
        try (DrivenWindow window = begun("hillclimb-e10-timing", LIGHT)) {
            to(window, 4);
            window.press("E");
            window.answer(List.of("Folder", "Name"), List.of(folder.toString(), "day four"));
            window.until("the files", () -> window.said("Message").startsWith("Wrote day four.html"));
            assertThat(Files.readString(folder.resolve("day four.html"))).startsWith("<!DOCTYPE html>");
            assertThat(Files.readAllLines(folder.resolve("day four.csv"))).hasSize(1 + 4);
            assertThat(Files.readString(folder.resolve("day four.json"))).contains("\"schema\" : 1");
            window.press("E");
            window.answer(
                    List.of("Folder", "Name"),
                    List.of(folder.resolve("day four.csv").toString(), "x"));
            window.until("why not", () -> window.said("Message").startsWith("Nothing could be written to "));
        }
    }

    @Test
    void theKeyThatOpensAQuestionIsNoPartOfItsAnswerAndAQuestionOutlivesTheListOfKeys() {
        try (DrivenWindow window = begun("hillclimb-e10-timing", LIGHT)) {
            to(window, 3);
            window.press("X");
            window.until("the question", () -> window.isShowing("Why"));
            window.typeAfterOpening("Why", 'x', 2);
            window.typeAfterOpening("Why", 'y', 500);
            assertThat(window.said("Why")).isEqualTo("y");
            window.press("F1");
            window.until("the list", () -> window.isShowing("Keys shown"));
            window.press("ESCAPE");
            window.until("the question again", () -> window.isShowing("Why"));
            window.answer(List.of("Why"), List.of("misfire"));
            window.until("the pull excluded", () -> window.selected().contains("excluded"));
        }
    }

    @Test
    void theKeysAreListedAndPutAway() {
        try (DrivenWindow window = begun("hillclimb-e10-timing", LIGHT)) {
            window.press("F1");
            window.until("the list", () -> window.isShowing("Keys shown"));
            assertThat(window.isShowing("X: exclude the selected pull, or reinstate it"))
                    .isTrue();
            window.picture(SCREENS.resolve("keys.png"));
            window.press("ESCAPE");
            window.until("the page", () -> window.isShowing("Pulls"));
            window.press("typed ?");
            window.until("the list", () -> window.isShowing("Keys shown"));
        }
    }

    @Test
    void itIsPaintedAtAllSizesAndInAllLooks() throws IOException {
        try (DrivenWindow window = begun("hillclimb-e10-timing", LIGHT)) {
            to(window, 6);
            pictures(window, "bench", SMALL);
            if (Boolean.getBoolean("nextpull.remake")) {
                Files.copy(SCREENS.resolve("bench-1280-light.png"), OF_THE_README, StandardCopyOption.REPLACE_EXISTING);
            }
            for (Dimension size : List.of(new Dimension(1366, 768), new Dimension(1920, 1080), LARGE)) {
                pictures(window, "bench", size);
            }
        }
        try (DrivenWindow window = begun("hillclimb-knock", LIGHT)) {
            to(window, 7);
            window.until("an alarm", () -> window.said("Urgent").contains("knock"));
            pictures(window, "knock", SMALL);
        }
        try (DrivenWindow window = begun("hillclimb-e10-day", LIGHT)) {
            toEnd(window);
            window.until("both charts", () -> window.isShowing("Response against the other factor"));
            pictures(window, "done", SMALL);
        }
    }

    @Test
    void aMapIsARowOfSpeedsAndDegreesThatOneKeyCopies() throws Exception {
        try (DrivenWindow window = begun("hillclimb-e10-map", LIGHT)) {
            to(window, 3);
            assertThat(window.said("Map to set")).contains("3500 rpm ", "7000 rpm ");
            window.press("Y");
            String copied = String.valueOf(
                    Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor));
            assertThat(copied.lines().toList()).hasSize(2);
            assertThat(copied).startsWith("3500\t4000\t");
            pictures(window, "map", SMALL);
            pictures(window, "map", new Dimension(1920, 1080));
        }
    }

    private static void pictures(DrivenWindow window, String name, Dimension size) {
        window.resize(size);
        for (Look look : List.of(LIGHT, DARK, TYPE, DARK.otherType().otherUnits())) {
            window.change(look);
            String of = name + "-" + size.width + (look.dark() ? "-dark" : "-light") + (look.large() ? "-large" : "")
                    + (look.units() == UnitSystem.US ? "-us" : "");
            assertThat(window.picture(SCREENS.resolve(of + ".png"))).isNotEmptyFile();
        }
        window.change(LIGHT);
        window.resize(SMALL);
    }
}
