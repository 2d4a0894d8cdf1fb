package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Supplier;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.app.DayInput;
import org.nextpull.app.DayReader;
import org.nextpull.app.DaySheet;
import org.nextpull.app.LabelledLog;
import org.nextpull.app.NotebookAccess;
import org.nextpull.finding.Outcome;
import org.nextpull.report.Shown;
import org.nextpull.window.bench.BenchController;
import org.nextpull.window.day.ReplayedDay;
import org.nextpull.window.page.FootBar;
import org.nextpull.window.page.Page;
import org.nextpull.window.page.Signals;
import org.nextpull.window.page.Work;
import org.nextpull.window.past.PastController;

/** The same day is written byte for byte alike, whichever door it leaves by. The day is invented and compares two parts. */
class SheetDoorsTest {
    private static final String PLAN = "sweep-plans/hillclimb-manifold.toml";
    private static final String LOG = "sample-logs/hillclimb-manifold.csv";

    private static final String LOGS = "--no-notebook --plan " + PLAN + " " + LOG;

    @TempDir
    private static Path folder = Path.of(".");

    private static Path book = Path.of(".");

    @BeforeAll
    static void keepTheDayAndWriteItByCommand() {
        book = folder.resolve("notebook.db");
        run("notebook add --plan " + PLAN + " --on 2026-05-02 --notebook " + book + " " + LOG);
        run("report " + LOGS + " --out " + folder.resolve("logs.html"));
        run("report --session 1 --notebook " + book + " --out " + folder.resolve("session.html"));
    }

    private static String run(String line) {
        Run run = Run.of(line);
        assertThat(run.status()).as(run.err()).isZero();
        return run.out();
    }

    private static DaySheet.Order sheets(Shown shown) {
        return DaySheet.Order.usual(LocalDate.now(ZoneId.systemDefault()), Program.version(), shown);
    }

    private static NotebookAccess notebook() {
        return new NotebookAccess(book, true);
    }

    private static String bytes(String file) throws IOException {
        return Files.readString(folder.resolve(file));
    }

    @Test
    void theSheetOfLogs() throws IOException {
        Outcome<DayInput> day = DayReader.day(notebook(), Optional.of(PLAN), List.of(LabelledLog.unlabelled(LOG)));
        byBench("bench", day.value().orElseThrow());
        assertThat(bytes("logs.html")).contains("after vs before");
        assertThat(bytes("bench.html")).isEqualTo(bytes("logs.html")).isEqualTo(run("report --out - " + LOGS));
        assertThat(bytes("bench.csv")).isEqualTo(bytes("logs.csv"));
        assertThat(bytes("bench.json")).isEqualTo(bytes("logs.json")).isEqualTo(run("advise --json " + LOGS));
    }

    @Test
    void theDayThatWasRunIsReadOffTheNameOfALog() throws IOException {
        Path dated = Files.copy(Path.of(LOG), folder.resolve("2026-04-03-manifold.csv"));
        assertThat(run("report --out - --plan " + PLAN + " " + dated)).contains("<p>Run on 2026-04-03; printed ");
        assertThat(bytes("logs.html")).contains("<p>The logs do not say on which day they were run; printed ");
    }

    @Test
    void theSheetOfASession() throws IOException {
        byBench("kept-bench", DayReader.session(notebook(), 1).value().orElseThrow());
        byPast("past");
        assertThat(bytes("session.html")).contains("after vs before", "<p>Run on 2026-05-02, session 1, kept by ");
        for (String ending : List.of(".html", ".csv", ".json")) {
            assertThat(bytes("kept-bench" + ending)).as(ending).isEqualTo(bytes("session" + ending));
            assertThat(bytes("past" + ending)).as(ending).isEqualTo(bytes("session" + ending));
        }
        assertThat(bytes("session.csv")).isEqualTo(run("notebook export 1 --notebook " + book));
        assertThat(bytes("session.json")).isEqualTo(run("advise --json --session 1 --notebook " + book));
    }

    @Test
    void aSessionHasTheFiguresOfItsLogs() throws IOException {
        assertThat(bytes("session.csv")).isEqualTo(bytes("logs.csv"));
        assertThat(bytes("session.json")).isEqualTo(bytes("logs.json"));
        assertThat(bytes("session.html").replaceFirst("Run on [^;]*; ", ""))
                .isEqualTo(bytes("logs.html").replaceFirst("The logs do not say [^;]*; ", ""));
    }

    /** Key E of the bench, answered at its foot. */
    private static void byBench(String name, DayInput day) {
        try (Work work = new Work();
                ReplayedDay replayed = ReplayedDay.of("the day", day)) {
            FootBar foot = onEventThread(FootBar::new);
            BenchController bench = onEventThread(
                    () -> new BenchController(replayed, work, foot, new Unseen(), SheetDoorsTest::sheets));
            replayed.start(moment -> {});
            replayed.play(start -> start.step(start.of()));
            export(bench, foot, name);
            settle(work);
        }
    }

    /** Key E of the page of past sessions, answered at its foot. */
    private static void byPast(String name) {
        try (Work work = new Work()) {
            FootBar foot = onEventThread(FootBar::new);
            PastController past = onEventThread(() -> new PastController(
                    work,
                    foot,
                    notebook(),
                    new PastController.Ways(
                            session -> {},
                            session -> Optional.empty(),
                            session -> false,
                            sessions -> {},
                            SheetDoorsTest::sheets)));
            onEventThread(() -> {
                past.focus();
                return true;
            });
            settle(work);
            export(past, foot, name);
            settle(work);
        }
    }

    private static void export(Page page, FootBar foot, String name) {
        onEventThread(() -> {
            page.keys().stream()
                    .filter(key -> key.shown().equals("E"))
                    .findFirst()
                    .orElseThrow()
                    .action()
                    .run();
            List<JTextField> fields = fields(foot);
            fields.get(0).setText(folder.toString());
            fields.get(1).setText(name);
            fields.get(1).postActionEvent();
            return true;
        });
    }

    /** Waits until the working thread has done what it was given, and the event thread has shown it. */
    private static void settle(Work work) {
        CountDownLatch done = new CountDownLatch(1);
        work.think(() -> true, shown -> done.countDown());
        try {
            done.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private static List<JTextField> fields(Container parent) {
        List<JTextField> fields = new ArrayList<>();
        for (Component child : parent.getComponents()) {
            if (child instanceof JTextField field) {
                fields.add(field);
            } else if (child instanceof Container container) {
                fields.addAll(fields(container));
            }
        }
        return fields;
    }

    private static <T> T onEventThread(Supplier<T> made) {
        List<T> result = new ArrayList<>();
        try {
            EventQueue.invokeAndWait(() -> result.add(made.get()));
        } catch (InterruptedException | InvocationTargetException fault) {
            throw new AssertionError("on the event thread", fault);
        }
        return result.get(0);
    }

    /** Nobody looks at this window. */
    private static final class Unseen implements Signals {
        @Override
        public void urgent(List<String> sentences) {}

        @Override
        public void alarm(Signals.AlarmSign sign) {}

        @Override
        public void changed() {}
    }
}
