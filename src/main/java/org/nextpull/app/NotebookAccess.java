package org.nextpull.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.live.SessionFolders;
import org.nextpull.notebook.DataFolder;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.Notebook;
import org.nextpull.notebook.NotebookException;
import org.nextpull.notebook.SessionSummary;

/**
 * The notebook, opened for each piece of work and closed again, so that a running session is never in its way. Not for the event thread.
 *
 * @param file where it lies; it need not be there
 * @param isNamed whether the user named it, so that one that cannot be read is an error and not only a warning
 */
public record NotebookAccess(Path file, boolean isNamed) {

    /** Something that is done with a notebook. */
    @FunctionalInterface
    public interface Work<T> {
        T with(Notebook notebook) throws IOException;
    }

    /** The one in the folder for the user's data. */
    public static NotebookAccess ofUser() {
        return new NotebookAccess(DataFolder.notebook(), false);
    }

    /** One that the user named. */
    public static Outcome<NotebookAccess> named(String name) {
        try {
            return Outcome.of(new NotebookAccess(Path.of(name), true));
        } catch (InvalidPathException impossible) {
            return Outcome.failed(Finding.error(
                    FindingCode.NOTEBOOK_CANNOT_OPEN,
                    Place.inFile(name),
                    Detail.of("why", "no file can be called that")));
        }
    }

    public boolean isThere() {
        return Files.exists(file);
    }

    /** The sessions in which all of these words stand, newest first; without words all. A notebook that was never begun is empty. */
    public Outcome<List<SessionSummary>> sessions(String words) {
        if (!isThere()) {
            return Outcome.of(List.of());
        }
        return read(notebook -> words.isBlank() ? notebook.list() : notebook.find(words.strip()));
    }

    /** A session with all that was kept of it. */
    public Outcome<KeptSession> session(long id) {
        return read(notebook -> notebook.session(id));
    }

    /** A session that no program runs now, so that it may be changed. */
    public Outcome<KeptSession> ended(long id) {
        SessionFolders folders = SessionFolders.beside(file);
        return session(id)
                .then(session -> session.start()
                        .capture()
                        .filter(capture -> folders.isRunning(Path.of(capture)))
                        .<Outcome<KeptSession>>map(capture ->
                                Outcome.failed(Finding.error(FindingCode.LIVE_SESSION_RUNS, Place.inFile(capture))))
                        .orElseGet(() -> Outcome.of(session)));
    }

    /** Reads from the notebook, which must be there. */
    public <T> Outcome<T> read(Work<T> work) {
        return with(this::openUpToDate, work);
    }

    /** Writes to the notebook; begins one where there is none. */
    public <T> Outcome<T> write(Work<T> work) {
        return with(() -> Notebook.open(file), work);
    }

    private interface Opening {
        Notebook open() throws IOException;
    }

    private <T> Outcome<T> with(Opening opening, Work<T> work) {
        try (Notebook notebook = opening.open()) {
            return Outcome.of(work.with(notebook));
        } catch (NotebookException known) {
            return Outcome.failed(known.finding());
        } catch (IOException fault) {
            return Outcome.failed(Finding.error(
                    FindingCode.NOTEBOOK_FAILED,
                    Place.inFile(file.toString()),
                    Detail.of("why", String.valueOf(fault.getMessage()))));
        }
    }

    /** One of an older version is brought up to this one, which needs the right to write it. */
    private Notebook openUpToDate() throws IOException {
        try {
            return Notebook.openReadOnly(file);
        } catch (NotebookException refused) {
            if (refused.finding().code() == FindingCode.NOTEBOOK_OLDER) {
                return Notebook.open(file);
            }
            throw refused;
        }
    }
}
