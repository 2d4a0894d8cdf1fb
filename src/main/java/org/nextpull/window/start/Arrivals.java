package org.nextpull.window.start;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.nextpull.channel.Hints;
import org.nextpull.intake.folder.FolderMemory;
import org.nextpull.intake.folder.FolderReader;
import org.nextpull.intake.folder.FolderWatch;
import org.nextpull.intake.serial.PortOpener;
import org.nextpull.intake.serial.WireReader;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalQueue;
import org.nextpull.intake.wire.SessionClock;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.live.LiveIntake;
import org.nextpull.report.Shown;
import org.tinylog.Logger;

/** Looks at ports or a folder on threads of its own, until it is closed, and tells five times a second what arrives. Records nothing. */
final class Arrivals implements AutoCloseable {
    private static final long PERIOD_MS = 200;

    private final ArrivalQueue queue = new ArrivalQueue(SessionClock.system());
    private final List<AutoCloseable> readers = new ArrayList<>();
    private final ArrivalsChain chain;
    private final Consumer<ArrivalsPage> watcher;
    private final Thread thread;
    private volatile boolean closed;
    private volatile Shown shown;

    private Arrivals(LiveIntake intake, Hints hints, Shown shown, Consumer<ArrivalsPage> watcher) {
        this.shown = shown;
        this.chain = new ArrivalsChain(sources(intake), hints, shown);
        this.watcher = watcher;
        this.thread = new Thread(this::run, "nextpull-window-arrivals");
        thread.setDaemon(true);
    }

    /**
     * Starts to look. Opening a port may take long, so this is not for the event thread.
     *
     * @param watcher is told on the thread of this object
     */
    static Arrivals start(
            LiveIntake intake, Hints hints, PortOpener opener, Shown shown, Consumer<ArrivalsPage> watcher) {
        Arrivals arrivals = new Arrivals(intake, hints, shown, watcher);
        if (intake instanceof LiveIntake.Ports ports) {
            ports.ports().forEach(port -> arrivals.readers.add(WireReader.start(port.wire(), opener, arrivals.queue)));
        } else if (intake instanceof LiveIntake.Folder folder) {
            arrivals.newestFile(folder.folder().folder());
            FolderWatch watch = new FolderWatch(folder.folder(), arrivals.queue, new FolderMemory());
            arrivals.readers.add(FolderReader.start(watch, arrivals.queue));
        }
        arrivals.thread.start();
        return arrivals;
    }

    private static List<WireSource> sources(LiveIntake intake) {
        if (intake instanceof LiveIntake.Ports ports) {
            return ports.ports().stream().map(Arrivals::source).toList();
        }
        Path folder = ((LiveIntake.Folder) intake).folder().folder();
        return List.of(WireSource.folder(folder.toString()));
    }

    private static WireSource source(LiveIntake.Port port) {
        return WireSource.port(
                port.wire().device(), port.lines(), port.wire().port().text());
    }

    /** The units that people read from now on. */
    void units(Shown newShown) {
        shown = newShown;
    }

    private void run() {
        try {
            long shownNs = System.nanoTime() - PERIOD_MS * 1_000_000;
            while (!closed) {
                Optional<Arrival> arrival = queue.take(PERIOD_MS / 4);
                arrival.ifPresentOrElse(chain::accept, () -> chain.tick(queue.now()));
                if (System.nanoTime() - shownNs >= PERIOD_MS * 1_000_000) {
                    shownNs = System.nanoTime();
                    chain.units(shown);
                    watcher.accept(chain.page(queue.now()));
                }
            }
        } catch (InterruptedException ended) {
            Logger.debug("no longer looked at what arrives");
        } catch (RuntimeException fault) {
            Logger.error(fault, "what arrives cannot be shown");
        }
    }

    /** A folder that is quiet shows what its newest log looks like. */
    private void newestFile(Path folder) {
        try {
            NewestLog.into(queue, folder);
        } catch (IOException unreadable) {
            Logger.debug(unreadable, "the newest log could not be looked at; the watch of the folder says why");
        }
    }

    /** Ends the looking and gives the ports back; waits for that. */
    @Override
    public void close() {
        closed = true;
        thread.interrupt();
        for (AutoCloseable reader : readers) {
            try {
                reader.close();
            } catch (Exception fault) {
                Logger.warn(fault, "a source could not be given back");
            }
        }
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
