package org.nextpull.window.start;

import java.awt.EventQueue;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.live.LiveIntake;
import org.nextpull.live.PlanPorts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.window.page.Work;

/** The sources of a session before it is started: finds ports, shows what arrives, and gives a source back to the session that begins. Ports are opened and closed on the working thread. */
final class SourcePreview implements AutoCloseable {
    /** How long a port is waited for: one that was just plugged in needs a moment. */
    private static final Duration PATIENCE = Duration.ofSeconds(3);

    private final Work work;
    private final StartController.PortAccess ports;
    private final SourceView view;
    private final Work.Latest<Arrivals.Page> arriving = new Work.Latest<>(EventQueue::invokeLater, this::arrived);
    private volatile boolean watching;
    private volatile @Nullable Arrivals arrivals;

    SourcePreview(Work work, StartController.PortAccess ports, SourceView view) {
        this.work = work;
        this.ports = ports;
        this.view = view;
    }

    /** Watches a source from now on, under a plan. On the event thread. */
    void watch(SourceView.Choice choice, SweepPlan plan, Shown units) {
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

    private void arrived(Arrivals.Page page) {
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

    /** Looks for the ports of this computer, and shows them. */
    void findPorts(Consumer<Outcome<List<SerialPorts.PortInfo>>> told) {
        work.think(() -> ports.list().get(), found -> {
            view.ports(found.value().orElse(List.<SerialPorts.PortInfo>of()));
            told.accept(found);
        });
    }

    /** How many ports were found. */
    static String count(List<SerialPorts.PortInfo> found) {
        return switch (found.size()) {
            case 0 -> "No port was found.";
            case 1 -> "One port was found.";
            default -> found.size() + " ports were found.";
        };
    }

    /**
     * Gives a source back, so that a session reads from it, or says why none can.
     *
     * @param say takes what is to be said; called on the event thread
     * @param begin begins the session; called on the working thread
     */
    void release(
            SourceView.Choice choice, SweepPlan plan, Shown units, Consumer<String> say, Consumer<LiveIntake> begin) {
        work.think(() -> {
            Outcome<LiveIntake> intake = choice.source(plan);
            List<Finding> wrong = intake.value()
                    .map(source -> PlanPorts.missing(source, ports.opener(), PATIENCE))
                    .orElseGet(intake::findings);
            if (intake.value().isPresent() && wrong.isEmpty()) {
                close();
                begin.accept(intake.value().get());
                return;
            }
            String sentence = FindingText.in(units).first(wrong);
            EventQueue.invokeLater(() -> {
                view.say(sentence);
                say.accept(sentence);
            });
        });
    }
}
