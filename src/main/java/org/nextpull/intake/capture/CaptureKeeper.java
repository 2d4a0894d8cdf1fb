package org.nextpull.intake.capture;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.nextpull.finding.Finding;

/**
 * Syncs the captures of a session each second, on a thread of its own, so that a slow disk holds up nobody. Sync at the end of a pull
 * goes through {@link #syncSoon}.
 */
public final class CaptureKeeper implements AutoCloseable {
    private static final long PERIOD_MS = 1000;

    private final List<CaptureWriter> writers = new CopyOnWriteArrayList<>();
    private final Thread thread;
    private boolean wanted;
    private boolean closed;

    public CaptureKeeper() {
        thread = new Thread(this::run, "capture-sync");
        thread.setDaemon(true);
        thread.start();
    }

    public void add(CaptureWriter writer) {
        writers.add(writer);
    }

    /** Syncs now, without waiting for it. */
    public synchronized void syncSoon() {
        wanted = true;
        notifyAll();
    }

    /** What the captures have to say since this was asked last. */
    public List<Finding> news() {
        List<Finding> result = new ArrayList<>();
        writers.forEach(writer -> result.addAll(writer.news()));
        return result;
    }

    /** Ends the thread and closes the captures. */
    @Override
    public void close() {
        synchronized (this) {
            closed = true;
            notifyAll();
        }
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        writers.forEach(CaptureWriter::close);
    }

    private void run() {
        try {
            while (waitForTurn()) {
                writers.forEach(CaptureWriter::tick);
                writers.forEach(CaptureWriter::sync);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized boolean waitForTurn() throws InterruptedException {
        long deadline = System.nanoTime() + PERIOD_MS * 1_000_000;
        long leftMs = PERIOD_MS;
        while (!wanted && !closed && leftMs > 0) {
            wait(leftMs);
            leftMs = (deadline - System.nanoTime()) / 1_000_000;
        }
        wanted = false;
        return !closed;
    }
}
