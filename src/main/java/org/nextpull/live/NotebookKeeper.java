package org.nextpull.live;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.notebook.Notebook;
import org.nextpull.notebook.NotebookException;
import org.nextpull.notebook.SessionStart;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;

/**
 * Keeps a session in a notebook. While that cannot be written, or is gone, acts are held and it is tried again; then all of the day is
 * there, since each time all of it is kept. Where the notebook was lost, another one is begun in its place.
 */
public final class NotebookKeeper implements Keeper {
    private static final Duration RETRY = Duration.ofSeconds(5);

    private final Path file;
    private final SessionStart start;
    private final List<Finding> news = new ArrayList<>();
    private final List<OperatorAction> acts = new ArrayList<>();
    private final List<Instant> actsAt = new ArrayList<>();
    private Optional<Notebook> notebook = Optional.empty();
    /** Acts that were in the notebook when it was opened and that this session has not come to yet. */
    private final List<OperatorAction> before = new ArrayList<>();

    private int kept;
    private Instant triedAt = Instant.MIN;
    private volatile OptionalLong id = OptionalLong.empty();
    private volatile Optional<Finding> failing = Optional.empty();

    private NotebookKeeper(Path file, SessionStart start) {
        this.file = file;
        this.start = start;
    }

    /**
     * Begins a session in a notebook, or goes on with the one that has the same capture. What goes wrong is said by {@link #news}.
     *
     * @param file the notebook, which need not be there
     * @param start what is known of the session, with its capture
     */
    public static NotebookKeeper open(Path file, SessionStart start) {
        NotebookKeeper keeper = new NotebookKeeper(file, start);
        keeper.attempt(start.started(), keeper::notebook);
        return keeper;
    }

    @Override
    public OptionalLong session() {
        return id;
    }

    @Override
    public void day(Instant at, SessionInput input, SessionResult result) {
        attempt(at, () -> {
            Notebook open = notebook();
            keepActs(open);
            open.keepPull(id.getAsLong(), at, input, result);
        });
    }

    @Override
    public void earlier(Instant at, List<OperatorAction> earlier) {
        for (OperatorAction act : earlier) {
            acts.add(act);
            actsAt.add(at);
        }
    }

    @Override
    public void act(Instant at, OperatorAction act) {
        acts.add(act);
        actsAt.add(at);
        attempt(at, () -> keepActs(notebook()));
    }

    @Override
    public void close(Instant at) {
        triedAt = Instant.MIN;
        attempt(at, () -> {
            Notebook open = notebook();
            keepActs(open);
            open.close(id.getAsLong(), at);
            open.close();
            notebook = Optional.empty();
        });
    }

    @Override
    public synchronized List<Finding> news() {
        List<Finding> result = List.copyOf(news);
        news.clear();
        return result;
    }

    @Override
    public Optional<Finding> failing() {
        return failing;
    }

    /**
     * Keeps what is not in the notebook. A program that was killed may have kept an act of which its capture knows nothing, and another
     * is settled in its place when it goes on, so acts are told apart by what they say and not by how many there are.
     */
    private void keepActs(Notebook open) throws IOException {
        while (kept < acts.size()) {
            if (!before.remove(acts.get(kept))) {
                open.keepAct(id.getAsLong(), actsAt.get(kept), acts.get(kept));
            }
            kept++;
        }
    }

    /** The notebook with this session in it. */
    private Notebook notebook() throws IOException {
        if (notebook.isPresent() && !Files.exists(file)) {
            forget();
        }
        if (notebook.isPresent()) {
            return notebook.get();
        }
        Notebook open = Notebook.open(file);
        notebook = Optional.of(open);
        Optional<SessionSummary> begun =
                start.capture().isPresent() ? open.onCapture(start.capture().get()) : Optional.empty();
        before.clear();
        kept = 0;
        if (begun.isPresent()) {
            id = OptionalLong.of(begun.get().id());
            open.session(begun.get().id()).acts().forEach(act -> before.add(act.act()));
        } else {
            id = OptionalLong.of(open.begin(start));
        }
        return open;
    }

    private void forget() throws IOException {
        Optional<Notebook> gone = notebook;
        notebook = Optional.empty();
        id = OptionalLong.empty();
        if (gone.isPresent()) {
            gone.get().close();
        }
        say(Finding.error(FindingCode.LIVE_NOTEBOOK_LOST, Place.inFile(file.toString())));
    }

    /** Something that may fail. */
    @FunctionalInterface
    private interface Work {
        void run() throws IOException;
    }

    private void attempt(Instant at, Work work) {
        if (failing.isPresent() && at.isBefore(triedAt.plus(RETRY)) && !at.isBefore(triedAt)) {
            return;
        }
        triedAt = at;
        try {
            work.run();
            if (failing.isPresent()) {
                failing = Optional.empty();
                say(Finding.note(FindingCode.LIVE_NOTEBOOK_KEEPS_AGAIN, Place.inFile(file.toString())));
            }
        } catch (IOException fault) {
            failed(finding(fault));
        }
    }

    private void failed(Finding finding) {
        boolean isNews =
                failing.map(Finding::code).filter(finding.code()::equals).isEmpty();
        failing = Optional.of(finding);
        if (isNews) {
            say(finding);
        }
        try {
            if (notebook.isPresent()) {
                notebook.get().close();
            }
        } catch (IOException again) {
            // it could not be written, so it need not be closed in order
            return;
        } finally {
            notebook = Optional.empty();
        }
    }

    private Finding finding(IOException fault) {
        return fault instanceof NotebookException known
                ? known.finding()
                : Finding.error(
                        FindingCode.NOTEBOOK_FAILED,
                        Place.inFile(file.toString()),
                        Detail.of("why", String.valueOf(fault.getMessage())));
    }

    private synchronized void say(Finding finding) {
        news.add(finding);
    }
}
