package org.nextpull.pull;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;

/**
 * Gathers the rows of each stretch at full load, with a few seconds before and after. Rows of no stretch are forgotten after those
 * seconds; a stretch that grows beyond all measure is cut, so the memory is bounded.
 */
final class StretchCollector {
    private static final double BEFORE_S = 2;
    private static final int MOST_BEFORE = 4000;
    private static final int MOST_ROWS = 120_000;

    /** The load must be away for two rows and this long before the stretch is over, so that one faulty row does not cut a pull. */
    private static final double AWAY_S = 0.03;

    /** Longest hole that a stretch may have in it, s. */
    private static final double LONGEST_HOLE_S = 10;

    private final LoadGate gate;
    private final double afterS;
    private final Deque<Rows> before = new ArrayDeque<>();
    private int beforeRows;
    private @Nullable SamplesBuilder open;
    private int coreFirst;
    private double coreFirstS;
    private int coreEnd;
    private double awayS;
    private boolean over;
    /** A stretch was cut and the load has not been away since: what comes is the rest of it, and no stretch of its own. */
    private boolean restOfCut;

    private FullLoadStretch.End end = FullLoadStretch.End.UNLOADED;

    /** Rows of a block, one after the other. */
    private static final class Rows {
        private final Samples samples;
        private final Samples.Cells times;
        private int first;
        private int end;

        Rows(Samples samples, int first) {
            this.samples = samples;
            this.times = samples.cells(TimedChannel.TIME);
            this.first = first;
            this.end = first;
        }
    }

    StretchCollector(LoadGate gate, double afterS) {
        this.gate = gate;
        this.afterS = afterS;
    }

    List<FullLoadStretch> accept(TimeGuard.Placed placed, boolean otherRun) {
        List<FullLoadStretch> done = new ArrayList<>(0);
        if (otherRun || placed.step() == TimeGuard.Step.NEW_RUN) {
            close(FullLoadStretch.End.NEW_RUN, done);
            restOfCut = false;
            forget();
        } else if (placed.apartS() > LONGEST_HOLE_S) {
            close(FullLoadStretch.End.HOLE, done);
            restOfCut = false;
            forget();
        }
        TimeGuard.RowRef ref = placed.ref();
        boolean loaded = gate.isLoaded(ref.samples(), ref.row());
        if (open != null) {
            continueWith(ref, loaded, done);
        }
        restOfCut = restOfCut && loaded;
        if (open == null && loaded && !restOfCut) {
            begin(ref);
        }
        remember(ref.samples(), ref.row(), ref.row() + 1);
        return done;
    }

    /** The first row from there on, at the latest a last one, that has to be looked at by itself: with those before it nothing begins or ends. */
    int steadyUntil(Samples samples, Samples.Cells times, int first, int most) {
        if (restOfCut || !(gate instanceof LoadGate.ThrottleGate throttle)) {
            return first;
        }
        int end = most;
        if (open != null && over) {
            end = first;
            while (end < most && times.isPresent(end) && times.value(end) - awayS <= afterS) {
                end++;
            }
        } else if (open != null) {
            end = Math.min(end, open.rows() == coreEnd ? first + MOST_ROWS - 1 - (coreEnd - coreFirst) : first);
        }
        return throttle.isOpen() == (open != null && !over) ? throttle.steadyUntil(samples, first, end) : first;
    }

    /** Takes rows that are steady and follow on. */
    void pass(Samples samples, int first, int end) {
        ((LoadGate.ThrottleGate) gate).pass(samples, first, end);
        if (open != null) {
            open.appendRows(samples, first, end);
            coreEnd = over ? coreEnd : open.rows();
        }
        remember(samples, first, end);
    }

    List<FullLoadStretch> finish() {
        List<FullLoadStretch> done = new ArrayList<>(1);
        close(FullLoadStretch.End.LOG_ENDED, done);
        forget();
        return done;
    }

    /** Data is missing from here on: what is at full load is not whole. */
    List<FullLoadStretch> cut() {
        List<FullLoadStretch> done = new ArrayList<>(1);
        restOfCut |= open != null && !over;
        close(FullLoadStretch.End.CUT, done);
        forget();
        return done;
    }

    /** The stretch that is over but not given yet, since rows after it may still tell when its lambda was measured. */
    Optional<FullLoadStretch> over() {
        SamplesBuilder builder = open;
        return builder == null || !over
                ? Optional.empty()
                : Optional.of(new FullLoadStretch(builder.build(), new RowRange(coreFirst, coreEnd), end));
    }

    /** Whether no stretch is open, nor one that is over but not given yet. */
    boolean isIdle() {
        return open == null;
    }

    boolean isOver() {
        return open != null && over;
    }

    /** Time of the first row of the stretch that is at full load now, s; empty when none is. */
    OptionalDouble openSinceS() {
        return open == null || over ? OptionalDouble.empty() : OptionalDouble.of(coreFirstS);
    }

    int heldRows() {
        return beforeRows + (open == null ? 0 : open.rows());
    }

    private void begin(TimeGuard.RowRef ref) {
        SamplesBuilder builder = Samples.builder(ref.samples().channels());
        for (Rows earlier : before) {
            builder.appendRows(earlier.samples, earlier.first, earlier.end);
        }
        coreFirst = builder.rows();
        coreFirstS = ref.timeS();
        builder.appendRow(ref.samples(), ref.row());
        coreEnd = builder.rows();
        over = false;
        open = builder;
    }

    private void continueWith(TimeGuard.RowRef ref, boolean loaded, List<FullLoadStretch> done) {
        SamplesBuilder builder = open;
        if (builder == null) {
            return;
        }
        if (over) {
            if (loaded || ref.timeS() - awayS > afterS) {
                close(end, done);
            } else {
                builder.appendRow(ref.samples(), ref.row());
            }
            return;
        }
        if (!loaded && builder.rows() == coreEnd) {
            awayS = ref.timeS();
        }
        builder.appendRow(ref.samples(), ref.row());
        if (loaded) {
            coreEnd = builder.rows();
            if (coreEnd - coreFirst >= MOST_ROWS) {
                close(FullLoadStretch.End.TOO_LONG, done);
            }
        } else if (builder.rows() - coreEnd >= 2 && ref.timeS() - awayS >= AWAY_S) {
            over = true;
            end = FullLoadStretch.End.UNLOADED;
        }
    }

    private void close(FullLoadStretch.End why, List<FullLoadStretch> done) {
        SamplesBuilder builder = open;
        if (builder != null) {
            boolean unloaded = over || (builder.rows() > coreEnd && why != FullLoadStretch.End.CUT);
            done.add(new FullLoadStretch(
                    builder.take(), new RowRange(coreFirst, coreEnd), unloaded ? FullLoadStretch.End.UNLOADED : why));
            open = null;
            over = false;
        }
    }

    private void remember(Samples samples, int first, int end) {
        Rows last = before.peekLast();
        if (last == null || last.samples != samples || last.end != first) {
            last = new Rows(samples, first);
            before.addLast(last);
        }
        last.end = end;
        beforeRows += end - first;
        double lastS = last.times.value(end - 1);
        Rows oldest = before.getFirst();
        while (beforeRows > MOST_BEFORE || lastS - oldest.times.value(oldest.first) > BEFORE_S) {
            beforeRows--;
            if (++oldest.first == oldest.end) {
                before.removeFirst();
                oldest = before.getFirst();
            }
        }
    }

    private void forget() {
        before.clear();
        beforeRows = 0;
        gate.restart();
    }
}
