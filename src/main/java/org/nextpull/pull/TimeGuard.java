package org.nextpull.pull;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nextpull.channel.Samples;

/**
 * Watches the time of the rows. A row whose time does not follow on is held until the next one shows whether it alone is wrong, and is
 * then left out, or a new run or a hole begins with it. What it gives does not depend on how the rows were cut into blocks.
 */
final class TimeGuard {
    /** A hole is at least this long, s, and at least so many usual distances of rows. */
    private static final double HOLE_S = 1;

    private static final double HOLE_ROWS = 8;

    /** Share by which the usual distance follows each new one; it so settles at the median. */
    private static final double FOLLOW = 0.05;

    private double lastS = Double.NEGATIVE_INFINITY;
    private double usualS = HOLE_S;
    private boolean started;
    private @Nullable RowRef held;
    private long leftOut;
    private final List<Placed> placed = new ArrayList<>(2);

    /** How a row follows the one before. */
    enum Step {
        FOLLOWS,
        AFTER_HOLE,
        /** Time starts again: another run. */
        NEW_RUN
    }

    /**
     * A row in its place.
     *
     * @param ref the row
     * @param step how it follows
     * @param apartS time since the row before, s; 0 for the first of a run
     */
    record Placed(RowRef ref, Step step, double apartS) {}

    /** The rows that have their place now, in order; the list is good until the next call. */
    List<Placed> offer(RowRef ref) {
        placed.clear();
        RowRef suspect = held;
        held = null;
        if (suspect != null) {
            boolean fits = ref.timeS() >= lastS && ref.timeS() - lastS <= holeS();
            boolean suspectAlone = fits && (suspect.timeS() < lastS || suspect.timeS() > ref.timeS());
            if (suspectAlone) {
                leftOut++;
            } else {
                placed.add(take(suspect));
            }
        }
        double apart = ref.timeS() - lastS;
        if (started && (apart < 0 || apart > holeS())) {
            held = ref;
        } else {
            placed.add(take(ref));
        }
        return placed;
    }

    /** Takes rows one after the other, as long as each follows on at once, without a hole; the first one that does not, or the end. */
    int pass(Samples.Cells times, int first, int end) {
        int row = first;
        while (row < end && started && held == null && times.isPresent(row) && isNext(times.value(row))) {
            follow(times.value(row) - lastS);
            lastS = times.value(row++);
        }
        return row;
    }

    private boolean isNext(double timeS) {
        return timeS >= lastS && timeS - lastS <= HOLE_S;
    }

    /** Rows that were left out so far. */
    long leftOut() {
        return leftOut;
    }

    private Placed take(RowRef ref) {
        double apart = started ? ref.timeS() - lastS : 0;
        Step step = apart < 0 ? Step.NEW_RUN : apart > holeS() ? Step.AFTER_HOLE : Step.FOLLOWS;
        lastS = ref.timeS();
        if (started && step == Step.FOLLOWS) {
            follow(apart);
        }
        started = true;
        return new Placed(ref, step, step == Step.NEW_RUN ? 0 : apart);
    }

    private void follow(double apart) {
        if (apart > 0) {
            usualS *= apart > usualS ? 1 + FOLLOW : 1 - FOLLOW;
        }
    }

    private double holeS() {
        return Math.max(HOLE_S, HOLE_ROWS * usualS);
    }

    /** One row of some samples that has a time, in s. */
    record RowRef(Samples samples, int row, double timeS) {}
}
