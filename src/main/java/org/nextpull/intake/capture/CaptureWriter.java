package org.nextpull.intake.capture;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32C;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.SessionClock;

/**
 * Writes what arrives at one source, each arrival handed to the operating system before {@link #received} returns: ending the program
 * by force loses nothing, and a power cut what came after the last {@link #sync}. Never throws because of the disk: what cannot be
 * written is held in memory and said, and written once the disk takes it again, tried each second.
 *
 * <p>A file that exists is continued. Safe for several threads; {@link #sync} does not hold up the others.
 */
public final class CaptureWriter implements AutoCloseable {
    private static final long RETRY_NS = 1_000_000_000;

    private final Path file;
    private final String source;
    private final SessionClock clock;
    private final Store.Opener opener;
    private final Backlog backlog;
    private final List<Finding> news = new ArrayList<>();
    private Optional<Store> store = Optional.empty();
    private RecordEncoder encoder = new RecordEncoder(0);
    private boolean failing;
    private boolean closed;
    private long triedNs;

    private CaptureWriter(Path file, String source, SessionClock clock, Store.Opener opener, Backlog backlog) {
        this.file = file;
        this.source = source;
        this.clock = clock;
        this.opener = opener;
        this.backlog = backlog;
    }

    /** Opens a capture, or begins to hold what arrives in memory where that cannot be done. */
    public static CaptureWriter open(Path file, String source, SessionClock clock) {
        int newId = newId(source, clock.now());
        return open(file, source, clock, () -> FileStore.open(file, newId), new Backlog());
    }

    static CaptureWriter open(Path file, String source, SessionClock clock, Store.Opener opener, Backlog backlog) {
        CaptureWriter writer = new CaptureWriter(file, source, clock, opener, backlog);
        writer.tryToSave(clock.now());
        return writer;
    }

    public Path file() {
        return file;
    }

    /** Writes an arrival. */
    public synchronized void received(Arrival arrival) {
        if (closed) {
            throw new IllegalStateException("the capture is closed: " + file);
        }
        if (arrival instanceof Arrival.Trouble) {
            return;
        }
        backlog.add(arrival);
        if (!failing || arrival.at().sessionNs() - triedNs >= RETRY_NS) {
            tryToSave(arrival.at());
        }
    }

    /** To be called about each second: sees whether the file is still there, and tries again what could not be written. */
    public synchronized void tick() {
        if (closed) {
            return;
        }
        if (store.isPresent() && !store.get().isThere()) {
            failed(new FileSystemException(file.toString(), null, "it was deleted or moved away"));
        }
        if (failing) {
            tryToSave(clock.now());
        }
    }

    /** Returns once everything that was written is on the disk itself. */
    void sync() {
        Optional<Store> current;
        synchronized (this) {
            current = closed ? Optional.empty() : store;
        }
        if (current.isEmpty()) {
            return;
        }
        try {
            current.get().force();
        } catch (IOException e) {
            synchronized (this) {
                if (!closed && store.equals(current)) {
                    failed(e);
                }
            }
        }
    }

    /** What is to be said since this was asked last. */
    public synchronized List<Finding> news() {
        List<Finding> result = List.copyOf(news);
        news.clear();
        return result;
    }

    /** Marks the end of the session, syncs and closes. */
    @Override
    public synchronized void close() {
        if (closed) {
            return;
        }
        tryToSave(clock.now());
        closed = true;
        if (store.isEmpty()) {
            return;
        }
        try (Store last = store.get()) {
            last.append(encoder.ended(clock.now()));
            last.force();
        } catch (IOException e) {
            failed(e);
        }
    }

    private void tryToSave(ArrivalTime now) {
        triedNs = now.sessionNs();
        try {
            Store open = store.isPresent() ? store.get() : reopen(now);
            for (Optional<ByteBuffer> next = backlog.first(encoder); next.isPresent(); next = backlog.first(encoder)) {
                open.append(next.get());
                backlog.removeFirst();
            }
            if (failing) {
                failing = false;
                news.add(Finding.note(FindingCode.CAPTURE_SAVES_AGAIN, place(), Detail.of("bytes", (double)
                        backlog.takeLostBytes())));
            }
        } catch (IOException e) {
            failed(e);
        }
    }

    private Store reopen(ArrivalTime now) throws IOException {
        Store.Opened opened = opener.open();
        encoder = new RecordEncoder(opened.fileId());
        try {
            opened.store().append(encoder.started(source, now));
        } catch (IOException e) {
            opened.store().close();
            throw e;
        }
        store = Optional.of(opened.store());
        return opened.store();
    }

    private void failed(IOException e) {
        if (store.isPresent()) {
            try {
                store.get().close();
            } catch (IOException again) {
                e.addSuppressed(again);
            }
            store = Optional.empty();
        }
        if (!failing) {
            failing = true;
            news.add(Finding.error(FindingCode.CAPTURE_NOT_SAVED, place(), Detail.of("why", why(e))));
        }
    }

    private Place place() {
        return Place.inFile(file.toString());
    }

    private static String why(IOException e) {
        if (e instanceof java.nio.file.AccessDeniedException) {
            return "no right to write there";
        }
        if (e instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }

    private static int newId(String source, ArrivalTime now) {
        CRC32C crc = new CRC32C();
        crc.update(source.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        crc.update(ByteBuffer.allocate(2 * Long.BYTES)
                .putLong(now.wallMs())
                .putLong(now.sessionNs())
                .flip());
        return (int) crc.getValue();
    }

    /** A file that is only appended to. */
    interface Store extends AutoCloseable {
        /** Hands all remaining bytes to the operating system, or fails; after a failure part of them may be in the file. */
        void append(ByteBuffer bytes) throws IOException;

        /** Returns once what was appended is on the disk. May be called by another thread. */
        void force() throws IOException;

        /** Whether the file can still be found under its name. */
        boolean isThere();

        @Override
        void close() throws IOException;

        /** Opens the store. */
        interface Opener {
            Opened open() throws IOException;
        }

        /**
         * A store, open at its end.
         *
         * @param fileId the id that its records carry, or shall carry
         */
        record Opened(Store store, int fileId) {}
    }
}
