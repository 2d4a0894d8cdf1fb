package org.nextpull.channel;

/**
 * A piece of a recording, in order, small enough that a log of any length fits in a small heap.
 *
 * @param samples at most {@link #MOST_ROWS} rows
 */
public record Block(Samples samples) {
    public static final int MOST_ROWS = 4096;

    /**
     * Accepts no rows at all up to {@link #MOST_ROWS}.
     *
     * @throws IllegalArgumentException when there are more
     */
    public Block {
        if (samples.rows() > MOST_ROWS) {
            throw new IllegalArgumentException("a block holds at most " + MOST_ROWS + " rows: " + samples.rows());
        }
    }
}
