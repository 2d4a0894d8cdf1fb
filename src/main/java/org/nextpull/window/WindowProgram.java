package org.nextpull.window;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.concurrent.CountDownLatch;
import org.nextpull.window.bench.BenchDesk;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.look.Look;
import org.nextpull.window.work.Work;

/** The bench window as a program: the one class of this room that a command opens. */
public final class WindowProgram {
    private WindowProgram() {}

    /** Whether there is a display to show it on. */
    public static boolean hasDisplay() {
        return !GraphicsEnvironment.isHeadless();
    }

    /** Opens the window on a day and waits until it is closed. Not for the event thread. */
    public static void open(DaySource source, Look look) throws InterruptedException {
        CountDownLatch closed = new CountDownLatch(1);
        Work work = new Work();
        EventQueue.invokeLater(() -> {
            MainFrame main = assemble(source, look, work);
            main.frame().addWindowListener(new WindowAdapter() {
                @Override
                public void windowClosed(WindowEvent event) {
                    closed.countDown();
                }
            });
            main.open(firstSize());
        });
        closed.await();
        source.close();
        work.close();
    }

    /** The frame with its pages, not shown yet. On the event thread. */
    static MainFrame assemble(DaySource source, Look look, Work work) {
        MainFrame main = new MainFrame(look);
        BenchDesk bench = new BenchDesk(source, work, main.foot(), main.banners()::say);
        main.add(bench);
        main.whenBegun(bench::start);
        return main;
    }

    /** Nearly the whole screen; never smaller than what the page needs. */
    private static Dimension firstSize() {
        Dimension screen = GraphicsEnvironment.getLocalGraphicsEnvironment()
                .getMaximumWindowBounds()
                .getSize();
        return new Dimension(Math.min(screen.width, Math.max(1280, screen.width)), Math.max(640, screen.height - 40));
    }
}
