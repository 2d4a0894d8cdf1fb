package org.nextpull.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.app.DaySheet;
import org.nextpull.app.NotebookAccess;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.window.bench.CandidatesPage;
import org.nextpull.window.compared.ComparedController;
import org.nextpull.window.page.FootBar;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.Work;
import org.nextpull.window.past.PastController;
import org.nextpull.window.start.StartController;

/** Holds the handbook's lists of keys together with the keys that the pages have. */
class PagesHandbookTest {
    private static final Path PAGE = Path.of("src/site/markdown/window-pages.md");

    @Test
    void thePageListsTheKeysThatThereAre() throws IOException {
        List<String> written = Files.readAllLines(PAGE).stream()
                .filter(line -> line.startsWith("| `"))
                .toList();
        List<String> there = new ArrayList<>();
        try (Work work = new Work()) {
            FootBar foot = new FootBar();
            NotebookAccess notebook = new NotebookAccess(Path.of("no-such-notebook.db"), false);
            StartController.PortAccess ports =
                    new StartController.PortAccess(() -> Outcome.of(List.of()), new SerialPorts());
            List<KeyCommand> keys = new ArrayList<>();
            keys.addAll(new StartController(work, foot, ports, order -> {}).keys());
            keys.addAll(new PastController(
                            work,
                            foot,
                            notebook,
                            new PastController.Ways(
                                    session -> {},
                                    session -> Optional.empty(),
                                    session -> false,
                                    ids -> {},
                                    shown -> DaySheet.Order.usual(LocalDate.EPOCH, "test", shown)))
                    .keys());
            keys.addAll(new ComparedController(work, foot, notebook).keys());
            keys.addAll(new CandidatesPage(work, foot, act -> {}).keys());
            keys.forEach(key -> there.add("| `" + key.shown() + "` | " + key.what() + " |"));
        }
        assertThat(written).containsExactlyElementsOf(there);
    }
}
