package org.nextpull.intake.wire;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.nextpull.finding.Finding;

/**
 * Where reading threads put what arrived and one other thread takes it. The time is read while the queue is held, so the order in the
 * queue is the order of the times over all sources. Held bytes are bounded: beyond that the newest are dropped and the loss is said.
 */
public final class ArrivalQueue {
    /** Enough for half a minute at a megabyte a second. */
    public static final int USUAL_MOST_BYTES = 32 << 20;

    private final SessionClock clock;
    private final int mostBytes;
    private final Deque<Arrival> arrivals = new ArrayDeque<>();
    private final Map<String, Long> dropped = new HashMap<>();
    private int heldBytes;

    public ArrivalQueue(SessionClock clock) {
        this(clock, USUAL_MOST_BYTES);
    }

    public ArrivalQueue(SessionClock clock, int mostBytes) {
        this.clock = clock;
        this.mostBytes = mostBytes;
    }

    /** Puts the first {@code length} bytes of a buffer, which may be used again. */
    public synchronized void bytes(String source, byte[] buffer, int length) {
        if (heldBytes + length > mostBytes) {
            dropped.merge(source, (long) length, Long::sum);
            return;
        }
        sayDropped(source);
        heldBytes += length;
        put(Chunk.copyOf(source, clock.now(), buffer, length));
    }

    /** Puts a text in UTF-8, whether there is room or not: for the little that a person types. */
    public synchronized void words(String source, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        for (int from = 0; from < bytes.length; from += Chunk.MOST_BYTES) {
            byte[] part = Arrays.copyOfRange(bytes, from, Math.min(bytes.length, from + Chunk.MOST_BYTES));
            heldBytes += part.length;
            put(Chunk.copyOf(source, clock.now(), part, part.length));
        }
    }

    /** Like {@link #bytes}, but waits until there is room: for a source that can wait, such as a file. */
    public synchronized void bytesWhenRoom(String source, byte[] buffer, int length) throws InterruptedException {
        while (heldBytes > 0 && heldBytes + length > mostBytes) {
            wait();
        }
        heldBytes += length;
        put(Chunk.copyOf(source, clock.now(), buffer, length));
    }

    public synchronized void connected(String source) {
        sayDropped(source);
        put(new Arrival.Connected(source, clock.now()));
    }

    public synchronized void lost(String source, Arrival.Cause why) {
        sayDropped(source);
        put(new Arrival.Lost(source, clock.now(), why, 0));
    }

    public synchronized void fromFile(String source, String file, long atByte) {
        sayDropped(source);
        put(new Arrival.FromFile(source, clock.now(), file, atByte));
    }

    public synchronized void fileComplete(String source, String file, Arrival.Taken taken, Fingerprint print) {
        put(new Arrival.FileComplete(source, clock.now(), file, taken, print));
    }

    public synchronized void trouble(String source, Finding finding) {
        put(new Arrival.Trouble(source, clock.now(), finding));
    }

    /** Takes the oldest arrival, waiting for one at most so long; empty when none came. */
    public synchronized Optional<Arrival> take(long waitMs) throws InterruptedException {
        long deadline = System.nanoTime() + waitMs * 1_000_000;
        while (arrivals.isEmpty()) {
            long leftMs = (deadline - System.nanoTime() + 999_999) / 1_000_000;
            if (leftMs <= 0) {
                return Optional.empty();
            }
            wait(leftMs);
        }
        Arrival arrival = arrivals.removeFirst();
        if (arrival instanceof Chunk chunk) {
            heldBytes -= chunk.length();
            notifyAll();
        }
        return Optional.of(arrival);
    }

    /** The time now, on the clock of the arrivals; later than that of every arrival put so far. */
    public synchronized ArrivalTime now() {
        return clock.now();
    }

    /** Bytes that wait to be taken. */
    public synchronized int heldBytes() {
        return heldBytes;
    }

    private void sayDropped(String source) {
        Long bytes = dropped.remove(source);
        if (bytes != null) {
            put(new Arrival.Lost(source, clock.now(), Arrival.Cause.OVERRUN, bytes));
            put(new Arrival.Connected(source, clock.now()));
        }
    }

    private void put(Arrival arrival) {
        arrivals.addLast(arrival);
        notifyAll();
    }
}
