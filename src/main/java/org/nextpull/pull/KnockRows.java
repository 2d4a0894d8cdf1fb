package org.nextpull.pull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Samples;

/**
 * The rows in which knock was counted under load and which no pull has taken yet, whether the engine was at full load or not. A pull takes
 * those of its stretch, what comes just before and after it among them; the rest are a stretch of their own. Changes as rows come.
 */
final class KnockRows {
    /** The load must be away for this long before another stretch begins. */
    private static final double APART_S = 1;

    private static final int MOST_ROWS = 20_000;
    private static final Samples NONE = Samples.builder(List.of()).build();

    private final KnockLoad load = new KnockLoad();
    private final OptionalDouble mostLevel;
    private KnockReading reading = KnockReading.of(NONE);
    private Samples block = NONE;
    private Optional<Samples.Builder> rows = Optional.empty();
    private double loadedS = Double.NEGATIVE_INFINITY;

    KnockRows(OptionalDouble mostLevel) {
        this.mostLevel = mostLevel;
    }

    void see(RowRef ref) {
        if (!ref.samples().equals(block)) {
            block = ref.samples();
            reading = KnockReading.of(block);
        }
        if (!load.isLoaded(block, ref.row())) {
            return;
        }
        loadedS = ref.timeS();
        if (reading.knocks(ref.row(), mostLevel) > 0) {
            Samples.Builder builder = rows.orElseGet(() -> Samples.builder(block.channels()));
            builder.appendRow(block, ref.row());
            rows = Optional.of(builder);
        }
    }

    /** Whether knock was counted in a stretch that is over at that time, or has grown beyond all measure. */
    boolean isOver(double timeS) {
        return rows.filter(builder -> timeS - loadedS > APART_S || builder.rows() >= MOST_ROWS)
                .isPresent();
    }

    /** The rows so far, which are forgotten. */
    Optional<Samples> take() {
        Optional<Samples> taken = rows.map(Samples.Builder::build);
        rows = Optional.empty();
        return taken;
    }

    /** Candidates of one stretch with the rows so far, each row with the candidate next to it. */
    List<Candidate> among(List<Candidate> candidates) {
        if (rows.isEmpty() || candidates.isEmpty()) {
            return candidates;
        }
        Samples all = rows.get().build();
        List<Candidate> heard = new ArrayList<>();
        for (Candidate candidate : candidates) {
            Samples.Builder own = Samples.builder(all.channels());
            for (int row = 0; row < all.rows(); row++) {
                if (nearest(candidates, all.line(row)) == candidate.number()) {
                    own.appendRow(all, row);
                }
            }
            heard.add(candidate.withKnock(own.build()));
        }
        return heard;
    }

    private static int nearest(List<Candidate> candidates, long line) {
        int nearest = 0;
        long least = Long.MAX_VALUE;
        for (Candidate candidate : candidates) {
            long away = Math.max(0, Math.max(candidate.firstLine() - line, line - candidate.lastLine()));
            if (away < least) {
                least = away;
                nearest = candidate.number();
            }
        }
        return nearest;
    }
}
