package org.nextpull.app;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.ByteSource;
import org.nextpull.intake.SampleMemory;
import org.nextpull.intake.SourceFinder;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.Aside;
import org.nextpull.pull.PullRules;
import org.nextpull.session.LogReading;
import org.nextpull.session.SourcePulls;

/**
 * Looks through any number of files, several at once, and gives what is in each in the order of their names. How many are read at once
 * depends on the memory and the processors; what comes out does not depend on the processors. Nothing is kept of a file but the figures of
 * its pulls.
 */
public final class LogArchive {
    /** Memory from which one more file may be read at the same time, bytes. */
    private static final long ROOM = 48L << 20;

    private static final int MOST_AT_ONCE = 8;

    private final SourceFinder.Found found;
    private final LogFiles reader;
    private final PullRules rules;
    private final int atOnce = (int) Math.max(1, Math.min(MOST_AT_ONCE, SampleMemory.most() / ROOM));
    private final Progress progress;

    /**
     * Finds the files.
     *
     * @param names files, folders and globs
     */
    public LogArchive(SweepPlan plan, List<String> names) {
        this.found = SourceFinder.find(names);
        this.reader = new LogFiles(plan.log().hints());
        this.rules = PullRules.of(plan);
        this.progress = new Progress(
                found.sources().size(),
                found.sources().stream().mapToLong(ByteSource::size).sum());
    }

    /**
     * What is in a file.
     *
     * @param log the pulls of a log, without their rows
     * @param table a table of results, which a file is where it is no log
     * @param findings why it is neither, and what was said aloud about the choice
     */
    public record Looked(Optional<SourcePulls> log, Optional<Input.Table> table, List<Finding> findings) {
        public Looked {
            findings = List.copyOf(findings);
        }

        /** Whether the file could not be used. */
        boolean isFailed() {
            return findings.stream().anyMatch(Finding::isError)
                    || log.filter(pulls -> pulls.findings().stream().anyMatch(Finding::isError))
                            .isPresent();
        }
    }

    /** How far it is; may be asked by any thread. */
    public Progress progress() {
        return progress;
    }

    /**
     * Looks through the files.
     *
     * @param each takes what is in each, in order, on the caller's thread
     * @return what was found on the names and on files that could not be used, and how many those were
     */
    public List<Finding> read(Consumer<Looked> each) {
        List<Finding> findings = new ArrayList<>(found.findings());
        int failed = 0;
        int threads = Math.min(atOnce, Runtime.getRuntime().availableProcessors());
        ExecutorService pool = Executors.newFixedThreadPool(threads, task -> thread(task, "log"));
        ExecutorService judges = Executors.newFixedThreadPool(threads, task -> thread(task, "pulls"));
        Aside aside = work -> {
            Future<?> started = judges.submit(work);
            return () -> done(started);
        };
        try {
            Deque<Future<Looked>> ahead = new ArrayDeque<>();
            for (ByteSource source : found.sources()) {
                ahead.add(pool.submit(() -> look(source, aside)));
                if (ahead.size() > 2 * threads) {
                    failed += give(ahead.remove(), each, findings);
                }
            }
            while (!ahead.isEmpty()) {
                failed += give(ahead.remove(), each, findings);
            }
        } finally {
            pool.shutdownNow();
            judges.shutdownNow();
        }
        if (failed > 0 && found.sources().size() > 1) {
            findings.add(Finding.error(
                    FindingCode.FILES_NOT_ALL_USABLE,
                    Place.nowhere(),
                    Detail.of("failed", failed),
                    Detail.of("all", found.sources().size())));
        }
        return findings;
    }

    private static Thread thread(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }

    private static int give(Future<Looked> future, Consumer<Looked> each, List<Finding> findings) {
        Looked looked = done(future);
        findings.addAll(looked.findings());
        each.accept(looked);
        return looked.isFailed() ? 1 : 0;
    }

    private static <T> T done(Future<T> future) {
        try {
            return future.get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new CancellationException("stopped while reading logs");
        } catch (ExecutionException fault) {
            throw new IllegalStateException("reading a log went wrong", fault.getCause());
        }
    }

    private Looked look(ByteSource source, Aside aside) {
        Counted counted = new Counted(source, progress.file(source.size()));
        Outcome<Input> input = reader.read(counted);
        Optional<SourcePulls> log = input.value()
                .filter(Input.Log.class::isInstance)
                .map(one -> LogReading.readFigures(
                        ((Input.Log) one).recording(), rules, SampleMemory.most() / atOnce, aside));
        counted.count().ended();
        return new Looked(
                log,
                input.value().filter(Input.Table.class::isInstance).map(Input.Table.class::cast),
                input.findings());
    }

    /** A source whose bytes are counted as they are read. */
    private record Counted(ByteSource source, Progress.File count) implements ByteSource {
        @Override
        public String name() {
            return source.name();
        }

        @Override
        public InputStream open() throws IOException {
            return new FilterInputStream(source.open()) {
                @Override
                public int read(byte[] target, int offset, int length) throws IOException {
                    int read = super.read(target, offset, length);
                    count.read(Math.max(0, read));
                    return read;
                }
            };
        }
    }

    /** How much of many files was read. Files are read by several threads and looked at by another. */
    public static final class Progress {
        private final int files;
        private final long bytes;
        private final AtomicInteger filesDone = new AtomicInteger();
        private final AtomicLong bytesRead = new AtomicLong();
        private final AtomicLong bytesDone = new AtomicLong();

        Progress(int files, long bytes) {
            this.files = files;
            this.bytes = bytes;
        }

        /** All files. */
        public int files() {
            return files;
        }

        /** Files that were read to their end. */
        public int filesDone() {
            return filesDone.get();
        }

        /** Bytes read so far, unpacked. */
        public long bytesRead() {
            return bytesRead.get();
        }

        /** How much was read of what is known to be there, 0 to 1; empty where no size is known. */
        public OptionalDouble share() {
            return bytes == 0
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Math.min(1, (double) bytesDone.get() / bytes));
        }

        /** Begins with a file of that size. */
        File file(long size) {
            return new File(size);
        }

        /** One file, read by one thread. Of a file that is read more than once, or is packed, no more counts as done than its size. */
        final class File {
            private final long size;
            private long read;

            private File(long size) {
                this.size = size;
            }

            void read(long count) {
                bytesRead.addAndGet(count);
                bytesDone.addAndGet(Math.min(count, Math.max(0, size - read)));
                read += count;
            }

            void ended() {
                bytesDone.addAndGet(Math.max(0, size - read));
                filesDone.incrementAndGet();
            }
        }
    }
}
