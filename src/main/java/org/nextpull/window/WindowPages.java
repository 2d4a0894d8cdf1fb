package org.nextpull.window;

import java.awt.EventQueue;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.nextpull.app.DayReader;
import org.nextpull.app.DaySheet;
import org.nextpull.app.EarlierDays;
import org.nextpull.app.LabelledLog;
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
import org.nextpull.live.LiveSetup;
import org.nextpull.live.NotebookKeeper;
import org.nextpull.live.SessionFolders;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.SessionStart;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.bench.BenchController;
import org.nextpull.window.bench.CandidatesPage;
import org.nextpull.window.compared.ComparedController;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.day.ReplayedDay;
import org.nextpull.window.day.RunningDay;
import org.nextpull.window.page.AlarmSign;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.Question;
import org.nextpull.window.past.PastController;
import org.nextpull.window.start.PortAccess;
import org.nextpull.window.start.StartController;
import org.nextpull.window.start.StartOrder;
import org.nextpull.window.work.Work;

/** The pages of a window and what leads from one to another: a session that is started or opened comes onto the bench. */
final class WindowPages implements AutoCloseable {
    private static final int BENCH = 0;
    private static final int START = 1;
    private static final int COMPARE = 3;
    private static final int CANDIDATES = 4;

    private final MainFrame main;
    private final Work work;
    private final NotebookAccess notebook;
    private final String version;
    private final SessionFolders folders;
    private final StartController start;
    private volatile Optional<DaySource> day = Optional.empty();

    private WindowPages(MainFrame main, WindowSetup setup, Work work, PortAccess ports) {
        this.main = main;
        this.work = work;
        this.notebook = setup.notebook();
        this.version = setup.version();
        this.folders = SessionFolders.beside(notebook.file());
        this.start = new StartController(work, main.foot(), ports, this::begin);
        ComparedController compared = new ComparedController(work, main.foot(), notebook);
        main.add(new EmptyBench());
        main.add(start);
        main.add(new PastController(
                work,
                main.foot(),
                notebook,
                new PastController.Ways(
                        this::open,
                        this::goOn,
                        this::isRunning,
                        ids -> {
                            compared.sessions(ids);
                            main.show(COMPARE);
                        },
                        this::sheet)));
        main.add(compared);
        main.add(new CandidatesPage(work, main.foot(), act -> {}));
        main.add(KeyCommand.of("ctrl E", "Ctrl E", "end the session", this::endSession));
        main.root().setTransferHandler(new Dropped(this::dropped));
    }

    /** A plan goes into the form; logs come onto the bench under the plan that the form has from a file. */
    private void dropped(List<String> paths) {
        if (paths.size() == 1 && paths.get(0).endsWith(".toml")) {
            main.show(START);
            start.open(paths.get(0));
            return;
        }
        Optional<String> plan = start.file();
        List<LabelledLog> logs = paths.stream().map(LabelledLog::unlabelled).toList();
        work.think(() -> DayReader.day(notebook, plan, logs), read -> {
            read.value()
                    .ifPresent(day -> benchOrAsk(
                            ReplayedDay.of(Path.of(paths.get(0)).getFileName().toString(), day)));
            read.findings().stream()
                    .findFirst()
                    .map(FindingText.in(new Shown(main.look().units()))::withPlace)
                    .ifPresent(main.foot()::say);
        });
    }

    /** Ends a running session by name, not with the window. */
    private void endSession() {
        if (!isRecording()) {
            main.foot().say("No session is running.");
            return;
        }
        main.foot().ask(new Question("End the running session?", List.of(), texts -> {
            day.ifPresent(WindowPages::end);
            day = Optional.empty();
            main.urgent(List.of());
            main.alarm(AlarmSign.none());
            EventQueue.invokeLater(() -> {
                main.replace(BENCH, new EmptyBench());
                main.foot().say("Session ended. It is kept under 3, Past sessions.");
            });
            return Optional.empty();
        }));
    }

    /** Fills a frame that is not shown yet. On the event thread. */
    static WindowPages fill(MainFrame main, WindowSetup setup, Work work, PortAccess ports) {
        WindowPages pages = new WindowPages(main, setup, work, ports);
        main.beforeEnd(pages::lostAtEnd);
        main.whenBegun(() -> {
            setup.plan().ifPresent(pages.start::read);
            setup.day().ifPresentOrElse(pages::bench, () -> main.show(START));
        });
        return pages;
    }

