package org.nextpull.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fit.Experience;
import org.nextpull.live.SessionFolders;
import org.nextpull.notebook.DataFolder;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.Notebook;
import org.nextpull.notebook.NotebookException;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.plan.EngineFacts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.Shown;

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

    /**
     * What earlier days teach a session that begins now; empty where the plan does not want it. Never failed: an engine waits, so a
     * notebook that cannot be read is a warning and teaches nothing.
     */
    public Outcome<Optional<Experience>> experience(SweepPlan plan) {
        return plan.wantsEarlierDays() ? readIfThere(book -> book.experience(plan)) : Outcome.of(Optional.empty());
    }

    /**
     * What a session knew when it began, so that it goes on as it was, whatever the notebook has learnt since; that it began with
     * another plan is a finding. Failed where it was a session of another engine.
     */
    public Outcome<Optional<Experience>> experienceAtStart(Path captures, PlanFile plan) {
        Outcome<Optional<KeptSession>> kept = readIfThere(book -> {
            Optional<SessionSummary> before = book.onCapture(captures.toString());
            return before.isPresent() ? Optional.of(book.session(before.get().id())) : Optional.empty();
        });
        return kept.then(found ->
                found.map(session -> goingOn(session, captures, plan)).orElseGet(() -> Outcome.of(Optional.empty())));
    }

    private static Outcome<Optional<Experience>> goingOn(KeptSession session, Path captures, PlanFile plan) {
        EngineFacts before = session.input().plan().engine();
        EngineFacts engine = plan.plan().engine();
        if (engine.isOther(before)) {
            // two engines in one session would be fitted as one
            return Outcome.failed(Finding.error(
                    FindingCode.LIVE_ENGINE_DIFFERS,
                    Place.nowhere(),
                    Detail.of("session", String.valueOf(session.id())),
                    Detail.of("was", words(before)),
                    Detail.of("now", words(engine))));
        }
        List<Finding> differs = session.start().planText().equals(plan.text())
                ? List.of()
                : List.of(Finding.warning(FindingCode.LIVE_PLAN_DIFFERS, Place.inFile(captures.toString())));
        return Outcome.of(session.input().experience(), differs);
    }

    private static String words(EngineFacts engine) {
        List<String> facts = new ArrayList<>();
        engine.displacementM3().ifPresent(cubicMetres -> facts.add(Shown.fixed(1000 * cubicMetres, 3) + " L"));
        engine.cylinders().ifPresent(count -> facts.add(Shown.count(count, "cylinder")));
        facts.add(engine.isBoosted() ? "boosted" : "natural");
        return engine.name().map(name -> "\"" + name + "\"").orElse("an engine without a name") + " ("
                + String.join(", ", facts) + ")";
    }

    private <T> Outcome<Optional<T>> readIfThere(NotebookAccess.Work<Optional<T>> work) {
        if (!isThere()) {
            return Outcome.of(Optional.empty());
        }
        Outcome<Optional<T>> read = read(work);
        return Outcome.of(
                read.value().flatMap(known -> known),
                read.findings().stream().map(Finding::asWarning).toList());
    }
}
