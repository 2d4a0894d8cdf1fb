package org.nextpull.window.compared;

import java.awt.EventQueue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.nextpull.app.DayInput;
import org.nextpull.app.DayReader;
import org.nextpull.app.LabelledLog;
import org.nextpull.app.NotebookAccess;
import org.nextpull.finding.Outcome;
import org.nextpull.report.FindingLines;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.page.FootBar;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.Page;
import org.nextpull.window.page.Question;
import org.nextpull.window.page.Work;

/** The page of comparisons at work: files are read and compared on the working thread. */
public final class ComparedController implements Page {
    private static final String EMPTY =
            "Nothing is compared yet. Mark sessions on the page of past sessions, or add logs with A and their plan with P.";

    private final FootBar foot;
    private final NotebookAccess notebook;
    private final ComparedView view;
    private final Work.Latest<Wanted> wanting;
    private Wanted wanted = new Wanted(List.of(), "", Optional.empty(), new Shown(UnitSystem.METRIC));
    private volatile List<String> labels = List.of();
    private @Nullable Done done;

    /** What is to be compared, and for whom. */
    private record Wanted(List<LabelledLog> contenders, String plan, Optional<String> against, Shown shown) {
        Wanted {
            contenders = List.copyOf(contenders);
        }

        boolean isSameQuestion(Wanted other) {
            return contenders.equals(other.contenders) && plan.equals(other.plan) && against.equals(other.against);
        }
    }

    /** A question with its answer, kept so that other units do not ask it again. */
    private record Done(Wanted wanted, ComparedPresenter.Compared compared) {}

    /**
     * The page.
     *
     * @param notebook the one that sessions are taken from
     */
    public ComparedController(Work work, FootBar foot, NotebookAccess notebook) {
        this.foot = foot;
        this.notebook = notebook;
        this.view = new ComparedView(work);
        this.wanting = new Work.Latest<>(work::think, this::compare);
        view.buttons(keys());
        view.show(ComparedPresenter.Page.saying(List.of(EMPTY)));
    }

    /** Compares these sessions of the notebook. */
    public void sessions(List<Long> ids) {
        want(new Wanted(ids.stream().map(LabelledLog::ofSession).toList(), "", Optional.empty(), wanted.shown()));
    }

    private void want(Wanted newWanted) {
        wanted = newWanted;
        view.show(wanted.contenders(), wanted.plan());
        if (wanted.contenders().isEmpty()) {
            view.show(ComparedPresenter.Page.saying(List.of(EMPTY)));
        } else {
            wanting.give(wanted);
        }
    }

    private void compare(Wanted asked) {
        Done known = done;
        if (known == null || !known.wanted().isSameQuestion(asked)) {
            Outcome<DayInput> input = DayReader.day(
                    notebook, Optional.of(asked.plan()).filter(plan -> !plan.isBlank()), asked.contenders());
            if (input.value().isEmpty()) {
                done = null;
                show(ComparedPresenter.Page.saying(
                        new FindingLines(FindingText.in(asked.shown())).lines(input.findings())));
                return;
            }
            known = new Done(asked, ComparedPresenter.compare(input.value().get(), asked.against()));
            done = known;
        }
        labels = known.compared().labels();
        show(new ComparedPresenter(asked.shown()).page(known.compared()));
    }

    private void show(ComparedPresenter.Page page) {
        EventQueue.invokeLater(() -> view.show(page));
    }

    private void add() {
        foot.ask(new Question(
                "Compare this too.",
                List.of(
                        Question.Field.narrow("Label", ""),
                        Question.Field.file("Log, folder, or session:3", "sample-logs/")),
                texts -> {
                    if (texts.get(1).isBlank()) {
                        return Optional.of("Name a log or a session.");
                    }
                    List<LabelledLog> more = new ArrayList<>(wanted.contenders());
                    more.add(new LabelledLog(Optional.of(texts.get(0)), texts.get(1)));
                    want(new Wanted(more, wanted.plan(), Optional.empty(), wanted.shown()));
                    return Optional.empty();
                }));
    }

    private void takeOut() {
        int place = view.selected();
        if (place >= 0 && place < wanted.contenders().size()) {
            List<LabelledLog> left = new ArrayList<>(wanted.contenders());
            left.remove(place);
            want(new Wanted(left, wanted.plan(), Optional.empty(), wanted.shown()));
        }
    }

    private void plan() {
        foot.ask(new Question(
                "The plan that logs are read by.",
                List.of(Question.Field.file("Plan", wanted.plan().isEmpty() ? "sweep-plans/" : wanted.plan())),
                texts -> {
                    want(new Wanted(wanted.contenders(), texts.get(0).strip(), wanted.against(), wanted.shown()));
                    return Optional.empty();
                }));
    }

    private void reference() {
        if (labels.size() < 2) {
            foot.say("There are no two labels yet.");
            return;
        }
        int now = wanted.against().map(labels::indexOf).orElse(0);
        String next = labels.get((now + 1) % labels.size());
        want(new Wanted(wanted.contenders(), wanted.plan(), Optional.of(next), wanted.shown()));
        foot.say("Compared with " + next + ".");
    }

    @Override
    public String title() {
        return "Compare";
    }

    @Override
    public String hint() {
        return "A: add    P: plan    R: other reference    L: next label    Del: take out    F1: all keys";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public List<KeyCommand> keys() {
        return List.of(
                KeyCommand.of("A", "A", "add a log or session", this::add),
                KeyCommand.of("DELETE", "Del", "remove the selected", this::takeOut),
                KeyCommand.of("P", "P", "plan of the logs", this::plan),
                KeyCommand.of("R", "R", "next reference", this::reference),
                KeyCommand.of("L", "L", "difference of the next label", view::nextLabel));
    }

    @Override
    public void units(UnitSystem units) {
        wanted = new Wanted(wanted.contenders(), wanted.plan(), wanted.against(), new Shown(units));
        if (!wanted.contenders().isEmpty()) {
            wanting.give(wanted);
        }
    }

    @Override
    public void focus() {
        view.focus();
    }
}
