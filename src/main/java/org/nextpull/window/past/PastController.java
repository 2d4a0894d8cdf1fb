package org.nextpull.window.past;

import java.awt.EventQueue;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;
import org.nextpull.app.DayReader;
import org.nextpull.app.DaySheet;
import org.nextpull.app.NotebookAccess;
import org.nextpull.app.SheetFiles;
import org.nextpull.app.WrittenFiles;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.notebook.Copy;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.Notebook;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.report.EntryText;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.TypeScale;
import org.nextpull.window.page.FootBar;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.Page;
import org.nextpull.window.page.Question;
import org.nextpull.window.work.Latest;
import org.nextpull.window.work.Work;

/** The page of past sessions at work: the notebook is read, and results made again, on the working thread. */
public final class PastController implements Page {
    private static final int AGAIN_MS = 3000;

    private final Work work;
    private final FootBar foot;
    private final NotebookAccess notebook;
    private final Ways ways;
    private final PastView view;
    private final Timer again;
    private final Latest<String> searching;
    private final Latest<PastRow> looking;
    private volatile Shown shown = new Shown(UnitSystem.METRIC);
    private @Nullable Read last;

    /** A session that was read, kept so that another unit does not read it again. */
    private record Read(PastRow row, KeptSession session, SessionResult result) {}

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
        this.searching = new Latest<>(work::think, this::search);
        this.looking = new Latest<>(work::think, this::look);
        this.again = new Timer(AGAIN_MS, event -> again());
        this.view = new PastView(work, searching::give, looking::give);
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
        List<PastRow> rows = new PastPresenter(shown, ZoneId.systemDefault())
                .rows(found.value().orElse(List.of()));
        String said = found.isFailed() ? sentence(found.findings()) : count(rows.size(), words);
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

    private void look(PastRow row) {
        Read known = last;
        if (known == null || !known.row().equals(row)) {
            Outcome<KeptSession> session = notebook.session(row.id());
            if (session.value().isEmpty()) {
                EventQueue.invokeLater(() -> view.say(sentence(session.findings())));
                return;
            }
            known = new Read(row, session.value().get(), session.value().get().result());
            last = known;
        }
        PastSession page = new PastPresenter(shown, ZoneId.systemDefault()).session(known.session(), known.result());
        EventQueue.invokeLater(() -> {
            if (view.table().selected().equals(Optional.of(row))) {
                view.show(page);
            }
        });
    }

    private String sentence(List<Finding> findings) {
        return findings.stream()
                .findFirst()
                .map(FindingText.in(shown)::withPlace)
                .orElse("");
    }

    private void refresh() {
        work.think(() -> {
            last = null;
            search(view.words());
        });
    }

    private void open() {
        selected(row -> work.think(() -> notebook.session(row.id()), session -> {
            session.value().ifPresent(ways.bench());
            if (session.isFailed()) {
                foot.say(sentence(session.findings()));
            }
        }));
    }

    private void goOn() {
        selected(row -> work.think(
                () -> notebook.session(row.id())
                        .then(session -> ways.goOn()
                                .apply(session)
                                .<Outcome<KeptSession>>map(Outcome::failed)
                                .orElseGet(() -> Outcome.of(session))),
                gone -> {
                    if (gone.isFailed()) {
                        foot.say(sentence(gone.findings()));
                    }
                }));
    }

    private void selected(Consumer<PastRow> use) {
        view.table().selected().ifPresentOrElse(use, () -> foot.say("No session is selected."));
    }

    private void compareMarked() {
        List<Long> marked = view.table().marked();
        if (marked.size() < 2) {
            foot.say("Mark two sessions or more with Space, then compare them.");
        } else {
            ways.compare().accept(marked);
        }
    }

    private void export() {
        selected(row -> foot.ask(new Question(
                "Write sheet, CSV and JSON of session " + row.id() + ".",
                List.of(Question.Field.folder("Folder", "."), Question.Field.narrow("Name", "session-" + row.id())),
                texts -> {
                    if (!texts.get(1).strip().matches("[\\w.-]{1,100}")) {
                        return Optional.of("A name has letters, digits, points and dashes.");
                    }
                    Shown units = shown;
                    work.think(
                            () -> notebook.session(row.id())
                                    .then(session -> SheetFiles.write(
                                            texts.get(0),
                                            texts.get(1).strip(),
                                            DaySheet.of(DayReader.of(notebook, session)),
                                            ways.sheets().apply(units))),
                            written -> foot.say(written.value()
                                    .map(folder -> "Wrote " + texts.get(1).strip() + ".html, .csv and .json into "
                                            + folder + ".")
                                    .orElseGet(() -> sentence(written.findings()))));
                    return Optional.empty();
                })));
    }

