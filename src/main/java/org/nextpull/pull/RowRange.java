package org.nextpull.pull;

/**
 * Rows of samples.
 *
 * @param first first row, from 0
 * @param end one past the last
 */
public record RowRange(int first, int end) {
    /**
     * Accepts an empty range, whose end is its first row.
     *
     * @throws IllegalArgumentException when the first row is negative or the end lies before it
     */
    public RowRange {
        if (first < 0 || end < first) {
            throw new IllegalArgumentException("not a range of rows: " + first + " to " + end);
        }
    }

    /** How many rows, 0 for an empty range. */
    public int rows() {
        return end - first;
    }
}
