package org.nextpull.window;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import org.nextpull.app.DaySheet;
import org.nextpull.report.Shown;
import org.nextpull.window.bench.BenchController;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.look.Look;
import org.nextpull.window.page.AlarmSound;
import org.nextpull.window.page.MixerSound;
import org.nextpull.window.start.PortAccess;
import org.nextpull.window.work.Work;

/** The bench window as a program: the one class of this room that a command opens. */
public final class WindowProgram {
    private WindowProgram() {}

    /** Whether there is a display to show it on. */
    public static boolean hasDisplay() {
        return !GraphicsEnvironment.isHeadless();
    }

    /** Opens the window and waits until it is closed. Not for the event thread. */
    public static void open(WindowSetup setup) throws InterruptedException {
        CountDownLatch closed = new CountDownLatch(1);
        Work work = new Work();
        MixerSound sound = new MixerSound();
        List<WindowPages> pages = new CopyOnWriteArrayList<>();
        EventQueue.invokeLater(() -> {
            WindowMemory memory = WindowMemory.ofUser();
            MainFrame main = new MainFrame(memory.look(setup.look()), sound);
            pages.add(WindowPages.fill(main, setup, work, PortAccess.ofComputer()));
            main.frame().addWindowListener(new WindowAdapter() {
                @Override
                public void windowClosed(WindowEvent event) {
                    memory.keep(main.look(), main.frame().getBounds());
                    closed.countDown();
                }
            });
            main.open(firstSize());
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
}
