package org.nextpull.window;

import java.awt.EventQueue;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.live.LiveIntake;
import org.nextpull.live.LiveSession;
import org.nextpull.live.LiveSetup;
import org.nextpull.live.NotebookKeeper;
import org.nextpull.live.SessionFolders;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.SessionStart;
import org.nextpull.window.bench.BenchDesk;
import org.nextpull.window.compared.ComparedDesk;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.day.ReplayedDay;
import org.nextpull.window.day.RunningDay;
import org.nextpull.window.page.Question;
import org.nextpull.window.past.PastDesk;
import org.nextpull.window.past.Shelf;
import org.nextpull.window.start.PortAccess;
import org.nextpull.window.start.StartDesk;
import org.nextpull.window.start.StartOrder;
import org.nextpull.window.work.Work;

/** The pages of a window and what leads from one to another: a session that is started or opened comes onto the bench. */
final class WindowPages implements AutoCloseable {
    private static final int BENCH = 0;
    private static final int START = 1;
    private static final int COMPARE = 3;

    private final MainFrame main;
    private final Work work;
    private final Path notebook;
    private final String version;
    private final Shelf shelf;
    private final StartDesk start;
    private volatile Optional<DaySource> day = Optional.empty();

    private WindowPages(MainFrame main, WindowSetup setup, Work work, PortAccess ports) {
        this.main = main;
        this.work = work;
        this.notebook = setup.notebook();
        this.version = setup.version();
        this.shelf = new Shelf(notebook);
        this.start = new StartDesk(work, main.foot(), ports, this::begin);
        ComparedDesk compared = new ComparedDesk(work, main.foot(), shelf);
        main.add(new EmptyBench());
        main.add(start);
        main.add(new PastDesk(work, main.foot(), shelf, this::open, ids -> {
            compared.sessions(ids);
            main.show(COMPARE);
        }));
        main.add(compared);
    }

    /** Fills a frame that is not shown yet. On the event thread. */
    static WindowPages fill(MainFrame main, WindowSetup setup, Work work, PortAccess ports) {
        WindowPages pages = new WindowPages(main, setup, work, ports);
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
        main.banners().say(List.of());
        BenchDesk bench = new BenchDesk(source, work, main.foot(), main.banners()::say);
        main.replace(BENCH, bench);
        bench.start();
    }

    /** A running session is not ended by mistake. */
    private void benchOrAsk(DaySource source) {
        boolean isRunning = day.filter(running -> running.player().isEmpty()).isPresent();
        if (!isRunning) {
            bench(source);
            return;
        }
        main.foot().ask(new Question("A session is running. End it, and open this one?", List.of(), texts -> {
            EventQueue.invokeLater(() -> bench(source));
            return Optional.empty();
        }));
    }

    /** Begins a session; on the working thread. */
    private void begin(StartOrder order) {
        Instant now = Instant.now();
        Path captures = SessionFolders.beside(notebook).claimFresh(now).folder();
        SessionStart known = new SessionStart(
                now, version, order.planFile().orElse("plan.toml"), order.planText(), Optional.of(captures.toString()));
        RunningDay running = new RunningDay(
                name(order.intake()),
                listener -> LiveSession.start(
                        new LiveSetup(
                                order.plan(),
                                order.intake(),
                                captures,
                                shelf.experience(order.plan()),
                                NotebookKeeper.open(notebook, known),
                                new SerialPorts(),
                                LiveSetup.Clock.system()),
                        listener));
        EventQueue.invokeLater(() -> benchOrAsk(running));
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
        benchOrAsk(ReplayedDay.of("session " + session.id(), session.input(), session.sources()));
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
