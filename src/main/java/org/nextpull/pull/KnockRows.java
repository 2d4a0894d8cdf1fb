package org.nextpull.pull;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;

/**
 * The rows in which knock was counted under load and which no pull has taken yet, whether the engine was at full load or not. A pull takes
 * those of its stretch, what comes just before and after it among them; the rest are a stretch of their own. Their lambda is the richest
 * that a sensor shows in the time in which it answers, for it still shows the mixture of before; unknown where the load went before that.
 * Changes as rows come.
 */
final class KnockRows {
    /** The load must be away for this long before another stretch begins. */
    private static final double APART_S = 1;

    private static final int MOST_ROWS = 20_000;

    /** When a lambda sensor begins to answer and has answered, where the plan does not say, s. Common practice, no source. */
    private static final double DELAY_S = 0.5;

    private static final double ANSWERED_S = 1;

    static final Samples NONE = Samples.builder(List.of()).build();

    private final KnockLoad load = new KnockLoad();
    private final OptionalDouble mostLevel;
    private final double delayS;
    private final List<Heard> heard = new ArrayList<>();
    private KnockReading reading = KnockReading.of(NONE);
    private Samples block = NONE;
    private Optional<SamplesBuilder> rows = Optional.empty();
    private double loadedS = Double.NEGATIVE_INFINITY;

    /** When knock was heard, and what each lambda sensor showed after it. */
    private static final class Heard {
        private final double timeS;
        private final Map<Channel, Double> richest = new HashMap<>();
        private double untilS;

        Heard(double timeS) {
            this.timeS = timeS;
        }
    }

    KnockRows(PullRules rules) {
        this.mostLevel = rules.knockLevel();
        this.delayS = rules.lambdaDelayS().orElse(DELAY_S);
    }

    void see(TimeGuard.RowRef ref) {
        look(ref.samples());
        if (!load.isLoaded(block, ref.row())) {
            return;
        }
        loadedS = ref.timeS();
        if (reading.knocks(ref.row(), mostLevel) > 0) {
            SamplesBuilder builder = rows.orElseGet(() -> Samples.builder(block.channels()));
            builder.appendRow(block, ref.row());
            rows = Optional.of(builder);
            heard.add(new Heard(ref.timeS()));
        }
        answer(ref);
    }

    private void look(Samples samples) {
        if (!samples.equals(block)) {
            block = samples;
            reading = KnockReading.of(block);
        }
    }

    /** The first row from there on that has to be seen, at the latest an end: in those before it is no knock, and none of before waits. */
    int quietUntil(Samples samples, int first, int end) {
        look(samples);
        return isEmpty() && heard.isEmpty() ? reading.silentUntil(first, end, mostLevel) : first;
    }

    /** Takes rows that are quiet. */
    void pass(Samples samples, int first, int end) {
        load.see(samples, first, end);
    }

    private void answer(TimeGuard.RowRef ref) {
        for (int index = heard.size() - 1; index >= 0; index--) {
            Heard knock = heard.get(index);
            if (ref.timeS() - knock.timeS > delayS + ANSWERED_S) {
                return;
            }
            knock.untilS = ref.timeS();
            for (Channel channel : block.channels()) {
                OptionalDouble shown =
                        channel.role() == Role.LAMBDA ? block.find(channel, ref.row()) : OptionalDouble.empty();
                if (shown.isPresent()) {
                    knock.richest.merge(channel, shown.getAsDouble(), Math::min);
                }
            }
        }
    }

    /** Whether there is none. */
    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Whether knock was counted in a stretch that is over at that time, or has grown beyond all measure. */
    boolean isOver(double timeS) {
        return rows.filter(builder -> timeS - loadedS > APART_S || builder.rows() >= MOST_ROWS)
                .isPresent();
    }

    /** The rows so far, which are forgotten. */
    Optional<Samples> take() {
        Optional<Samples> taken = rows.map(this::answered);
        rows = Optional.empty();
        heard.clear();
        return taken;
    }

    private Samples answered(SamplesBuilder builder) {
        Samples logged = builder.build();
        SamplesBuilder answered = Samples.builder(logged.channels());
        for (int row = 0; row < logged.rows(); row++) {
            Heard knock = heard.get(row);
            answered.row(logged.line(row), logged.label(row), logged.fuel(row));
            for (Channel channel : logged.channels()) {
                if (channel.role() != Role.LAMBDA) {
                    logged.find(channel, row).ifPresent(value -> answered.set(channel, value));
                } else if (knock.untilS - knock.timeS >= delayS && knock.richest.containsKey(channel)) {
                    answered.set(channel, knock.richest.get(channel));
                }
            }
        }
        return answered.build();
    }

    /** Candidates of one stretch with the rows so far, each row with the candidate next to it. */
    List<Candidate> among(List<Candidate> candidates) {
        if (rows.isEmpty() || candidates.isEmpty()) {
            return candidates;
        }
        Samples all = answered(rows.get());
        List<Candidate> heard = new ArrayList<>();
        for (Candidate candidate : candidates) {
            SamplesBuilder own = Samples.builder(all.channels());
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
