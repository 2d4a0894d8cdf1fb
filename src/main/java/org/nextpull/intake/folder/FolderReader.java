package org.nextpull.intake.folder;

import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalQueue;

/** Looks at a folder ten times a second, on a thread of its own, until it is closed. */
public final class FolderReader implements AutoCloseable {
    private static final long PERIOD_MS = 100;

    private final FolderWatch watch;
    private final ArrivalQueue queue;
    private final Thread thread;
    private volatile boolean closed;

    private FolderReader(FolderWatch watch, ArrivalQueue queue) {
        this.watch = watch;
        this.queue = queue;
        this.thread = new Thread(this::run, "folder " + watch.source());
        thread.setDaemon(true);
    }

    /** Starts to look. */
    public static FolderReader start(FolderWatch watch, ArrivalQueue queue) {
        FolderReader reader = new FolderReader(watch, queue);
        reader.thread.start();
        return reader;
    }

    /** Ends the looking and waits for it. */
    @Override
    public void close() {
        closed = true;
        thread.interrupt();
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        queue.connected(watch.source());
        try {
            while (!closed) {
                watch.look(System.nanoTime());
                Thread.sleep(PERIOD_MS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        queue.lost(watch.source(), Arrival.Cause.CLOSED);
    }
}
