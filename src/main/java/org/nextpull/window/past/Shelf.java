package org.nextpull.window.past;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fit.Experience;
import org.nextpull.notebook.Copy;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.Notebook;
import org.nextpull.notebook.NotebookException;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.plan.SweepPlan;
import org.nextpull.session.Act;

/** The notebook as the window uses it: opened for each wish and closed again, so that a running session is never in its way. */
public final class Shelf {
    private final Path file;

    public Shelf(Path file) {
        this.file = file;
    }

    /** Where the notebook lies. */
    public Path file() {
        return file;
    }

    private interface Wish<T> {
        T of(Notebook notebook) throws IOException;
    }

    /** The sessions in which all of these words stand, newest first; without words all. A notebook that was never begun is empty. */
    Outcome<List<SessionSummary>> list(String words) {
        if (!Files.exists(file)) {
            return Outcome.of(List.of());
        }
        return reading(notebook -> words.isBlank() ? notebook.list() : notebook.find(words.strip()));
    }

    /** A session with all that was kept of it. */
    public Outcome<KeptSession> session(long id) {
        return reading(notebook -> notebook.session(id));
    }

    /** What earlier sessions teach about this plan; empty where the plan does not want it, or where nothing is known or readable. */
    public Optional<Experience> experience(SweepPlan plan) {
        if (!plan.goal().learnFromNotebook() || !Files.exists(file)) {
            return Optional.empty();
        }
        return reading(notebook -> notebook.experience(plan)).value().flatMap(known -> known);
    }

    /** A copy that is whole, also while a session runs; writes over nothing. */
    Outcome<Copy> backUp(String target) {
        try {
            Path copy = Path.of(target.strip());
            return reading(notebook -> notebook.backUp(copy));
        } catch (InvalidPathException odd) {
            return Outcome.failed(failed("no file can be called " + target));
        }
    }

    /** Adds a remark to a session. */
    Outcome<Boolean> note(long id, Instant at, String text) {
        return writing(notebook -> notebook.keepAct(id, at, new Act.Note(OptionalInt.empty(), text)));
    }

    /** Takes a session out; which must not run, as with the two below. */
    Outcome<Boolean> remove(long id) {
        return writing(notebook -> notebook.remove(id));
    }

    /** Gives the engine of a session another name. */
    Outcome<Boolean> rename(long id, String engine) {
        return writing(notebook -> notebook.rename(id, engine));
    }

    /** Says what a pull of a session was really run with. */
    Outcome<Boolean> correct(long id, Instant at, Act.Correct correction) {
        return writing(notebook -> notebook.correct(id, at, correction));
    }

    private interface Change {
        void in(Notebook notebook) throws IOException;
    }

    private Outcome<Boolean> writing(Change change) {
        try (Notebook notebook = Notebook.open(file)) {
            change.in(notebook);
            return Outcome.of(true);
        } catch (IOException fault) {
            return Outcome.failed(finding(fault));
        }
    }

    private <T> Outcome<T> reading(Wish<T> wish) {
        try (Notebook notebook = upToDate()) {
            return Outcome.of(wish.of(notebook));
        } catch (IOException fault) {
            return Outcome.failed(finding(fault));
        }
    }

    /** One of an older version is brought up to this one, which needs the right to write it. */
    private Notebook upToDate() throws IOException {
        try {
            return Notebook.openReadOnly(file);
        } catch (NotebookException refused) {
            if (refused.finding().code() == FindingCode.NOTEBOOK_OLDER) {
                return Notebook.open(file);
            }
            throw refused;
        }
    }

    private Finding finding(IOException fault) {
        return fault instanceof NotebookException known ? known.finding() : failed(String.valueOf(fault.getMessage()));
    }

    private Finding failed(String why) {
        return Finding.error(FindingCode.NOTEBOOK_FAILED, Place.inFile(file.toString()), Detail.of("why", why));
    }
}
