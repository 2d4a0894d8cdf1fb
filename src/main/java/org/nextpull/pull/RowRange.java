package org.nextpull.pull;

/**
 * Rows of samples.
 *
 * @param first first row, from 0
 * @param end one past the last
 */
public record RowRange(int first, int end) {
    public RowRange {
        if (first < 0 || end < first) {
            throw new IllegalArgumentException("not a range of rows: " + first + " to " + end);
        }
    }

    public int rows() {
        return end - first;
    }
}