    private void note() {
        selected(row -> foot.ask(new Question(
                "A note on session " + row.id() + ".", List.of(Question.Field.wide("Note", "")), texts -> {
                    if (texts.get(0).isBlank()) {
                        return Optional.of("Nothing is written.");
                    }
                    work.think(
                            () -> changed(book -> book.keepAct(
                                    row.id(),
                                    Instant.now(),
                                    new OperatorAction.Note(
                                            OptionalInt.empty(), texts.get(0).strip()))),
                            kept -> {
                                foot.say(kept.isFailed() ? sentence(kept.findings()) : "Noted.");
                                work.think(() -> {
                                    last = null;
                                    look(row);
                                });
                            });
                    return Optional.empty();
                })));
    }

    private void remove() {
        selected(row -> foot.ask(new Question(
                "Remove session " + row.id() + " of " + row.started() + ", " + row.engine() + ", for good?",
                List.of(),
                texts -> change(
                        row, () -> changed(book -> book.remove(row.id())), "Removed session " + row.id() + "."))));
    }

    private void rename() {
        selected(row -> foot.ask(new Question(
                "Another name for the engine of session " + row.id() + ".",
                List.of(Question.Field.wide("Engine", row.engine())),
                texts -> texts.get(0).isBlank()
                        ? Optional.of(EntryText.NOTHING_SAID)
                        : change(
                                row,
                                () -> changed(book ->
                                        book.rename(row.id(), texts.get(0).strip())),
                                "Renamed."))));
    }

    private void correct() {
        selected(row -> foot.ask(Corrections.question(
                row.id(),
                correction -> change(
                        row, () -> changed(book -> book.correct(row.id(), Instant.now(), correction)), "Corrected."))));
    }

    private Optional<String> change(PastRow row, Supplier<Outcome<Boolean>> change, String done) {
        work.think(
                () -> notebook.session(row.id())
                        .then(session -> ways.isRunning().test(session)
                                ? Outcome.failed(Finding.error(
                                        FindingCode.LIVE_SESSION_RUNS,
                                        Place.inFile(session.start().capture().orElse(""))))
                                : change.get()),
                changed -> {
                    foot.say(changed.isFailed() ? sentence(changed.findings()) : done);
                    refresh();
                });
        return Optional.empty();
    }

    private interface Change {
        void in(Notebook book) throws IOException;
    }

    private Outcome<Boolean> changed(Change change) {
        return notebook.write(book -> {
            change.in(book);
            return true;
        });
    }

    /** A copy that is whole, also while a session runs; writes over nothing. */
    private Outcome<Copy> backUp(String target) {
        try {
            Path copy = Path.of(target);
            return notebook.read(book -> book.backUp(copy));
        } catch (InvalidPathException odd) {
            return Outcome.failed(WrittenFiles.notWritable(target, odd));
        }
    }

    private void backUp() {
        foot.ask(new Question(
                "Copy the whole notebook.", List.of(Question.Field.file("New file", "notebook-copy.db")), texts -> {
                    work.think(
                            () -> backUp(texts.get(0).strip()),
                            copied -> foot.say(copied.value()
                                    .map(copy -> "Copied " + Shown.count(copy.sessions(), "session") + " to "
                                            + copy.file() + " and read it back.")
                                    .orElseGet(() -> sentence(copied.findings()))));
                    return Optional.empty();
                }));
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
                KeyCommand.of("ENTER", "Enter", "open the session on the bench", this::open),
                KeyCommand.of(
                        "SPACE",
                        "Space",
                        "mark the session for comparing",
                        () -> view.table().mark()),
                KeyCommand.of("C", "C", "compare the marked sessions", this::compareMarked),
                KeyCommand.of("R", "R", "go on with the session: record again", this::goOn),
                KeyCommand.of("N", "N", "add a note to the session", this::note),
                KeyCommand.of("P", "P", "correct what a pull was run with", this::correct),
                KeyCommand.of("M", "M", "give the engine another name", this::rename),
                KeyCommand.of("DELETE", "Del", "remove the session", this::remove),
                KeyCommand.of("E", "E", "export sheet, CSV and JSON of the session", this::export),
                KeyCommand.of("K", "K", "back up the notebook", this::backUp),
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

    @Override
    public void style(Skin skin, TypeScale scale) {
        view.style(skin, scale);
    }
}
