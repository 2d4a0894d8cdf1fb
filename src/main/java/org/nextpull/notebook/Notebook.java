package org.nextpull.notebook;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.stream.Collectors;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.fit.Experience;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.KeyKind;
import org.nextpull.plan.text.PlanDraft;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;
import org.nextpull.session.SourcePulls;

/**
 * Sessions in one file. Several processes may have it open; one of them writes at a time, and each write is there whole or not at all,
 * whatever happens to the program or the machine. An object is for one thread.
 *
 * <p>Everything throws {@link NotebookException}, with a finding for the user, when the file cannot be read or written.
 */
public final class Notebook implements AutoCloseable {
    private final Database database;
    private final Map<Long, SessionKeeper> keepers = new HashMap<>();

    Notebook(Database database) {
        this.database = database;
    }

    /** Opens a notebook for writing; begins one, and makes its folder, where there is none. */
    public static Notebook open(Path file) throws IOException {
        return new Notebook(NotebookFile.open(file));
    }

    /** Opens a notebook that is there, for reading only. */
    public static Notebook openReadOnly(Path file) throws IOException {
        return new Notebook(NotebookFile.openReadOnly(file));
    }

    /** Where it lies. */
    public Path file() {
        return database.file();
    }

    /**
     * Begins a session and gives its number.
     *
     * @throws IllegalArgumentException when the text of the plan cannot be read
     */
    public long begin(SessionStart start) throws IOException {
        return SessionKeeper.begin(database, start);
    }

    /**
     * Keeps a day that is over, as one transaction: of several that are kept at once, each sees what the others have kept.
     *
     * @throws NotebookException with {@code NOTEBOOK_HAS_PULLS} where a session holds pulls of the day: one that is kept twice would be
     *     compared with itself and taught from twice
     */
    public long add(SessionStart start, SessionInput input, SessionResult result) throws IOException {
        return database.inTransaction(() -> {
            SortedSet<Long> holders = sessionsWith(result.sources());
            if (!holders.isEmpty()) {
                throw NotebookException.because(
                        FindingCode.NOTEBOOK_HAS_PULLS,
                        file(),
                        Detail.of(
                                "sessions",
                                holders.stream().map(String::valueOf).collect(Collectors.joining(" and "))));
            }
            long id = begin(start);
            keepPull(id, start.started(), input, result);
            close(id, start.started());
            return id;
        });
    }

    /** Takes a session out with all that belongs to it; its number is not given again. */
    public void remove(long id) throws IOException {
        database.inTransaction(() -> {
            session(id);
            return database.run("delete from session where id = ?", id);
        });
    }

    /** Gives the engine of a session another name, also in its plan. */
    public void rename(long id, String engine) throws IOException {
        database.inTransaction(() -> {
            SessionStart start = session(id).start();
            String text = PlanDraft.of(start.planText(), start.planName())
                    .value()
                    .map(draft ->
                            draft.with("engine", "name", KeyKind.TEXT, engine).text())
                    .orElseThrow(() -> NotebookException.noSession(file(), id));
            return database.run("update session set engine = ?, plan_text = ? where id = ?", engine, text, id);
        });
    }

    /**
     * Says afterwards what a pull of a session that is over was really run with, and makes its figures and advice again.
     *
     * @param at now
     */
    public void correct(long id, Instant at, OperatorAction.Correct correction) throws IOException {
        database.inTransaction(() -> {
            int pulls = session(id).result().pulls().size();
            if (correction.pull() < 1 || correction.pull() > pulls) {
                throw new NotebookException(Finding.error(
                        FindingCode.LIVE_PULL_UNKNOWN,
                        Place.nowhere(),
                        Detail.of("number", correction.pull()),
                        Detail.of("pulls", pulls)));
            }
            keepAct(id, at, correction);
            KeptSession now = session(id);
            keepPull(id, at, now.input(), now.result());
            return id;
        });
    }

    /**
     * Keeps a day as it now stands, in one transaction: after each pull, and after each act that changed something. What was kept
     * before is brought up to it; samples that are there already are not written again. The hand-made part of the input (struck,
     * lifted, corrected, changed limits) is not taken from here but from the acts.
     *
     * @param id number of the session
     * @param at when
     * @param input what the result was made from
     * @param result the day so far
     */
    public void keepPull(long id, Instant at, SessionInput input, SessionResult result) throws IOException {
        keeper(id).keep(at, input, result);
    }

    /** Keeps what the operator did. */
    public void keepAct(long id, Instant at, OperatorAction act) throws IOException {
        keeper(id).act(at, act);
    }

    /** Marks the end of a session. */
    public void close(long id, Instant at) throws IOException {
        keeper(id).close(at);
    }

    private SessionKeeper keeper(long id) {
        return keepers.computeIfAbsent(id, session -> new SessionKeeper(database, session));
    }

    /** All sessions, that of the latest day first. */
    public List<SessionSummary> list() throws IOException {
        return new Summaries(database).all();
    }

    /** The sessions in which each of these words stands: in engine, fuel, plan, labels, notes, names of logs, or the advice. */
    public List<SessionSummary> find(String words) throws IOException {
        return new Summaries(database).find(words);
    }

    /** The newest session on that capture that was not closed: a session that was broken off. */
    public Optional<SessionSummary> unfinished(String capture) throws IOException {
        return new Summaries(database).unfinished(capture);
    }

    /** The newest session on that capture, closed or not: what is gone on with when the capture is. */
    public Optional<SessionSummary> onCapture(String capture) throws IOException {
        return new Summaries(database).onCapture(capture);
    }

    /** A session with all that was kept of it. */
    public KeptSession session(long id) throws IOException {
        return database.inOneView(() -> new SessionReader(database, new Summaries(database).one(id)).read());
    }

    /**
     * What earlier sessions of the same engine, or else of its class, teach; wider than what they saw. Empty where there is none.
     *
     * @param plan the plan of the day that is to be advised; that it wants to learn is for the caller to ask
     * @param today its logs so far: a session that holds one of their pulls is that day itself and does not count
     */
    public Optional<Experience> experience(SweepPlan plan, List<SourcePulls> today) throws IOException {
        return new PastDays(database, plan).experience(today);
    }

    /** The same for a day that has no pull yet. */
    public Optional<Experience> experience(SweepPlan plan) throws IOException {
        return experience(plan, List.of());
    }

    /** Numbers of the sessions that hold pulls of this day already, the same in every sample; ascending. */
    SortedSet<Long> sessionsWith(List<SourcePulls> day) throws IOException {
        return PastDays.withSamePulls(database, day);
    }

    /** Looks for damage: in the file, in the samples, and by making every figure again from them. */
    public Checkup check() throws IOException {
        return Checkup.of(database);
    }

    /**
     * Copies the notebook as it stands, while others may write to it; the copy is a notebook itself.
     *
     * @param target where to; nothing may be there
     */
    public Copy backUp(Path target) throws IOException {
        return NotebookFile.backUp(database, target);
    }

    /** What the file's own check says; empty when it is content. */
    List<String> damage() throws IOException {
        return Checkup.damage(database);
    }

    @Override
    public void close() throws IOException {
        database.close();
    }

    /**
     * A back-up that was written and read back.
     *
     * @param file where it lies
     * @param sessions how many sessions it holds
     * @param bytes its size
     */
    public record Copy(Path file, int sessions, long bytes) {}
}
