package org.nextpull.window.start;

import java.awt.EventQueue;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JComponent;
import org.nextpull.app.PlanFile;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.live.LiveIntake;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.page.FootBar;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.Page;
import org.nextpull.window.page.PathChooser;
import org.nextpull.window.page.Question;
import org.nextpull.window.page.Work;

/**
 * The page that starts a session, at work. The plan in hand belongs to the event thread; plans are judged, files read and ports opened
 * on the working thread.
 */
public final class StartController implements Page, AutoCloseable {
    private static final int MOST_UNDONE = 500;

    private final Work work;
    private final FootBar foot;
    private final Consumer<Order> begin;
    private final StartView view;
    private final Work.Latest<Judging> judging;
    private final SourcePreview preview;
    private final Deque<PlanForm> before = new ArrayDeque<>();
    private PlanForm form = PlanForm.fresh();
    private int generation;
    private int shownGeneration = -1;
    private Shown shown = new Shown(UnitSystem.METRIC);

    private record Judging(PlanForm form, Shown shown, int generation) {}

    /**
     * A session that is to begin.
     *
     * @param plan its plan
     * @param planFile where the plan lies; empty for one that was not written
     * @param planText the plan as text
     * @param intake where the values come from; nobody reads from there any more
     */
    public record Order(SweepPlan plan, Optional<String> planFile, String planText, LiveIntake intake) {}

    /**
     * The page.
     *
     * @param ports the ports of this computer
     * @param begin begins a session; called on the working thread
     */
    public StartController(Work work, FootBar foot, PortAccess ports, Consumer<Order> begin) {
        this.work = work;
        this.foot = foot;
        this.begin = begin;
        this.judging = new Work.Latest<>(work::think, this::judge);
        this.view = new StartView(new StartView.Wishes(
                this::change, this::open, this::save, this::fresh, this::findPorts, this::watch, this::start));
        this.preview = new SourcePreview(work, ports, view.source());
        other(form);
    }

    private void change(Function<PlanForm, PlanForm> changed) {
        PlanForm now = changed.apply(form);
        if (!now.draft().equals(form.draft())) {
            before.push(form);
            while (before.size() > MOST_UNDONE) {
                before.removeLast();
            }
        }
        form = now;
        judging.give(new Judging(form, shown, generation));
    }

    private void other(PlanForm newForm) {
        generation++;
        change(before -> newForm);
    }

    /** Takes the last change of the form back. */
    private void undo() {
        if (before.isEmpty()) {
            foot.say("Nothing to undo.");
        } else {
            generation++;
            form = before.pop();
            judging.give(new Judging(form, shown, generation));
        }
    }

    private void judge(Judging asked) {
        FormPage page = new FormPresenter(asked.shown())
                .page(asked.form().draft(), asked.form().file(), asked.form().isChanged());
        EventQueue.invokeLater(() -> {
            view.show(page, asked.generation() != shownGeneration);
            shownGeneration = asked.generation();
        });
    }

    /** The file that the plan in the form comes from. On the event thread. */
    public Optional<String> file() {
        return form.file();
    }

    /** Opens the plan in that file, after a question where changes would be lost. On the event thread. */
    public void open(String file) {
        leaving(() -> read(file));
    }

    private void fresh() {
        leaving(() -> other(PlanForm.fresh()));
    }

    /** Whether the plan has changes that are in no file. On the event thread. */
    public boolean hasChanges() {
        return form.isChanged();
    }

    /** Goes on at once where nothing would be lost, else asks. */
    private void leaving(Runnable goOn) {
        if (form.isChanged()) {
            foot.ask(Question.whether("Unsaved changes. Discard?", () -> {
                EventQueue.invokeLater(goOn);
            }));
        } else {
            goOn.run();
        }
    }

    private void open() {
        leaving(() -> PathChooser.from(form.file().orElse("sweep-plans/"), false)
                .choose(view)
                .ifPresent(this::read));
    }

    /** Opens the plan in that file. */
    public void read(String file) {
        work.think(() -> PlanForm.read(file), read -> {
            read.value().ifPresent(this::other);
            foot.say(read.isFailed() ? sentences(read.findings()) : "Opened " + file + ".");
        });
    }

