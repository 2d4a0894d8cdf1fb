package org.nextpull.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.nextpull.app.ReadingProgress;

/** A line on the terminal that says how far the reading of many bytes is; nothing where no terminal is. */
final class ProgressLine implements AutoCloseable {
    private static final long EVERY_MS = 500;
    private static final int BAR = 20;
    private static final double MEGA = 1e6;
    private static final String CLEAR = "\r" + " ".repeat(78) + "\r";

    private final PrintWriter err;
    private final ReadingProgress progress;
    private final long startedNanos = System.nanoTime();
    private final ScheduledExecutorService clock;
    private boolean shown;

    private ProgressLine(PrintWriter err, ReadingProgress progress) {
        this.err = err;
        this.progress = progress;
        this.clock = Executors.newSingleThreadScheduledExecutor(task -> {
            Thread thread = new Thread(task, "progress");
            thread.setDaemon(true);
            return thread;
        });
    }

    static ProgressLine of(PrintWriter err, ReadingProgress progress) {
        ProgressLine line = new ProgressLine(err, progress);
        if (Terminal.isThere()) {
            var unused = line.clock.scheduleAtFixedRate(line::show, EVERY_MS, EVERY_MS, TimeUnit.MILLISECONDS);
        }
        return line;
    }

    private synchronized void show() {
        shown = true;
        err.print("\r" + text(progress, (System.nanoTime() - startedNanos) / 1e9) + " ");
        err.flush();
    }

    /** What the line says after so many seconds. */
    static String text(ReadingProgress progress, double seconds) {
        OptionalDouble share = progress.share();
        int done = (int) Math.round(BAR * share.orElse(0));
        String left = share.orElse(0) > 0
                ? String.format(Locale.ROOT, ", %.0f s left", seconds * (1 - share.getAsDouble()) / share.getAsDouble())
                : "";
        return String.format(
                Locale.ROOT,
                "[%s%s] %d of %d files, %.0f MB/s%s",
                "#".repeat(done),
                ".".repeat(BAR - done),
                progress.filesDone(),
                progress.files(),
                progress.bytesRead() / MEGA / Math.max(seconds, 1e-3),
                left);
    }

    /** Takes the line away, to print something else in its place. */
    synchronized void clear() {
        if (shown) {
            err.print(CLEAR);
            err.flush();
            shown = false;
        }
    }

    @Override
    public void close() {
        clock.shutdownNow();
        clear();
    }
}
