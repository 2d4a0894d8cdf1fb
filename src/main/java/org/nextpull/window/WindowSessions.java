package org.nextpull.window;

import java.awt.EventQueue;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;
import org.nextpull.app.NotebookAccess;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fit.Experience;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.live.LiveIntake;
import org.nextpull.live.LiveSession;
import org.nextpull.live.NotebookKeeper;
import org.nextpull.live.SessionFolders;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.SessionStart;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.day.RunningDay;
import org.nextpull.window.start.StartController;

/** Begins sessions, and goes on with those that were kept: each comes onto the bench. */
final class WindowSessions {
    private final NotebookAccess notebook;
    private final String version;
    private final SessionFolders folders;
    private final Consumer<DaySource> bench;
    private final Consumer<String> say;

    /**
     * Sessions of a window.
     *
     * @param bench takes a session onto the bench; called on the event thread
     * @param say says at the foot of the window what is worth saying; called on the event thread
     */
    WindowSessions(NotebookAccess notebook, String version, Consumer<DaySource> bench, Consumer<String> say) {
        this.notebook = notebook;
        this.version = version;
        this.folders = SessionFolders.beside(notebook.file());
        this.bench = bench;
        this.say = say;
    }

    /** Begins a session; on the working thread. */
    void begin(StartController.Order order) {
        Instant now = Instant.now();
        Outcome<Optional<Experience>> earlier = notebook.experience(order.plan());
        RunningDay running = new RunningDay(order.intake().name(" and "), listener -> {
            SessionFolders.Claim claim = folders.claimFresh(now);
            SessionStart known = new SessionStart(
                    now,
                    version,
                    order.planFile().orElse("plan.toml"),
                    order.planText(),
                    Optional.of(claim.folder().toString()));
            return LiveSession.start(
                    setup(
                            order.plan(),
                            order.intake(),
                            claim,
                            earlier.value().flatMap(experience -> experience),
                            known),
                    listener);
        });
        EventQueue.invokeLater(() -> {
            bench.accept(running);
            earlier.findings().stream()
                    .findFirst()
                    .map(FindingText.in(new Shown(UnitSystem.METRIC))::withPlace)
                    .ifPresent(say);
        });
    }

    private LiveSession.Setup setup(
            SweepPlan plan,
            LiveIntake intake,
            SessionFolders.Claim claim,
            Optional<Experience> experience,
            SessionStart known) {
        return new LiveSession.Setup(
                plan,
                intake,
                claim,
                experience,
                NotebookKeeper.open(notebook.file(), known),
                new SerialPorts(),
                LiveSession.Setup.Clock.system());
    }

    /** Whether this or another program is at a session. */
    boolean isRunning(KeptSession session) {
        return session.start()
                .capture()
                .filter(capture -> folders.isRunning(Path.of(capture)))
                .isPresent();
    }

    /** Goes on with a session that was kept; on the working thread. */
    Optional<Finding> goOn(KeptSession session) {
        Optional<Path> captures = session.start().capture().map(Path::of).filter(Files::isDirectory);
        if (captures.isEmpty()) {
            return Optional.of(Finding.error(
                    FindingCode.LIVE_WITHOUT_CAPTURE,
                    Place.nowhere(),
                    Detail.of("session", String.valueOf(session.id()))));
        }
        Path folder = captures.get();
        if (isRunning(session)) {
            return Optional.of(Finding.error(FindingCode.LIVE_SESSION_RUNS, Place.inFile(folder.toString())));
        }
        SweepPlan plan = session.start().plan().value().orElse(session.input().plan());
        Outcome<LiveIntake> intake = LiveIntake.ofCaptures(folder, plan);
        if (intake.value().isEmpty()) {
            return intake.findings().stream().findFirst();
        }
        RunningDay running = new RunningDay(
                intake.value().get().name(" and "),
                listener -> LiveSession.start(
                        setup(
                                plan,
                                intake.value().get(),
                                folders.claim(folder)
                                        .orElseThrow(() -> new IllegalStateException("it runs meanwhile: " + folder)),
                                session.input().experience(),
                                session.start()),
                        listener));
        EventQueue.invokeLater(() -> bench.accept(running));
        return Optional.empty();
    }
}
