package org.nextpull.channel;

import org.jspecify.annotations.Nullable;

/**
 * The latest value of a channel over the rows of blocks: one that is logged more slowly than the rows keeps it. Changes as rows come; not
 * for use by several threads.
 */
public final class HeldValue {
    private final Channel channel;
    private @Nullable Samples block;
    private Samples.Cells cells = Samples.Cells.NONE;
    private boolean known;
    private double value;

    public HeldValue(Channel channel) {
        this.channel = channel;
    }

    /** Looks at the next row; whether the channel has a value in it. */
    public boolean see(Samples samples, int row) {
        look(samples);
        if (!cells.isPresent(row)) {
            return false;
        }
        known = true;
        value = cells.value(row);
        return true;
    }

    /** Looks at the next rows together. */
    public void see(Samples samples, int first, int end) {
        look(samples);
        int row = cells == Samples.Cells.NONE ? first - 1 : end - 1;
        while (row >= first && !see(samples, row)) {
            row--;
        }
    }

    private void look(Samples samples) {
        if (samples != block) {
            block = samples;
            cells = samples.cells(channel);
        }
    }

    /** Whether it had a value in any row so far. */
    public boolean isKnown() {
        return known;
    }

    /** The latest value in the project's unit of its quantity; another one while there is none. */
    public double orElse(double other) {
        return known ? value : other;
    }
}
