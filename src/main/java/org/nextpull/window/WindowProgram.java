package org.nextpull.window;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import org.nextpull.app.DaySheet;
import org.nextpull.app.NotebookAccess;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.bench.BenchController;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.look.Look;
import org.nextpull.window.page.AlarmSound;
import org.nextpull.window.page.Work;
import org.nextpull.window.start.StartController;
import org.tinylog.Logger;

/** The bench window as a program: the one class of this room that a command opens. */
public final class WindowProgram {
    private WindowProgram() {}

    /** Whether there is a display to show it on. */
    public static boolean hasDisplay() {
        return !GraphicsEnvironment.isHeadless();
    }

    /** Opens the window and waits until it is closed. Not for the event thread. */
    public static void open(Setup setup) throws InterruptedException {
        CountDownLatch closed = new CountDownLatch(1);
        Work work = new Work();
        AlarmSound.Mixer sound = new AlarmSound.Mixer();
        List<WindowPages> pages = new CopyOnWriteArrayList<>();
        EventQueue.invokeLater(() -> {
            Memory memory = Memory.ofUser();
            MainFrame main = new MainFrame(memory.look(setup.look()), sound);
            pages.add(WindowPages.fill(main, setup, work, StartController.PortAccess.ofComputer()));
            main.frame().addWindowListener(new WindowAdapter() {
                @Override
                public void windowClosed(WindowEvent event) {
                    memory.keep(main.look(), main.frame().getBounds());
                    closed.countDown();
                }
            });
            main.open(firstSize());
            sound.whenSilent(text -> EventQueue.invokeLater(() -> main.foot().say(text)));
            main.frame().setBounds(memory.place(screen(), main.frame().getSize()));
        });
        closed.await();
        pages.forEach(WindowPages::close);
        work.close();
        sound.close();
    }

    /** A frame with the bench alone, not shown yet. On the event thread. */
    static MainFrame assemble(
            DaySource source, Look look, Work work, AlarmSound sound, Function<Shown, DaySheet.Order> sheets) {
        MainFrame main = new MainFrame(look, sound);
        BenchController bench = new BenchController(source, work, main.foot(), main, sheets);
        main.add(bench);
        main.whenBegun(bench::start);
        return main;
    }

    private static Rectangle screen() {
        return GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
    }

    /** Nearly the whole screen; never smaller than what the page needs. */
    private static Dimension firstSize() {
        Dimension screen = screen().getSize();
        return new Dimension(Math.min(screen.width, Math.max(1280, screen.width)), Math.max(640, screen.height - 40));
    }

    /** What the window was like when it was closed last: its look and its place on the screen, kept for the user. */
    static final class Memory {
        private static final String DARK = "dark";
        private static final String LARGE = "large";
        private static final String US = "us-units";
        private static final String PLACE = "place";

        private final Preferences kept;

        Memory(Preferences kept) {
            this.kept = kept;
        }

        static Memory ofUser() {
            return new Memory(Preferences.userRoot().node("org/nextpull/window"));
        }

        /** The look that was kept; what the command line asks for holds as well. */
        Look look(Look asked) {
            return new Look(
                    asked.dark() || kept.getBoolean(DARK, false),
                    asked.large() || kept.getBoolean(LARGE, false),
                    asked.units() == UnitSystem.US || kept.getBoolean(US, false) ? UnitSystem.US : UnitSystem.METRIC);
        }

        /** Where the window was; the whole of the usual size where nothing was kept, or it lies on no screen now. */
        Rectangle place(Rectangle screen, Dimension usual) {
            String[] parts = kept.get(PLACE, "").split(",", -1);
            if (parts.length == 4 && String.join("", parts).matches("[-0-9]{4,40}")) {
                try {
                    Rectangle place = new Rectangle(
                            Integer.parseInt(parts[0]),
                            Integer.parseInt(parts[1]),
                            Integer.parseInt(parts[2]),
                            Integer.parseInt(parts[3]));
                    if (screen.contains(place)) {
                        return place;
                    }
                } catch (NumberFormatException odd) {
                    Logger.debug("a place that is none: {}", kept.get(PLACE, ""));
                }
            }
            return new Rectangle(new java.awt.Point(screen.x, screen.y), usual);
        }

        void keep(Look look, Rectangle place) {
            kept.putBoolean(DARK, look.dark());
            kept.putBoolean(LARGE, look.large());
            kept.putBoolean(US, look.units() == UnitSystem.US);
            kept.put(PLACE, place.x + "," + place.y + "," + place.width + "," + place.height);
            try {
                kept.flush();
            } catch (BackingStoreException lost) {
                Logger.warn("the look of the window could not be kept: {}", lost.getMessage());
            }
        }
    }

    /**
     * What a window is opened with.
     *
     * @param day a day to show at once; without one the page that starts a session comes first
     * @param plan the plan file that the form opens with
     * @param notebook the notebook, which need not be there yet
     * @param version version of the program, for sessions that are kept
     * @param look how it looks at first
     */
    public record Setup(
            Optional<DaySource> day, Optional<String> plan, NotebookAccess notebook, String version, Look look) {}
}
