package org.nextpull.window.past;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.nextpull.app.DayReader;
import org.nextpull.app.DaySheet;
import org.nextpull.app.NotebookAccess;
import org.nextpull.app.WrittenFiles;
import org.nextpull.channel.AskedSetting;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.Notebook;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.session.OperatorAction;
import org.nextpull.window.page.FootBar;
import org.nextpull.window.page.Question;
import org.nextpull.window.page.SheetExport;
import org.nextpull.window.page.Work;

/** What can be done with the session that is selected; every change of the notebook is made on the working thread. */
final class PastActions {
    private final Work work;
    private final FootBar foot;
    private final NotebookAccess notebook;
    private final PastController.Ways ways;
    private final PastController.Selection selection;

    PastActions(
            Work work,
            FootBar foot,
            NotebookAccess notebook,
            PastController.Ways ways,
            PastController.Selection selection) {
        this.work = work;
        this.foot = foot;
        this.notebook = notebook;
        this.ways = ways;
        this.selection = selection;
    }

    void open() {
        selected(row -> work.think(() -> notebook.session(row.id()), session -> {
            session.value().ifPresent(ways.bench());
            if (session.isFailed()) {
                foot.say(sentence(session.findings()));
            }
        }));
    }

    void goOn() {
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

    private void selected(Consumer<PastPresenter.Row> use) {
        selection.row().ifPresentOrElse(use, () -> foot.say("No session is selected."));
    }

    void export() {
        selected(row -> new SheetExport(work, foot)
                .ask(
                        " of session " + row.id(),
                        "session-" + row.id(),
                        ways.sheets().apply(selection.shown()),
                        () -> notebook.session(row.id()).map(session -> DaySheet.of(DayReader.of(notebook, session)))));
    }

    void note() {
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
                                selection.changed();
                            });
                    return Optional.empty();
                })));
    }

    void remove() {
        selected(row -> foot.ask(new Question(
                "Remove session " + row.id() + " of " + row.started() + ", " + row.engine() + ", for good?",
                List.of(),
                texts -> change(
                        row, () -> changed(book -> book.remove(row.id())), "Removed session " + row.id() + "."))));
    }

    void rename() {
        selected(row -> foot.ask(new Question(
                "Another name for the engine of session " + row.id() + ".",
                List.of(Question.Field.wide("Engine", row.engine())),
                texts -> texts.get(0).isBlank()
                        ? Optional.of(Question.NOTHING_SAID)
                        : change(
                                row,
                                () -> changed(book ->
                                        book.rename(row.id(), texts.get(0).strip())),
                                "Renamed."))));
    }

    void correct() {
        selected(row -> foot.ask(correction(
                row.id(),
                correction -> change(
                        row, () -> changed(book -> book.correct(row.id(), Instant.now(), correction)), "Corrected."))));
    }

    private String sentence(List<Finding> findings) {
        return FindingText.in(selection.shown()).first(findings);
    }

    private Optional<String> change(PastPresenter.Row row, Supplier<Outcome<Boolean>> change, String done) {
        work.think(
                () -> notebook.session(row.id())
                        .then(session -> ways.isRunning().test(session)
                                ? Outcome.failed(Finding.error(
                                        FindingCode.LIVE_SESSION_RUNS,
                                        Place.inFile(session.start().capture().orElse(""))))
                                : change.get()),
                changed -> {
                    foot.say(changed.isFailed() ? sentence(changed.findings()) : done);
                    selection.changed();
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
    private Outcome<Notebook.Copy> backUp(String target) {
        try {
            Path copy = Path.of(target);
            return notebook.read(book -> book.backUp(copy));
        } catch (InvalidPathException odd) {
            return Outcome.failed(WrittenFiles.notWritable(target, odd));
        }
    }

    void backUp() {
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

    /**
     * The question what a pull of a session was really run with; what is left empty stays as it is.
     *
     * @param take is given what was said; answers with what is wrong with it
     */
    private static Question correction(long session, Function<OperatorAction.Correct, Optional<String>> take) {
        return new Question(
                "A pull of session " + session + " was run with:",
                List.of(
                        Question.Field.narrow("Pull", ""),
                        Question.Field.narrow("Advance", ""),
                        Question.Field.narrow("Lambda", ""),
                        Question.Field.narrow("Label", ""),
                        Question.Field.narrow("Fuel", "")),
                texts -> corrected(texts, take));
    }

    private static Optional<String> corrected(
            List<String> texts, Function<OperatorAction.Correct, Optional<String>> take) {
        String pull = texts.get(0).strip();
        return pull.matches("[0-9]{1,6}")
                ? Question.setting(
                        false,
                        texts.subList(1, texts.size()),
                        said -> said.equals(AskedSetting.none())
                                ? Optional.of(Question.NOTHING_SAID)
                                : take.apply(new OperatorAction.Correct(Integer.parseInt(pull), said)))
                : Optional.of(Question.noWord("Pull", "the number of a pull"));
    }
}