    /** Brings a day onto the bench; the one that was there ends. */
    private void bench(DaySource source) {
        Optional<DaySource> before = day;
        day = Optional.of(source);
        before.ifPresent(WindowPages::end);
        main.urgent(List.of());
        main.alarm(AlarmSign.none());
        BenchController bench = new BenchController(source, work, main.foot(), main, this::sheet);
        CandidatesPage candidates = new CandidatesPage(work, main.foot(), source::tell);
        bench.alsoOn(candidates::show);
        main.replace(CANDIDATES, candidates);
        main.replace(BENCH, bench);
        bench.start();
    }

    private boolean isRecording() {
        return day.filter(running -> running.player().isEmpty()).isPresent();
    }

    private Optional<String> lostAtEnd() {
        if (isRecording()) {
            return Optional.of(
                    start.hasChanges()
                            ? "A session is running and the plan has unsaved changes. End the session, discard the changes, and close?"
                            : "A session is running. End it and close?");
        }
        return start.hasChanges()
                ? Optional.of("Unsaved changes in the plan. Discard them and close?")
                : Optional.empty();
    }

    /** A running session is not ended by mistake. */
    private void benchOrAsk(DaySource source) {
        if (!isRecording()) {
            bench(source);
            return;
        }
        main.foot().ask(new Question("A session is running. End it, and open this one?", List.of(), texts -> {
            EventQueue.invokeLater(() -> bench(source));
            return Optional.empty();
        }));
    }

    private DaySheet.Order sheet(Shown shown) {
        return DaySheet.Order.usual(LocalDate.now(ZoneId.systemDefault()), version, shown);
    }

    /** Begins a session; on the working thread. */
    private void begin(StartOrder order) {
        Instant now = Instant.now();
        Outcome<Optional<Experience>> earlier = new EarlierDays(notebook).known(order.plan());
        RunningDay running = new RunningDay(name(order.intake()), listener -> {
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
            benchOrAsk(running);
            earlier.findings().stream()
                    .findFirst()
                    .map(FindingText.in(new Shown(UnitSystem.METRIC))::withPlace)
                    .ifPresent(main.foot()::say);
        });
    }

    private LiveSetup setup(
            SweepPlan plan,
            LiveIntake intake,
            SessionFolders.Claim claim,
            Optional<Experience> experience,
            SessionStart known) {
        return new LiveSetup(
                plan,
                intake,
                claim,
                experience,
                NotebookKeeper.open(notebook.file(), known),
                new SerialPorts(),
                LiveSetup.Clock.system());
    }

    /** Whether this or another program is at a session. */
    private boolean isRunning(KeptSession session) {
        return session.start()
                .capture()
                .filter(capture -> folders.isRunning(Path.of(capture)))
                .isPresent();
    }

    /** Goes on with a session that was kept; on the working thread. */
    private Optional<Finding> goOn(KeptSession session) {
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
                name(intake.value().get()),
                listener -> LiveSession.start(
                        setup(
                                plan,
                                intake.value().get(),
                                folders.claim(folder)
                                        .orElseThrow(() -> new IllegalStateException("it runs meanwhile: " + folder)),
                                session.input().experience(),
                                session.start()),
                        listener));
        EventQueue.invokeLater(() -> benchOrAsk(running));
        return Optional.empty();
    }

    private static String name(LiveIntake intake) {
        if (intake instanceof LiveIntake.Ports ports) {
            return String.join(
                    " and ",
                    ports.ports().stream().map(port -> port.wire().device()).toList());
        }
        return ((LiveIntake.Folder) intake).folder().folder().toString();
    }

    private void open(KeptSession session) {
        benchOrAsk(ReplayedDay.atEnd("session " + session.id(), DayReader.of(notebook, session)));
    }

    /** Ending a session may take long. */
    private static void end(DaySource source) {
        new Thread(source::close, "nextpull-window-end").start();
    }

    @Override
    public void close() {
        start.close();
        day.ifPresent(DaySource::close);
    }
}