    private void save() {
        foot.ask(new Question(
                "Write the plan.",
                List.of(Question.Field.file("File", form.file().orElse("plan.toml"))),
                texts -> {
                    String file = texts.get(0).strip();
                    if (file.isEmpty()) {
                        return Optional.of("Name a file.");
                    }
                    write(form, file);
                    return Optional.empty();
                }));
    }

    private void write(PlanForm written, String file) {
        boolean isOwn = written.file().equals(Optional.of(file));
        work.think(() -> !isOwn && PlanFile.exists(file), taken -> {
            if (taken) {
                foot.ask(Question.whether(file + " exists. Overwrite?", () -> {
                    writeNow(written, file);
                }));
            } else {
                writeNow(written, file);
            }
        });
    }

    private void writeNow(PlanForm written, String file) {
        work.think(() -> PlanFile.write(written.draft().text(), file), fault -> {
            if (fault.isEmpty()) {
                change(now -> new PlanForm(now.draft(), Optional.of(file), written.draft()));
            }
            foot.say(fault.map(finding -> sentences(List.of(finding))).orElse("Wrote " + file + "."));
        });
    }

    private String sentences(List<Finding> findings) {
        return FindingText.in(shown).first(findings);
    }

    private void findPorts() {
        preview.findPorts(found -> foot.say(
                found.isFailed()
                        ? sentences(found.findings())
                        : SourcePreview.count(found.value().orElse(List.of()))));
    }

    private void watch(SourceView.Choice choice) {
        preview.watch(choice, form.plan().value().orElse(SweepPlan.defaults()), shown);
    }

    private void start() {
        Outcome<SweepPlan> plan = form.plan();
        if (plan.value().isEmpty()) {
            foot.say("The plan has errors. F8: next error.");
            view.form().focusNextWrong();
            return;
        }
        PlanForm ordered = form;
        SourceView.Choice choice = view.source().choice();
        preview.release(
                choice,
                plan.value().get(),
                shown,
                foot::say,
                intake -> begin.accept(new Order(
                        plan.value().get(), ordered.file(), ordered.draft().text(), intake)));
    }

    @Override
    public String title() {
        return "Start";
    }

    @Override
    public String hint() {
        return "F8: next error    F6: preview data    Ctrl S: save    Ctrl Enter: start    F1: all keys";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public List<KeyCommand> keys() {
        return List.of(
                KeyCommand.of("ctrl O", "Ctrl O", "open a plan", this::open),
                KeyCommand.of("ctrl S", "Ctrl S", "save the plan", this::save),
                KeyCommand.of("ctrl N", "Ctrl N", "a new plan", this::fresh),
                KeyCommand.of("ctrl Z", "Ctrl Z", "undo the last change of the plan", this::undo),
                KeyCommand.of("F2", "F2", "choose a folder of logs", view.source()::chooseFolder),
                KeyCommand.of("F5", "F5", "rescan ports", this::findPorts),
                KeyCommand.of(
                        "F6", "F6", "preview data", () -> watch(view.source().choice())),
                KeyCommand.of("F8", "F8", "next error", () -> view.form().focusNextWrong()),
                KeyCommand.of("ctrl ENTER", "Ctrl Enter", "start the session", this::start));
    }

    @Override
    public void units(UnitSystem units) {
        shown = new Shown(units);
        preview.units(shown);
        change(before -> before);
    }

    @Override
    public void focus() {
        view.focus();
        preview.findPorts(found -> {});
    }

    @Override
    public void close() {
        preview.close();
    }

    /**
     * The serial ports, as far as this page needs them.
     *
     * @param list finds them; may take long
     * @param opener opens them
     */
    public record PortAccess(Supplier<Outcome<List<SerialPorts.PortInfo>>> list, Port.Opener opener) {

        /** Those of this computer. */
        public static PortAccess ofComputer() {
            SerialPorts ports = new SerialPorts();
            return new PortAccess(ports::list, ports);
        }
    }
}
