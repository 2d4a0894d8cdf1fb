package org.nextpull.window.past;

import java.awt.EventQueue;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.swing.JComponent;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;
import org.nextpull.app.DaySheet;
import org.nextpull.app.NotebookAccess;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.page.FootBar;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.Page;
import org.nextpull.window.page.Work;

/** The page of past sessions at work: the notebook is read, and results made again, on the working thread. */
public final class PastController implements Page {
    private static final int AGAIN_MS = 3000;

    private final Work work;
    private final FootBar foot;
    private final NotebookAccess notebook;
    private final Ways ways;
    private final PastView view;
    private final PastActions actions;
    private final Timer again;
    private final Work.Latest<String> searching;
    private final Work.Latest<PastPresenter.Row> looking;
    private volatile Shown shown = new Shown(UnitSystem.METRIC);
    private @Nullable Read last;

    /** A session that was read, kept so that another unit does not read it again. */
    private record Read(PastPresenter.Row row, KeptSession session, SessionResult result) {}

    /**
     * What leads from here to other pages.
     *
     * @param bench opens a session on the bench; called on the event thread
     * @param goOn goes on with a session, or says why not; called on the working thread
     * @param isRunning whether a session runs now, so that it is not changed behind its back; called on the working thread
     * @param compare compares these sessions; called on the event thread
     * @param sheets how sheets are written in those units
     */
    public record Ways(
            Consumer<KeptSession> bench,
            Function<KeptSession, Optional<Finding>> goOn,
            Predicate<KeptSession> isRunning,
            Consumer<List<Long>> compare,
            Function<Shown, DaySheet.Order> sheets) {}

    /**
     * The page.
     *
     * @param notebook the notebook
     */
    public PastController(Work work, FootBar foot, NotebookAccess notebook, Ways ways) {
        this.work = work;
        this.foot = foot;
        this.notebook = notebook;
        this.ways = ways;
        this.searching = new Work.Latest<>(work::think, this::search);
        this.looking = new Work.Latest<>(work::think, this::look);
        this.again = new Timer(AGAIN_MS, event -> again());
        this.view = new PastView(work, searching::give, looking::give);
        this.actions = new PastActions(work, foot, notebook, ways, new Selection());
    }

    /** What the actions are about, and who hears of a change. */
    final class Selection {
        Optional<PastPresenter.Row> row() {
            return view.table().selected();
        }

        Shown shown() {
            return shown;
        }

        void changed() {
            refresh();
        }
    }

    /** A session that runs is kept meanwhile: the list follows it as long as somebody looks. */
    private void again() {
        if (view.isShowing()) {
            searching.give(view.words());
        } else {
            again.stop();
        }
    }

    private void search(String words) {
        Outcome<List<SessionSummary>> found = notebook.sessions(words);
        List<PastPresenter.Row> rows = new PastPresenter(shown, ZoneId.systemDefault())
                .rows(found.value().orElse(List.of()));
        String said = found.isFailed() ? FindingText.in(shown).first(found.findings()) : count(rows.size(), words);
        Read known = last;
        if (known != null && !rows.contains(known.row())) {
            last = null;
        }
        EventQueue.invokeLater(() -> view.show(rows, said));
    }

    private String count(int rows, String words) {
        if (rows == 0) {
            return words.isBlank()
                    ? "No session was kept yet. A session that is started here keeps itself."
                    : "No session holds all of these words.";
        }
        return rows + (rows == 1 ? " session" : " sessions") + " in " + notebook.file() + ".";
    }

    private void look(PastPresenter.Row row) {
        Read known = last;
        if (known == null || !known.row().equals(row)) {
            Outcome<KeptSession> session = notebook.session(row.id());
            if (session.value().isEmpty()) {
                EventQueue.invokeLater(() -> view.say(FindingText.in(shown).first(session.findings())));
                return;
            }
            known = new Read(row, session.value().get(), session.value().get().result());
            last = known;
        }
        PastPresenter.Details page =
                new PastPresenter(shown, ZoneId.systemDefault()).session(known.session(), known.result());
        EventQueue.invokeLater(() -> {
            if (view.table().selected().equals(Optional.of(row))) {
                view.show(page);
            }
        });
    }

    private void refresh() {
        work.think(() -> {
            last = null;
            search(view.words());
        });
        view.table().selected().ifPresent(looking::give);
    }

    private void compareMarked() {
        List<Long> marked = view.table().marked();
        if (marked.size() < 2) {
            foot.say("Mark two sessions or more with Space, then compare them.");
        } else {
            ways.compare().accept(marked);
        }
    }

    @Override
    public String title() {
        return "Past sessions";
    }

    @Override
    public String hint() {
        return "Enter: open on the bench    Space: mark    C: compare    Ctrl F: find    F1: all keys";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public List<KeyCommand> keys() {
        return List.of(
                KeyCommand.of("ctrl F", "Ctrl F", "find sessions", view::focusFind),
                KeyCommand.of("ENTER", "Enter", "open the session on the bench", actions::open),
                KeyCommand.of(
                        "SPACE",
                        "Space",
                        "mark the session for comparing",
                        () -> view.table().mark()),
                KeyCommand.of("C", "C", "compare the marked sessions", this::compareMarked),
                KeyCommand.of("R", "R", "go on with the session: record again", actions::goOn),
                KeyCommand.of("T", "T", "note on the session", actions::note),
                KeyCommand.of("P", "P", "correct what a pull was run with", actions::correct),
                KeyCommand.of("M", "M", "give the engine another name", actions::rename),
                KeyCommand.of("DELETE", "Del", "remove the session", actions::remove),
                KeyCommand.of("E", "E", "export sheet, CSV and JSON of the session", actions::export),
                KeyCommand.of("B", "B", "back up the notebook", actions::backUp),
                KeyCommand.of("F5", "F5", "read the notebook again", this::refresh));
    }

    @Override
    public void units(UnitSystem units) {
        shown = new Shown(units);
        view.table().selected().ifPresent(looking::give);
    }

    @Override
    public void focus() {
        searching.give(view.words());
        again.start();
        view.table().requestFocusInWindow();
    }
}
