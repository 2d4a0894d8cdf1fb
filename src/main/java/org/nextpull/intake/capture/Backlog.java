package org.nextpull.intake.capture;

import java.nio.ByteBuffer;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.Chunk;

/** Arrivals that are not in the file yet. Bounded: beyond that the oldest are given up, and a record says so in their place. */
final class Backlog {
    private static final long USUAL_MOST_BYTES = 64L << 20;
    private static final long WEIGHT_OF_ONE = 64;

    private final long mostBytes;
    private final Deque<Arrival> arrivals = new ArrayDeque<>();
    private Optional<Arrival.Lost> hole = Optional.empty();
    private long weight;
    private long lostBytes;

    Backlog() {
        this(USUAL_MOST_BYTES);
    }

    Backlog(long mostBytes) {
        this.mostBytes = mostBytes;
    }

    void add(Arrival arrival) {
        arrivals.addLast(arrival);
        weight += weight(arrival);
        while (weight > mostBytes && arrivals.size() > 1) {
            giveUp(arrivals.removeFirst());
        }
    }

    /** The record to be written next; empty when everything was written. */
    Optional<ByteBuffer> first(RecordEncoder encoder) {
        if (hole.isPresent()) {
            return hole.map(encoder::received);
        }
        return Optional.ofNullable(arrivals.peekFirst()).map(encoder::received);
    }

    /** The record given by {@link #first} is in the file. */
    void removeFirst() {
        if (hole.isPresent()) {
            hole = Optional.empty();
        } else {
            weight -= weight(arrivals.removeFirst());
        }
    }

    /** Bytes given up since this was asked last. */
    long takeLostBytes() {
        long result = lostBytes;
        lostBytes = 0;
        return result;
    }

    private void giveUp(Arrival arrival) {
        long bytes = arrival instanceof Chunk chunk ? chunk.length() : 0;
        weight -= weight(arrival);
        lostBytes += bytes;
        long before = hole.map(Arrival.Lost::bytes).orElse(0L);
        hole = Optional.of(new Arrival.Lost(arrival.source(), arrival.at(), Arrival.Cause.NOT_SAVED, before + bytes));
    }

    private static long weight(Arrival arrival) {
        return WEIGHT_OF_ONE + (arrival instanceof Chunk chunk ? chunk.length() : 0);
    }
}
