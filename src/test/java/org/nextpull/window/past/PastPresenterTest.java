package org.nextpull.window.past;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.app.NotebookAccess;
import org.nextpull.notebook.KeptSession;
import org.nextpull.report.Shown;
import org.nextpull.report.text.AdviseText;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.UnitSystem;

class PastPresenterTest {
    private static final Shown METRIC = new Shown(UnitSystem.METRIC);
    private static final ZoneId UTC = ZoneId.of("UTC");

    @TempDir
    private Path folder = Path.of(".");

    private NotebookAccess notebook() throws IOException {
        return new NotebookAccess(
                SampleNotebook.with(folder, List.of("hillclimb-e10-timing", "hatchback-roller-mixture")), false);
    }

    @Test
    void sessionsAreListedNewestFirstAndFoundByWords() throws IOException {
        NotebookAccess notebook = notebook();
        PastPresenter presenter = new PastPresenter(METRIC, UTC);
        List<PastPresenter.Row> rows =
                presenter.rows(notebook.sessions("").value().orElseThrow());
        assertThat(rows).extracting(PastPresenter.Row::id).containsExactly(2L, 1L);
        assertThat(rows.get(1).started()).isEqualTo("2026-05-02 08:30");
        assertThat(rows.get(1).spoken()).contains("hill-climb two-litre").contains("closed");
        assertThat(presenter.rows(notebook.sessions("hatchback").value().orElseThrow()))
                .extracting(PastPresenter.Row::id)
                .containsExactly(2L);
        assertThat(notebook.sessions("nothing-of-the-kind").value().orElseThrow())
                .isEmpty();
    }

    @Test
    void aSessionSaysWhatTheCommandLineSaysOfTheSameDay() throws IOException {
        KeptSession kept = notebook().session(1).value().orElseThrow();
        SessionResult result = kept.result();
        PastPresenter.Details page = new PastPresenter(METRIC, UTC).session(kept, result);
        String printed = new AdviseText(METRIC).advise(result);
        assertThat(page.answer())
                .hasSizeGreaterThan(3)
                .allSatisfy(sentence -> assertThat(printed).contains(sentence));
        assertThat(page.text()).contains("belt squeal").contains("Advised at the time");
        assertThat(page.sweep()).isPresent();
    }

    @Test
    void aNotebookThatIsNotThereIsEmptyAndADamagedOneSaysSo() throws IOException {
        assertThat(new NotebookAccess(folder.resolve("none.db"), false)
                        .sessions("")
                        .value()
                        .orElseThrow())
                .isEmpty();
        Path broken =
                Files.writeString(folder.resolve("broken.db"), "this is no notebook, but long enough ".repeat(60));
        assertThat(new NotebookAccess(broken, false).sessions("").isFailed()).isTrue();
        assertThat(new NotebookAccess(broken, false).session(1).isFailed()).isTrue();
    }

    @Test
    void aNoteIsKept() throws IOException {
        NotebookAccess notebook = notebook();
        assertThat(notebook.write(book -> {
                            book.keepAct(
                                    2,
                                    Instant.parse("2026-06-01T10:00:00Z"),
                                    new OperatorAction.Note(OptionalInt.empty(), "tyres changed"));
                            return true;
                        })
                        .isFailed())
                .isFalse();
        KeptSession kept = notebook.session(2).value().orElseThrow();
        assertThat(new PastPresenter(METRIC, UTC).session(kept, kept.result()).hand())
                .anyMatch(line -> line.contains("tyres changed"));
    }
}
