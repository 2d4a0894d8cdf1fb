package org.nextpull.window.past;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.app.DaySheet;
import org.nextpull.app.NotebookAccess;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.notebook.KeptSession;
import org.nextpull.window.page.DrivenPage;
import org.nextpull.window.page.Work;

@Timeout(180)
class PastPageIT {
    private static final Dimension SMALL = new Dimension(1280, 660);

    private final BlockingQueue<KeptSession> opened = new LinkedBlockingQueue<>();
    private final BlockingQueue<List<Long>> compared = new LinkedBlockingQueue<>();
    private Work work = new Work();

    @TempDir
    private Path folder = Path.of(".");

    @BeforeEach
    void aDisplay() {
        assumeFalse(GraphicsEnvironment.isHeadless(), "no display");
        work = new Work();
    }

    @AfterEach
    void end() {
        work.close();
    }

    private PastController.Ways ways() {
        return new PastController.Ways(
                opened::add,
                session -> Optional.of(Finding.error(
                        FindingCode.LIVE_WITHOUT_CAPTURE,
                        Place.nowhere(),
                        Detail.of("session", String.valueOf(session.id())))),
                session -> session.id() == 2,
                compared::add,
                shown -> DaySheet.Order.usual(LocalDate.EPOCH, "test", shown));
    }

    private DrivenPage open() throws Exception {
        Path file = SampleNotebook.with(
                folder, List.of("hillclimb-e10-timing", "hatchback-roller-mixture", "hillclimb-knock"));
        return DrivenPage.open(foot -> new PastController(work, foot, new NotebookAccess(file, false), ways()), SMALL);
    }

    @Test
    void sessionsAreFoundReadOpenedComparedNotedExportedAndBackedUp() throws Exception {
        try (DrivenPage page = open()) {
            page.until("the list", () -> page.said("Sessions").contains("Session 3"));
            page.until("the answer", () -> page.said("What the session says").contains("belt squeal"));
            assertThat(page.nameless()).isEmpty();
            page.press("SPACE");
            page.press("C");
            assertThat(page.said("Message")).contains("Mark two sessions");
            page.press("ctrl F");
            page.type("Find", "e10-timing");
            page.until("found", () -> page.said("Sessions").contains("Session 1"));
            page.press("C");
            assertThat(compared)
                    .as("what is typed in a field is no key of the page")
                    .isEmpty();
            page.enter("Find");
            page.until("the list", page::isTableFocused);
            page.press("SPACE");
            page.press("C");
            assertThat(compared.poll(10, TimeUnit.SECONDS)).containsExactly(3L, 1L);
            page.press("ENTER");
            assertThat(opened.poll(30, TimeUnit.SECONDS)).matches(session -> session.id() == 1);
            page.press("T");
            page.type("Note", "wet road");
            page.enter("Note");
            page.until("noted", () -> page.said("What the session says").contains("wet road"));
            page.press("E");
            page.type("Folder", folder.resolve("out").toString());
            page.enter("Folder");
            page.until("written", () -> Files.exists(folder.resolve("out/session-1.json")));
            page.press("B");
            page.type("New file", folder.resolve("copy.db").toString());
            page.enter("New file");
            page.until("copied", () -> page.said("Message").contains("Copied 3 sessions"));
        }
    }

    @Test
    void sessionsAreCorrectedRenamedAndRemovedAfterAQuestionAndOneThatRunsIsNot() throws Exception {
        try (DrivenPage page = open()) {
            page.until("the list", () -> page.said("Sessions").contains("Session 3"));
            page.press("R");
            page.until("why not", () -> page.said("Message").contains("has no raw data to continue from"));
            page.press("M");
            page.type("Engine", "another engine");
            page.enter("Engine");
            page.until("renamed", () -> page.said("Sessions").contains("another engine"));
            page.press("P");
            page.type("Pull", "99");
            page.type("Lambda", "0.9");
            page.enter("Lambda");
            page.until("no such pull", () -> page.said("Message").contains("no pull 99"));
            page.press("P");
            page.type("Pull", "1");
            page.type("Label", "new plugs");
            page.enter("Label");
            page.until("corrected", () -> page.said("Sessions").contains("new plugs"));
            page.press("DELETE");
            assertThat(page.said("Sessions")).contains("Session 3");
            page.confirm();
            page.until("removed", () -> page.said("Message").contains("Removed session 3"));
            page.until("the list", () -> !page.said("Sessions").contains("Session 3"));
            page.until("the next", () -> page.said("Sessions").contains("Session 2"));
            page.press("DELETE");
            page.confirm();
            page.until("it runs", () -> page.said("Message").contains("runs this session"));
            assertThat(page.said("Sessions")).contains("Session 2");
        }
    }

    @Test
    void thePageIsShownInEveryLook() throws Exception {
        try (DrivenPage page = open()) {
            page.until("the answer", () -> page.said("What the session says").contains("belt squeal"));
            page.press("SPACE");
            page.pictures("past", work, () -> {});
        }
    }
}
