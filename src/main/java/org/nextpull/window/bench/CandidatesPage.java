package org.nextpull.window.bench;

import java.awt.EventQueue;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.nextpull.report.Shown;
import org.nextpull.session.OperatorAction;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.page.FootBar;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.Page;
import org.nextpull.window.page.Work;

/** The candidates of the day on the bench, side by side, with its next step; a change-over is confirmed here step by step. */
public final class CandidatesPage implements Page {
    private final FootBar foot;
    private final Consumer<OperatorAction> tell;
    private final CandidatesView view;
    private final Work.Latest<CandidateBoard> boards;
    private final Work work;
    private volatile Shown shown = new Shown(UnitSystem.METRIC);
    private volatile DaySource.@Nullable Moment last;

    /**
     * A page of a day.
     *
     * @param tell takes what the operator says of the day
     */
    public CandidatesPage(Work work, FootBar foot, Consumer<OperatorAction> tell) {
        this.work = work;
        this.foot = foot;
        this.tell = tell;
        view = new CandidatesView(work, this::confirm);
        boards = new Work.Latest<>(EventQueue::invokeLater, view::show);
    }

    /** Shows a moment of the day; on the working thread. */
    public void show(DaySource.Moment moment) {
        last = moment;
        boards.give(CandidateBoard.of(moment, shown));
    }

    /** Once every step is done the day hears what is fitted now. */
    private void confirm() {
        if (view.steps() == 0) {
            foot.say("No change-over is asked for.");
        } else if (view.confirm()) {
            view.changeOver().ifPresent(to -> {
                tell.accept(new OperatorAction.Next(Optional.of(to.label()), to.fuel()));
                foot.say("\"" + to.label() + "\" is fitted. The next pull flushes the line and is discarded.");
            });
        }
    }

    @Override
    public String title() {
        return "Candidates";
    }

    @Override
    public String hint() {
        return "C: confirm the next step of the change-over    F1: all keys";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public List<KeyCommand> keys() {
        return List.of(KeyCommand.of("C", "C", "confirm the next step of the change-over", this::confirm));
    }

    @Override
    public void units(UnitSystem units) {
        shown = new Shown(units);
        work.think(() -> {
            DaySource.Moment moment = last;
            if (moment != null) {
                boards.give(CandidateBoard.of(moment, shown));
            }
        });
    }

    @Override
    public void focus() {
        view.focus();
    }
}
