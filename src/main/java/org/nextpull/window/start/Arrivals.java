package org.nextpull.window.start;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.nextpull.channel.LogHints;
import org.nextpull.intake.folder.FolderMemory;
import org.nextpull.intake.folder.FolderSettings;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalQueue;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.SessionClock;
import org.nextpull.live.LiveIntake;
import org.nextpull.report.Shown;
import org.tinylog.Logger;

/** Looks at ports or a folder on threads of its own, until it is closed, and tells five times a second what arrives. Records nothing. */
final class Arrivals implements AutoCloseable {
    private static final long PERIOD_MS = 200;

    private final ArrivalQueue queue = new ArrivalQueue(SessionClock.system());
    private Optional<LiveIntake.Readers> readers = Optional.empty();
    private final ArrivalsChain chain;
    private final Consumer<Page> watcher;
    private final Thread thread;
    private volatile boolean closed;
    private volatile Shown shown;

    private Arrivals(LiveIntake intake, LogHints hints, Shown shown, Consumer<Page> watcher) {
        this.shown = shown;
        this.chain = new ArrivalsChain(intake.sources(), hints, shown);
        this.watcher = watcher;
        this.thread = new Thread(this::run, "nextpull-window-arrivals");
        thread.setDaemon(true);
    }

    /**
     * Starts to look. Opening a port may take long, so this is not for the event thread.
     *
     * @param watcher is told on the thread of this object
     */
    static Arrivals start(LiveIntake intake, LogHints hints, Port.Opener opener, Shown shown, Consumer<Page> watcher) {
        Arrivals arrivals = new Arrivals(intake, hints, shown, watcher);
        if (intake instanceof LiveIntake.Folder folder) {
            arrivals.newestFile(folder.folder().folder());
        }
        arrivals.readers = Optional.of(intake.read(opener, arrivals.queue, new FolderMemory()));
        arrivals.thread.start();
        return arrivals;
    }

    /** The units that people read from now on. */
    void units(Shown newShown) {
        shown = newShown;
    }

    private void run() {
        try {
            long shownNs = System.nanoTime() - PERIOD_MS * 1_000_000;
            while (!closed) {
                Optional<Arrival> arrival = queue.take(PERIOD_MS / 4);
                arrival.ifPresentOrElse(chain::accept, () -> chain.tick(queue.now()));
                if (System.nanoTime() - shownNs >= PERIOD_MS * 1_000_000) {
                    shownNs = System.nanoTime();
                    chain.units(shown);
                    watcher.accept(chain.page(queue.now()));
                }
            }
        } catch (InterruptedException ended) {
            Logger.debug("no longer looked at what arrives");
        } catch (RuntimeException fault) {
            Logger.error(fault, "what arrives cannot be shown");
        }
    }

    /** A folder that is quiet shows what its newest log looks like. */
    private void newestFile(Path folder) {
        try {
            newestFile(queue, folder);
        } catch (IOException unreadable) {
            Logger.debug(unreadable, "the newest log could not be looked at; the watch of the folder says why");
        }
    }

    /** Ends the looking and gives the ports back; waits for that. */
    @Override
    public void close() {
        closed = true;
        thread.interrupt();
        readers.ifPresent(LiveIntake.Readers::close);
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Puts the beginning of the log that was written last into the queue as if it had just arrived. */
    private static void newestFile(ArrivalQueue queue, Path folder) throws IOException {
        Optional<Path> newest = newest(folder);
        if (newest.isPresent()) {
            String source = folder.toString();
            queue.connected(source);
            queue.fromFile(source, String.valueOf(newest.get().getFileName()), 0);
            try (InputStream in = Files.newInputStream(newest.get())) {
                byte[] beginning = in.readNBytes(Chunk.MOST_BYTES);
                queue.bytes(source, beginning, beginning.length);
            }
        }
    }

    private static Optional<Path> newest(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> FolderSettings.isLog(String.valueOf(file.getFileName())))
                    .max(Comparator.comparingLong(file -> file.toFile().lastModified()));
        }
    }

    /**
     * What arrives, before anything is recorded.
     *
     * @param sources the ports, or the folder
     * @param said what the sources had to say, the latest last
     */
    record Page(List<Source> sources, List<FormPage.Said> said) {
        Page {
            sources = List.copyOf(sources);
            said = List.copyOf(said);
        }

        static Page none() {
            return new Page(List.of(), List.of());
        }

        /**
         * One source.
         *
         * @param name port or folder
         * @param isGood whether values arrive
         * @param state how it is doing, a sentence
         * @param raw the last line as it came
         * @param columns how its columns are understood
         */
        record Source(String name, boolean isGood, String state, String raw, List<Column> columns) {
            Source {
                columns = List.copyOf(columns);
            }
        }

        /**
         * One column.
         *
         * @param header as it was sent
         * @param meaning what it is taken for; blank where it is not understood
         * @param unit unit that it was sent in
         * @param value its latest value in the units that people read; blank before there is one
         */
        record Column(String header, String meaning, String unit, String value) {
            boolean isUnderstood() {
                return !meaning.isEmpty();
            }
        }

        /** Whether values that are understood arrive from every source. */
        boolean isGood() {
            return !sources.isEmpty() && sources.stream().allMatch(Source::isGood);
        }
    }
}
