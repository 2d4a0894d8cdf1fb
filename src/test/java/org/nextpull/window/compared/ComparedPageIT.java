package org.nextpull.window.compared;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.app.NotebookAccess;
import org.nextpull.window.page.DrivenPage;
import org.nextpull.window.page.Work;

@Timeout(180)
class ComparedPageIT {
    private static final Dimension SMALL = new Dimension(1280, 660);

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

    private DrivenPage open() {
        DrivenPage page = DrivenPage.open(
                foot -> new ComparedController(work, foot, new NotebookAccess(folder.resolve("none.db"), false)),
                SMALL);
        page.press("A");
        page.type("Log, folder, or session:3", "sample-logs/hillclimb-manifold.csv");
        page.enter("Log, folder, or session:3");
        page.until("what is missing", () -> page.said("Verdict").contains("name one"));
        page.press("P");
        page.type("Plan", "sweep-plans/hillclimb-manifold.toml");
        page.enter("Plan");
        page.until("the verdict", () -> page.said("Verdict").contains(" vs \"before\""));
        return page;
    }

    @Test
    void aLogIsComparedTurnedRoundAndTakenOut() {
        try (DrivenPage page = open()) {
            assertThat(page.nameless()).isEmpty();
            assertThat(page.said("What the verdict rests on")).contains("repeats to ");
            page.press("L");
            page.press("R");
            page.until("turned round", () -> page.said("Verdict").startsWith("\"before\" vs "));
            page.press("DELETE");
            page.until("nothing", () -> page.said("Verdict").startsWith("Nothing is compared"));
        }
    }

    @Test
    void thePageIsShownInEveryLook() {
        try (DrivenPage page = open()) {
            page.pictures("compared", work, () -> {});
        }
    }
}
