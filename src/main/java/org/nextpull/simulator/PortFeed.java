package org.nextpull.simulator;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.serial.Port;

/**
 * Sends lines to one port when their time has come, on a thread of its own, so that a port that nobody reads holds up neither the engine
 * nor the other ports: lines that it does not take are lost, as on a wire.
 */
final class PortFeed implements AutoCloseable {
    private static final int MOST_WAITING = 4096;
    private static final long CLOSE_WAIT_MS = 5000;

    private final String device;
    private final Port port;
    private final Consumer<Finding> said;
    private final BlockingQueue<Sending> waiting = new ArrayBlockingQueue<>(MOST_WAITING);
    private final Thread thread;
    private boolean read = true;
    private volatile boolean givenUp;

    /** Bytes, and the time of the system's timer at which they go; the last has none. */
    private record Sending(String text, long atNs) {
        private static final Sending LAST = new Sending("", 0);

        boolean isLast() {
            return text.isEmpty();
        }
    }

    PortFeed(String device, Port port, Consumer<Finding> said) {
        this.device = device;
        this.port = port;
        this.said = said;
        this.thread = new Thread(this::run, "feed " + device);
        thread.setDaemon(true);
    }

    /** Starts to send; what goes wrong is said on the thread of the feed. */
    void begin() {
        thread.start();
    }

    /** Sends a text that is not empty, one character a byte, at a time of {@link System#nanoTime}; one for which there is no room is lost. */
    void send(String text, long atNs) {
        if (!waiting.offer(new Sending(text, atNs))) {
            nobodyReads();
        }
    }

    /** Sends what still waits, as far as it is taken within some seconds, then closes the port. */
    @Override
    public void close() {
        try {
            if (waiting.offer(Sending.LAST, CLOSE_WAIT_MS, TimeUnit.MILLISECONDS)) {
                thread.join(CLOSE_WAIT_MS);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        givenUp = true;
        thread.interrupt();
    }

    private void run() {
        try (port) {
            Sending next = waiting.take();
            while (!next.isLast()) {
                long aheadNs = next.atNs() - System.nanoTime();
                if (aheadNs > 0) {
                    TimeUnit.NANOSECONDS.sleep(aheadNs);
                }
                write(next.text());
                next = waiting.take();
            }
        } catch (IOException gone) {
            if (!givenUp) {
                said.accept(Finding.warning(FindingCode.RIG_PORT_GONE, Place.inFile(device)));
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private void write(String text) throws IOException {
        try {
            port.write(text.getBytes(StandardCharsets.ISO_8859_1));
            read = true;
        } catch (Port.NotTakenException full) {
            // only reading tells a port that went away from one that nobody reads
            if (port.read(new byte[1]) == 0) {
                nobodyReads();
            }
        }
    }

    private synchronized void nobodyReads() {
        if (read) {
            said.accept(Finding.note(FindingCode.RIG_NOBODY_READS, Place.inFile(device)));
        }
        read = false;
    }
}
