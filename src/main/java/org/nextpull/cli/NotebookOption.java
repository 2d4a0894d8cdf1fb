package org.nextpull.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.live.SessionFolders;
import org.nextpull.notebook.DataFolder;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.Notebook;
import org.nextpull.notebook.NotebookException;
import picocli.CommandLine.Option;

/** Which notebook a command works on, and the one place where its failures become messages. */
final class NotebookOption {
    @Option(
            names = "--notebook",
            paramLabel = "FILE",
            description = "The notebook (default: notebook.db in the folder for your data).")
    private Optional<String> named = Optional.empty();

    /** Something that is done with a notebook. */
    interface Work<T> {
        T with(Notebook notebook) throws IOException;
    }

    Path file() {
        return named.map(NotebookOption::path).orElseGet(DataFolder::notebook);
    }

    /** Whether the user named one. */
    boolean isNamed() {
        return named.isPresent();
    }

    boolean isThere() {
        return Files.exists(file());
    }

    /** Reads from the notebook, which must be there. */
    <T> T reading(Work<T> work) {
        try (Notebook notebook = openUpToDate()) {
            return work.with(notebook);
        } catch (IOException fault) {
            throw new Program.BadInput(List.of(finding(fault)));
        }
    }

    /** One of an older version is brought up to this one, which needs the right to write it. */
    private Notebook openUpToDate() throws IOException {
        try {
            return Notebook.openReadOnly(file());
        } catch (NotebookException refused) {
            if (refused.finding().code() == FindingCode.NOTEBOOK_OLDER) {
                return Notebook.open(file());
            }
            throw refused;
        }
    }

    /** A session that no program runs now, so that it may be changed. */
    KeptSession ended(long id) {
        KeptSession session = reading(book -> book.session(id));
        SessionFolders folders = SessionFolders.beside(file());
        session.start()
                .capture()
                .filter(capture -> folders.isRunning(Path.of(capture)))
                .ifPresent(capture -> {
                    throw new Program.BadInput(
                            List.of(Finding.error(FindingCode.LIVE_SESSION_RUNS, Place.inFile(capture))));
                });
        return session;
    }

    /** Writes to the notebook; begins one where there is none. */
    <T> T writing(Work<T> work) {
        try (Notebook notebook = Notebook.open(file())) {
            return work.with(notebook);
        } catch (IOException fault) {
            throw new Program.BadInput(List.of(finding(fault)));
        }
    }

    Finding finding(IOException fault) {
        return fault instanceof NotebookException known
                ? known.finding()
                : Finding.error(
                        FindingCode.NOTEBOOK_FAILED,
                        Place.inFile(file().toString()),
                        Detail.of("why", String.valueOf(fault.getMessage())));
    }

    private static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException impossible) {
            throw new Program.BadInput(List.of(Finding.error(
                    FindingCode.NOTEBOOK_CANNOT_OPEN,
                    Place.inFile(name),
                    Detail.of("why", "no file can be called that"))));
        }
    }
}
