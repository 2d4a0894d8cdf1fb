package org.nextpull.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * Prints on a thread of its own, in the order in which it was asked: a terminal that does not take what is printed, as over a slow
 * connection, must hold up neither alarms nor the capture.
 */
final class AsyncPrinter implements AutoCloseable {
    private static final String END = "\0";
    private static final long CLOSE_WAIT_MS = 3000;
    private static final int MOST_WAITING = 20_000;

    private final BlockingQueue<String> waiting = new LinkedBlockingQueue<>(MOST_WAITING);
    private final PrintWriter out;
    private final Thread thread;

    AsyncPrinter(PrintWriter out) {
        this.out = out;
        this.thread = new Thread(this::print, "live-printer");
        thread.setDaemon(true);
        thread.start();
    }

    /** Prints lines that belong together. A terminal that takes nothing for very long loses them. */
    void lines(List<String> lines) {
        if (!lines.isEmpty()) {
            waiting.offer(String.join(System.lineSeparator(), lines) + System.lineSeparator());
        }
    }

    private void print() {
        try {
            for (String text = waiting.take(); !text.equals(END); text = waiting.take()) {
                out.print(text);
                out.flush();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Prints what waits and ends; does not wait for a terminal that takes nothing. */
    @Override
    public void close() {
        waiting.offer(END);
        try {
            thread.join(CLOSE_WAIT_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
