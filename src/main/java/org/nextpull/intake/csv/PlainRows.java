package org.nextpull.intake.csv;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import org.nextpull.intake.SampleRows;

/**
 * The fast lane: cuts the bytes of a log into pieces of one size, at line ends, and has two threads read them ahead while the rows of earlier
 * ones are looked at; a log of one piece is read without a thread. From the first line on that is not plain the rest is handed out.
 */
final class PlainRows {
    private static final int PIECE_BYTES = 1 << 18;
    private static final int THREADS = 2;
    private static final int PIECES_AHEAD = 2 * THREADS;

    private final Head head;
    private final SampleRows rows;
    private final boolean firstIsText;
    /** Pieces in the order of the log, each once it is cut. */
    private final BlockingQueue<CompletableFuture<PlainPiece>> order = new LinkedBlockingQueue<>();

    private final Queue<PlainPiece> unused = new ConcurrentLinkedQueue<>();
    private final PieceCutter cutter;
    private Optional<ExecutorService> threads = Optional.empty();
    private Optional<PlainPiece> piece = Optional.empty();
    private int given;
    private int ahead;
    private long lines;
    private boolean odd;

    /**
     * Prepares to read.
     *
     * @param in the bytes of a text of which each byte below 128 is an ASCII character, from its mark on
     * @param rows where the rows go
     * @param firstIsText whether the first column holds words
     */
    PlainRows(InputStream in, Head head, SampleRows rows, boolean firstIsText) {
        this.head = head;
        this.rows = rows;
        this.firstIsText = firstIsText;
        this.cutter = new PieceCutter(in);
        this.odd = !PlainPiece.canRead(head);
    }

    /** Whether it stopped before a line that it does not know, not at the end. */
    boolean isOdd() {
        return odd;
    }

    /** Why the source broke off, where it did. */
    Optional<IOException> failure() {
        return cutter.failure();
    }

    /** Lines that were read. */
    long lines() {
        return lines;
    }

    /** Adds the next rows, as many as there is room for; false at the end and before a line that it does not know. */
    boolean next() {
        while (!odd) {
            if (piece.isEmpty() && !take()) {
                return false;
            }
            PlainPiece now = piece.orElseThrow();
            int end = Math.min(now.rows().rows(), given + rows.room());
            rows.add(now.rows(), given, end);
            boolean some = end > given;
            given = end;
            if (end == now.rows().rows()) {
                rows.ended(now.rows());
                lines += now.lines();
                odd = now.isOdd();
                piece = odd ? piece : Optional.empty();
                if (!odd) {
                    unused.add(now);
                }
            }
            if (some) {
                return true;
            }
        }
        return false;
    }

    /** Goes to the next piece; false where there is none. */
    private boolean take() {
        PlainPiece next;
        if (lines == 0) {
            next = cutter.cut(piece());
            next.readFirst();
        } else if (threads.isEmpty() && cutter.isAtEnd()) {
            return false;
        } else {
            ExecutorService started = threads.orElseGet(PlainRows::start);
            threads = Optional.of(started);
            for (; ahead < PIECES_AHEAD; ahead++) {
                started.execute(this::readAhead);
            }
            next = done(order);
            ahead--;
        }
        next.rows().follow(lines);
        given = 0;
        piece = Optional.of(next);
        return !next.isEmpty();
    }

    private static ExecutorService start() {
        return Executors.newFixedThreadPool(THREADS, task -> {
            Thread daemon = new Thread(task, "read-ahead");
            daemon.setDaemon(true);
            return daemon;
        });
    }

    private void readAhead() {
        CompletableFuture<PlainPiece> done = new CompletableFuture<>();
        try {
            PlainPiece next;
            synchronized (cutter) {
                order.add(done);
                next = cutter.cut(piece());
            }
            next.read();
            done.complete(next);
        } catch (RuntimeException | Error fault) {
            done.completeExceptionally(fault);
        }
    }

    private PlainPiece piece() {
        PlainPiece used = unused.poll();
        return used == null ? new PlainPiece(head, firstIsText, rows.piece(), PIECE_BYTES) : used;
    }

    private static PlainPiece done(BlockingQueue<CompletableFuture<PlainPiece>> order) {
        try {
            return order.take().get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new CancellationException("stopped while reading a log");
        } catch (ExecutionException fault) {
            throw new IllegalStateException("reading a log went wrong", fault.getCause());
        }
    }

    /** The bytes that were not read, from the start of a line on. */
    InputStream rest() {
        ByteArrayOutputStream cut = new ByteArrayOutputStream();
        piece.ifPresent(now -> cut.writeBytes(now.rest()));
        for (; ahead > 0; ahead--) {
            cut.writeBytes(done(order).whole());
        }
        return new SequenceInputStream(new ByteArrayInputStream(cut.toByteArray()), cutter.rest());
    }

    void close() throws IOException {
        threads.ifPresent(ExecutorService::shutdown);
        cutter.close();
    }
}
