package org.nextpull.window.past;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.notebook.KeptSession;
import org.nextpull.report.Shown;
import org.nextpull.report.text.AdviseText;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.UnitSystem;

class PastPresenterTest {
    private static final Shown METRIC = new Shown(UnitSystem.METRIC);
    private static final ZoneId UTC = ZoneId.of("UTC");

    @TempDir
    private Path folder = Path.of(".");

    private Shelf shelf() throws IOException {
        return new Shelf(SampleNotebook.with(folder, List.of("hillclimb-e10-timing", "hatchback-roller-mixture")));
    }

    @Test
    void sessionsAreListedNewestFirstAndFoundByWords() throws IOException {
        Shelf shelf = shelf();
        PastPresenter presenter = new PastPresenter(METRIC, UTC);
        List<PastRow> rows = presenter.rows(shelf.list("").value().orElseThrow());
        assertThat(rows).extracting(PastRow::id).containsExactly(2L, 1L);
        assertThat(rows.get(1).started()).isEqualTo("2026-05-02 08:30");
        assertThat(rows.get(1).spoken()).contains("hill-climb two-litre").contains("closed");
        assertThat(presenter.rows(shelf.list("hatchback").value().orElseThrow()))
                .extracting(PastRow::id)
                .containsExactly(2L);
        assertThat(shelf.list("nothing-of-the-kind").value().orElseThrow()).isEmpty();
    }

    @Test
    void aSessionSaysWhatTheCommandLineSaysOfTheSameDay() throws IOException {
        KeptSession kept = shelf().session(1).value().orElseThrow();
        SessionResult result = kept.result();
        PastSession page = new PastPresenter(METRIC, UTC).session(kept, result);
        String printed = new AdviseText(METRIC).advise(result);
        assertThat(page.answer())
                .hasSizeGreaterThan(3)
                .allSatisfy(sentence -> assertThat(printed).contains(sentence));
        assertThat(page.text()).contains("belt squeal").contains("Advised at the time");
        assertThat(page.sweep()).isPresent();
    }

    @Test
    void aNotebookThatIsNotThereIsEmptyAndADamagedOneSaysSo() throws IOException {
        assertThat(new Shelf(folder.resolve("none.db")).list("").value().orElseThrow())
                .isEmpty();
        Path broken =
                Files.writeString(folder.resolve("broken.db"), "this is no notebook, but long enough ".repeat(60));
        assertThat(new Shelf(broken).list("").isFailed()).isTrue();
        assertThat(new Shelf(broken).note(1, Instant.EPOCH, "x").isFailed()).isTrue();
    }

    @Test
    void aSessionIsExportedAndTheNotebookCopied() throws IOException {
        Shelf shelf = shelf();
        KeptSession kept = shelf.session(1).value().orElseThrow();
        Path out = folder.resolve("out");
        assertThat(PastFiles.write(kept, out.toString(), "day", METRIC).value()).contains(out);
        assertThat(out.resolve("day.html")).content().contains("session 1 of 2026-05-02");
        assertThat(out.resolve("day.csv")).isNotEmptyFile();
        assertThat(out.resolve("day.json")).content().contains("belt squeal");
        String copy = folder.resolve("copy.db").toString();
        assertThat(shelf.backUp(copy).value().orElseThrow().sessions()).isEqualTo(2);
        assertThat(shelf.backUp(copy).isFailed()).as("writes over nothing").isTrue();
        assertThat(PastFiles.write(kept, folder.resolve("copy.db").toString(), "day", METRIC)
                        .isFailed())
                .isTrue();
    }

    @Test
    void aNoteIsKept() throws IOException {
        Shelf shelf = shelf();
        assertThat(shelf.note(2, Instant.parse("2026-06-01T10:00:00Z"), "tyres changed")
                        .isFailed())
                .isFalse();
        KeptSession kept = shelf.session(2).value().orElseThrow();
        assertThat(new PastPresenter(METRIC, UTC).session(kept, kept.result()).hand())
                .anyMatch(line -> line.contains("tyres changed"));
    }
}
