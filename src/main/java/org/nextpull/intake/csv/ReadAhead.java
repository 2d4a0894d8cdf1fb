package org.nextpull.intake.csv;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.RowCount;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Finding;

/**
 * Reads the next block of a log on another thread while this one is looked at. Blocks are cut by their size alone, so what comes out is that
 * of the reader behind it; a log that is no longer than a block is read without a thread.
 */
final class ReadAhead implements BlockReader {
    private final CsvBlockReader reader;
    private Optional<ExecutorService> thread = Optional.empty();
    private Optional<Future<Step>> ahead = Optional.empty();
    private RowCount rowCount = new RowCount(0, 0);
    private List<Finding> findings;

    /** A block, and how the reader stood behind it. */
    private record Step(Optional<Block> block, RowCount rowCount, List<Finding> findings) {}

    ReadAhead(CsvBlockReader reader) {
        this.reader = reader;
        this.findings = reader.findings();
    }

    @Override
    public SourceDescription description() {
        return reader.description();
    }

    @Override
    public Optional<Block> next() {
        Step step = ahead.map(ReadAhead::done).orElseGet(this::step);
        rowCount = step.rowCount();
        findings = step.findings();
        boolean isFull = step.block()
                .filter(block -> block.samples().rows() == Block.MOST_ROWS)
                .isPresent();
        ahead = isFull ? Optional.of(executor().submit(this::step)) : Optional.empty();
        return step.block();
    }

    private Step step() {
        Optional<Block> block = reader.next();
        return new Step(block, reader.rowCount(), reader.findings());
    }

    private ExecutorService executor() {
        ExecutorService started = thread.orElseGet(() -> Executors.newSingleThreadExecutor(task -> {
            Thread daemon = new Thread(task, "read-ahead");
            daemon.setDaemon(true);
            return daemon;
        }));
        thread = Optional.of(started);
        return started;
    }

    private static Step done(Future<Step> future) {
        try {
            return future.get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new CancellationException("stopped while reading a log");
        } catch (ExecutionException fault) {
            throw new IllegalStateException("reading a log went wrong", fault.getCause());
        }
    }

    @Override
    public List<Finding> findings() {
        return findings;
    }

    @Override
    public RowCount rowCount() {
        return rowCount;
    }

    @Override
    public void close() throws IOException {
        try {
            ahead.ifPresent(ReadAhead::done);
        } finally {
            thread.ifPresent(ExecutorService::shutdown);
            reader.close();
        }
    }
}
