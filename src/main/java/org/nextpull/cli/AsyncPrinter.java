package org.nextpull.cli;

import java.io.PrintWriter;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * Prints on a thread of its own, in the order in which it was asked: a terminal that does not take what is printed, as over a slow
 * connection, must hold up neither alarms nor the capture.
 */
final class AsyncPrinter implements AutoCloseable {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss ", Locale.ROOT);
    private static final String INDENT = "         ";
    private static final String END = "\0";
    private static final long CLOSE_WAIT_MS = 3000;
    private static final int MOST_WAITING = 20_000;

    private final BlockingQueue<String> waiting = new LinkedBlockingQueue<>(MOST_WAITING);
    private final PrintWriter out;
    private final ZoneId zone;
    private final int width;
    private final Thread thread;

    /**
     * Prints on a terminal.
     *
     * @param zone of the times that are shown
     * @param width characters that a line of it holds
     */
    AsyncPrinter(PrintWriter out, ZoneId zone, int width) {
        this.out = out;
        this.zone = zone;
        this.width = width;
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

    /** Prints lines that were said at that time of the computer's clock. */
    void timed(long wallMs, List<String> lines) {
        List<String> timed = new ArrayList<>();
        for (String line : lines) {
            wrap((timed.isEmpty() ? TIME.format(Instant.ofEpochMilli(wallMs).atZone(zone)) : INDENT) + line, timed);
        }
        lines(timed);
    }

    /** Prints what answers a typed line, which has no time of its own. */
    void answer(List<String> lines) {
        List<String> said = new ArrayList<>();
        lines.forEach(line -> wrap(INDENT + line, said));
        lines(said);
    }

    /** Breaks a line between words where the terminal would break it anywhere. */
    private void wrap(String line, List<String> into) {
        String left = line;
        int space = left.lastIndexOf(' ', width);
        while (left.length() > width && space > INDENT.length() + 2) {
            into.add(left.substring(0, space));
            left = INDENT + "  " + left.substring(space + 1);
            space = left.lastIndexOf(' ', width);
        }
        into.add(left);
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
