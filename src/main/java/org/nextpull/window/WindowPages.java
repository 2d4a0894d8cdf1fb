package org.nextpull.window;

import java.awt.BorderLayout;
import java.awt.EventQueue;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.TransferHandler;
import org.nextpull.app.DayReader;
import org.nextpull.app.DaySheet;
import org.nextpull.app.LabelledLog;
import org.nextpull.app.NotebookAccess;
import org.nextpull.notebook.KeptSession;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.bench.BenchController;
import org.nextpull.window.bench.CandidatesPage;
import org.nextpull.window.compared.ComparedController;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.day.ReplayedDay;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.TypeScale;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.Page;
import org.nextpull.window.page.Question;
import org.nextpull.window.page.Signals;
import org.nextpull.window.page.Work;
import org.nextpull.window.past.PastController;
import org.nextpull.window.start.StartController;
import org.tinylog.Logger;

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
    private final StartController start;
    private volatile Optional<DaySource> day = Optional.empty();

    private WindowPages(MainFrame main, WindowProgram.Setup setup, Work work, StartController.PortAccess ports) {
        this.main = main;
        this.work = work;
        this.notebook = setup.notebook();
        this.version = setup.version();
        WindowSessions sessions = new WindowSessions(notebook, version, this::benchOrAsk, main.foot()::say);
        this.start = new StartController(work, main.foot(), ports, sessions::begin);
        ComparedController compared = new ComparedController(work, main.foot(), notebook);
        main.add(new EmptyPage("Bench"));
        main.add(start);
        main.add(new PastController(
                work,
                main.foot(),
                notebook,
                new PastController.Ways(
                        this::open,
                        sessions::goOn,
                        sessions::isRunning,
                        ids -> {
                            compared.sessions(ids);
                            main.show(COMPARE);
                        },
                        this::sheet)));
        main.add(compared);
        main.add(new EmptyPage("Candidates"));
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
        main.foot().ask(Question.whether("End the running session?", () -> {
            day.ifPresent(WindowPages::end);
            day = Optional.empty();
            EventQueue.invokeLater(() -> {
                main.replace(BENCH, new EmptyPage("Bench"));
                main.urgent(List.of());
                main.alarm(Signals.AlarmSign.none());
                main.foot().say("Session ended. It is kept under 3, Past sessions.");
            });
        }));
    }

    /** Fills a frame that is not shown yet. On the event thread. */
    static WindowPages fill(MainFrame main, WindowProgram.Setup setup, Work work, StartController.PortAccess ports) {
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
        BenchController bench = new BenchController(source, work, main.foot(), main, this::sheet);
        CandidatesPage candidates = new CandidatesPage(work, main.foot(), source::tell);
        bench.alsoOn(candidates::show);
        main.replace(CANDIDATES, candidates);
        main.replace(BENCH, bench);
        main.urgent(List.of());
        main.alarm(Signals.AlarmSign.none());
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
        main.foot().ask(Question.whether("A session is running. End it, and open this one?", () -> {
            EventQueue.invokeLater(() -> bench(source));
        }));
    }

    private DaySheet.Order sheet(Shown shown) {
        return DaySheet.Order.usual(LocalDate.now(ZoneId.systemDefault()), version, shown);
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

    /** Takes files that are dropped onto the window. */
    private static final class Dropped extends TransferHandler {
        private static final long serialVersionUID = 1;

        private final transient Consumer<List<String>> take;

        /**
         * The handler.
         *
         * @param take is given the paths of what was dropped
         */
        Dropped(Consumer<List<String>> take) {
            this.take = take;
        }

        @Override
        public boolean canImport(TransferSupport support) {
            return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
        }

        @Override
        public boolean importData(TransferSupport support) {
            try {
                List<?> files = (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
                take.accept(files.stream().map(file -> ((File) file).getPath()).toList());
                return true;
            } catch (UnsupportedFlavorException | IOException lost) {
                Logger.warn("what was dropped could not be read: {}", lost.getMessage());
                return false;
            }
        }
    }

    /** Stands where a page of a day will be, while no day is open. */
    private static final class EmptyPage implements Page {
        private final JPanel view = new JPanel(new BorderLayout());
        private final Prose words = new Prose("What can be done");
        private final String title;

        EmptyPage(String title) {
            this.title = title;
            words.say("No day is open. Key 2 starts a session, key 3 opens one of the notebook.");
            view.add(words, BorderLayout.CENTER);
            view.setFocusable(true);
        }

        @Override
        public String title() {
            return title;
        }

        @Override
        public String hint() {
            return "2: start a session    3: open a past one    F1: all keys";
        }

        @Override
        public JComponent view() {
            return view;
        }

        @Override
        public List<KeyCommand> keys() {
            return List.of();
        }

        @Override
        public void units(UnitSystem units) {
            // nothing has a unit
        }

        @Override
        public void focus() {
            view.requestFocusInWindow();
        }

        @Override
        public void style(Skin skin, TypeScale scale) {
            view.setBackground(skin.ground());
            view.setBorder(scale.margin(60, 60, 60, 60));
            words.dress(skin.ink(), scale.plain(22));
        }
    }
}
