package org.nextpull.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.finding.FindingCode;
import org.nextpull.session.SessionResult;

/** Several at once on one file, each with a connection of its own, as several processes have. */
class TogetherTest {
    @TempDir
    private Path folder;

    private SampleDays.Day day;
    private List<SessionResult> results;

    @BeforeEach
    void evaluate() throws IOException {
        day = SampleDays.of("hillclimb-e10-timing");
        results = new ArrayList<>();
        for (int count = 1; count <= day.sources().get(0).candidates().size(); count++) {
            results.add(day.first(count).result());
        }
    }

    private long keepAll(Path file) throws IOException {
        try (Notebook notebook = Notebook.open(file)) {
            long id = notebook.begin(day.start());
            for (int count = 1; count <= results.size(); count++) {
                SampleDays.Day soFar = day.first(count);
                notebook.keepPull(id, SampleDays.MORNING, soFar.input(), results.get(count - 1));
            }
            return id;
        }
    }

    @Test
    void twoWritersAndAReaderAndABackUpAtOnceAllEndWell() throws Exception {
        Path file = folder.resolve("notebook.db");
        Notebook.open(file).close();
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Long>> work = new ArrayList<>(List.of(() -> keepAll(file), () -> keepAll(file)));
            work.add(() -> {
                for (int round = 0; round < 10; round++) {
                    try (Notebook notebook = Notebook.openReadOnly(file)) {
                        for (SessionSummary summary : notebook.list()) {
                            KeptSession kept = notebook.session(summary.id());
                            assertThat(kept.sources().stream()
                                            .mapToInt(source ->
                                                    source.candidates().size())
                                            .sum())
                                    .as("pulls and samples are of one moment")
                                    .isEqualTo(kept.pulls().size());
                        }
                    }
                }
                return 0L;
            });
            work.add(() -> {
                for (int round = 0; round < 5; round++) {
                    try (Notebook notebook = Notebook.openReadOnly(file)) {
                        Notebook.Copy copy = notebook.backUp(folder.resolve("copy-" + round + ".db"));
                        assertThat(copy.sessions()).isLessThanOrEqualTo(2);
                    }
                }
                return 0L;
            });
            for (Future<Long> each : threads.invokeAll(work)) {
                each.get();
            }
        } finally {
            threads.shutdown();
        }
        try (Notebook notebook = Notebook.openReadOnly(file)) {
            assertThat(notebook.check().findings()).isEmpty();
            assertThat(notebook.list()).hasSize(2).allMatch(session -> session.pulls() == results.size());
        }
        for (int round = 0; round < 5; round++) {
            try (Notebook copy = Notebook.openReadOnly(folder.resolve("copy-" + round + ".db"))) {
                assertThat(copy.check().findings()).isEmpty();
            }
        }
    }

    @Test
    void aBackUpIsANotebookAndGivesTheIdenticalSession() throws IOException {
        Path file = folder.resolve("notebook.db");
        long id = keepAll(file);
        Path copy = folder.resolve("copy.db");
        try (Notebook notebook = Notebook.openReadOnly(file)) {
            assertThat(notebook.backUp(copy).sessions()).isEqualTo(1);
        }
        try (Notebook notebook = Notebook.open(copy)) {
            assertThat(notebook.session(id).result().pulls())
                    .isEqualTo(day.result().pulls());
            notebook.close(id, SampleDays.MORNING);
        }
        assertThat(folder.resolve("copy.db.part")).doesNotExist();
    }

    @Test
    void aBackUpWritesOverNothing() throws IOException {
        Path file = folder.resolve("notebook.db");
        Notebook.open(file).close();
        Path taken = Files.writeString(folder.resolve("taken"), "precious");
        try (Notebook notebook = Notebook.openReadOnly(file)) {
            for (Path target : List.of(taken, file)) {
                NotebookException refused =
                        catchThrowableOfType(NotebookException.class, () -> notebook.backUp(target));
                assertThat(refused.finding().code()).isEqualTo(FindingCode.NOTEBOOK_BACK_UP_EXISTS);
            }
            NotebookException nowhere = catchThrowableOfType(
                    NotebookException.class, () -> notebook.backUp(folder.resolve("not/there.db")));
            assertThat(nowhere.finding().code()).isEqualTo(FindingCode.NOTEBOOK_CANNOT_OPEN);
        }
        assertThat(taken).hasContent("precious");
    }
}
