package org.nextpull.channel;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Finding;

/** One reading of a recording, block by block. */
public interface BlockReader extends AutoCloseable {
    /** How the source was understood; known from the start. */
    SourceDescription description();

    /**
     * The next block, or empty at the end.
     *
     * @throws IOException when the source cannot be read; blocks given before stay good
     */
    Optional<Block> next() throws IOException;

    /** What was found so far; complete once {@link #next} has returned empty. */
    List<Finding> findings();

    /** Rows read and rows skipped as broken, so far. */
    RowCount rowCount();

    @Override
    void close() throws IOException;

    /**
     * Rows of a source.
     *
     * @param good rows that became samples
     * @param bad rows that were skipped as broken
     */
    public record RowCount(long good, long bad) {}
}
