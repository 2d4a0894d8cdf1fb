package org.nextpull.window.start;

import java.awt.EventQueue;
import org.jspecify.annotations.Nullable;
import org.nextpull.finding.Outcome;
import org.nextpull.live.LiveIntake;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.window.work.Work;

/** Shows what arrives from a source before a session is started; ports are opened and closed on the working thread. */
final class SourcePreview implements AutoCloseable {
    private final Work work;
    private final PortAccess ports;
    private final SourceView view;
    private final Work.Latest<ArrivalsPage> arriving = new Work.Latest<>(EventQueue::invokeLater, this::arrived);
    private volatile boolean watching;
    private volatile @Nullable Arrivals arrivals;

    SourcePreview(Work work, PortAccess ports, SourceView view) {
        this.work = work;
        this.ports = ports;
        this.view = view;
    }

    /** Watches a source from now on, under a plan. On the event thread. */
    void watch(SourceChoice choice, SweepPlan plan, Shown units) {
        view.say("Looking at " + (choice.name().isEmpty() ? "the serial lines of the plan" : choice.name()) + ".");
        work.think(() -> {
            close();
            Outcome<LiveIntake> intake = choice.source(plan);
            if (intake.value().isPresent()) {
                watching = true;
                arrivals =
                        Arrivals.start(intake.value().get(), plan.log().hints(), ports.opener(), units, arriving::give);
            } else {
                EventQueue.invokeLater(() -> view.say(FindingText.in(units).first(intake.findings())));
            }
        });
    }

    private void arrived(ArrivalsPage page) {
        if (watching) {
            view.show(page);
        }
    }

    void units(Shown units) {
        work.think(() -> {
            Arrivals running = arrivals;
            if (running != null) {
                running.units(units);
            }
        });
    }

    /** On the working thread, or at the end of the window. */
    @Override
    public void close() {
        watching = false;
        Arrivals running = arrivals;
        arrivals = null;
        if (running != null) {
            running.close();
        }
    }
}
