package org.nextpull.intake.serial;

import java.io.IOException;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalQueue;

/**
 * Reads one port on a thread of its own, which does nothing but read and hand on. A port that cannot be opened or goes away is tried
 * again about three times a second, until the reader is closed.
 */
public final class WireReader implements AutoCloseable {
    private static final int BUFFER_BYTES = 8192;
    private static final long RETRY_MS = 300;
    private static final long CLOSE_WAIT_MS = 2000;

    private final Port.Settings settings;
    private final Port.Opener opener;
    private final ArrivalQueue queue;
    private final Thread thread;
    private volatile boolean closed;

    private WireReader(Port.Settings settings, Port.Opener opener, ArrivalQueue queue) {
        this.settings = settings;
        this.opener = opener;
        this.queue = queue;
        this.thread = new Thread(this::run, "wire " + settings.device());
        thread.setDaemon(true);
    }

    /** Starts to read; what arrives has the device's name as its source. */
    public static WireReader start(Port.Settings settings, Port.Opener opener, ArrivalQueue queue) {
        WireReader reader = new WireReader(settings, opener, queue);
        reader.thread.start();
        return reader;
    }

    public Port.Settings settings() {
        return settings;
    }

    /** Ends the reading and closes the port; waits for it, but not for a device that hangs in opening. */
    @Override
    public void close() {
        closed = true;
        thread.interrupt();
        try {
            thread.join(CLOSE_WAIT_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        Optional<Finding> said = Optional.empty();
        while (!closed) {
            Outcome<Port> opened = open();
            if (opened.value().isPresent()) {
                said = Optional.empty();
                readUntilGone(opened.value().get());
            } else {
                Finding why = opened.findings().get(0);
                if (!said.equals(Optional.of(why))) {
                    queue.trouble(settings.device(), why);
                    said = Optional.of(why);
                }
                if (why.code() == FindingCode.WIRE_LIBRARY_UNUSABLE || why.code() == FindingCode.WIRE_WITHOUT_NAME) {
                    return;
                }
            }
            pause();
        }
    }

    private Outcome<Port> open() {
        try {
            return opener.open(settings);
        } catch (RuntimeException e) {
            return Outcome.failed(Finding.error(
                    FindingCode.WIRE_NOT_OPENED,
                    Place.inFile(settings.device()),
                    Detail.of("settings", settings.port().text()),
                    Detail.of("error", e.toString())));
        }
    }

    private void readUntilGone(Port port) {
        String source = settings.device();
        queue.connected(source);
        byte[] buffer = new byte[BUFFER_BYTES];
        Arrival.Cause why = Arrival.Cause.CLOSED;
        try (port) {
            while (!closed) {
                int count = port.read(buffer);
                if (count > 0) {
                    queue.bytes(source, buffer, count);
                }
            }
        } catch (IOException e) {
            why = Arrival.Cause.UNPLUGGED;
        }
        queue.lost(source, why);
    }

    private void pause() {
        if (closed) {
            return;
        }
        try {
            Thread.sleep(RETRY_MS);
        } catch (InterruptedException e) {
            // woken to look at whether it is closed
            return;
        }
    }
}
