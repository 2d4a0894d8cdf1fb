package org.nextpull.response;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.plan.Limits;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.KnockReading;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** Knock of a pull: what the operator heard stands beside what a counter or a level says, and either is enough. */
final class KnockOfPull {
    private static final Channel TIME = Channel.of(Role.TIME);
    private static final Channel ADVANCE = Channel.of(Role.ADVANCE);

    /** A pull of which the channel misses more than this at a time is not measured: some 200 rpm of a quick pull, s. */
    private static final double LEAST_GAP_S = 0.25;

    /** A channel that reports slowly misses nothing; one slower than this cannot tell where knock was. */
    private static final double MOST_GAP_S = 1.5;

    private static final double USUAL_GAPS = 2.5;

    private final Candidate candidate;
    private final Samples samples;
    private final OptionalDouble mostLevel;

    private KnockOfPull(Candidate candidate, OptionalDouble mostLevel) {
        this.candidate = candidate;
        this.samples = candidate.samples();
        this.mostLevel = mostLevel;
    }

    /**
     * Knock of a candidate.
     *
     * @param alarmed whether knock sounded an alarm in it
     * @param everyRpm distance of the speeds for which levels are given
     */
    static KnockHeard of(
            Candidate candidate, Optional<AskedSetting> asked, Limits limits, boolean alarmed, int everyRpm) {
        KnockOfPull pull = new KnockOfPull(candidate, limits.knockLevel());
        List<KnockHeard.KnockAt> at = pull.at();
        double events = at.stream().mapToDouble(KnockHeard.KnockAt::events).sum();
        boolean isMeasured = pull.isMeasured();
        KnockMark counted = alarmed || events >= limits.knockEventsThatCount()
                ? KnockMark.HEARD
                : isMeasured ? KnockMark.NONE : KnockMark.NOT_MEASURED;
        KnockMark marked = asked.map(AskedSetting::knock).orElse(KnockMark.NOT_MEASURED);
        List<KnockHeard.LevelAtSpeed> levels = pull.levels(everyRpm);
        return new KnockHeard(
                counted.compareTo(marked) <= 0 ? counted : marked,
                isMeasured || events > 0 ? OptionalDouble.of(events) : OptionalDouble.empty(),
                levels.stream().mapToDouble(KnockHeard.LevelAtSpeed::level).max(),
                at,
                levels,
                List.of(),
                marked == KnockMark.NONE);
    }

    private List<KnockHeard.KnockAt> at() {
        Samples rows = candidate.knock();
        KnockReading reading = KnockReading.of(rows);
        List<KnockHeard.KnockAt> at = new ArrayList<>();
        for (int row = 0; row < rows.rows(); row++) {
            double events = reading.knocks(row, mostLevel);
            if (events > 0) {
                at.add(new KnockHeard.KnockAt(
                        candidate.speed().rpm(rows, row), advance(rows, row), lambda(rows, row), events));
            }
        }
        return at;
    }

    private static Optional<Advance> advance(Samples rows, int row) {
        OptionalDouble deg = rows.find(ADVANCE, row);
        return deg.isPresent() ? Optional.of(Advance.ofDeg(deg.getAsDouble())) : Optional.empty();
    }

    /** Within the pull, where the mixture is lined up with what was burnt; beside it as the sensor answered. */
    private Optional<Lambda> lambda(Samples rows, int row) {
        long line = rows.line(row);
        int within = IntStream.range(0, samples.rows())
                .filter(other -> samples.line(other) == line)
                .findFirst()
                .orElse(-1);
        Samples from = within < 0 ? rows : samples;
        return from.channels().stream()
                .filter(channel -> channel.role() == Role.LAMBDA)
                .flatMap(channel ->
                        from.find(channel, within < 0 ? row : within).stream().boxed())
                .filter(value -> value > 0)
                .max(Comparator.naturalOrder())
                .map(Lambda::of);
    }

    /** Whether one channel at least tells of knock all through the pull. */
    private boolean isMeasured() {
        KnockReading reading = KnockReading.of(samples);
        List<Channel> alive = reading.channels(mostLevel).stream()
                .filter(channel -> reads(reading, channel).length > 0)
                .toList();
        return !alive.isEmpty() && alive.stream().noneMatch(channel -> isAbsentInPart(reading, channel));
    }

    private int[] reads(KnockReading reading, Channel channel) {
        return IntStream.range(0, samples.rows())
                .filter(row -> reading.value(channel, row).isPresent())
                .toArray();
    }

    private boolean isAbsentInPart(KnockReading reading, Channel channel) {
        double most = Math.min(MOST_GAP_S, Math.max(LEAST_GAP_S, USUAL_GAPS * usualGapS(reads(reading, channel))));
        double gapS = 0;
        for (int row = 0; row < samples.rows(); row++) {
            double stepS = row == 0 ? 0 : stepS(row - 1, row);
            // the parts of a stepped pull lie apart
            gapS += stepS <= MOST_GAP_S ? stepS : 0;
            if (reading.value(channel, row).isPresent()) {
                gapS = 0;
            } else if (gapS > most) {
                return true;
            }
        }
        return false;
    }

    private double usualGapS(int[] reads) {
        double[] gaps = IntStream.range(1, reads.length)
                .mapToDouble(index -> stepS(reads[index - 1], reads[index]))
                .sorted()
                .toArray();
        return gaps.length == 0 ? 0 : gaps[gaps.length / 2];
    }

    private double stepS(int from, int to) {
        OptionalDouble before = samples.find(TIME, from);
        OptionalDouble after = samples.find(TIME, to);
        return before.isPresent() && after.isPresent() ? after.getAsDouble() - before.getAsDouble() : 0;
    }

    private List<KnockHeard.LevelAtSpeed> levels(int everyRpm) {
        KnockReading reading = KnockReading.of(samples);
        SortedMap<Long, Double> highest = new TreeMap<>();
        for (int row = 0; row < samples.rows(); row++) {
            OptionalDouble rpm = candidate.speed().rpm(samples, row);
            OptionalDouble level = reading.level(row);
            if (rpm.isPresent() && level.isPresent()) {
                highest.merge(Math.round(rpm.getAsDouble() / everyRpm), level.getAsDouble(), Math::max);
            }
        }
        return highest.entrySet().stream()
                .map(entry -> new KnockHeard.LevelAtSpeed(entry.getKey() * (double) everyRpm, entry.getValue()))
                .toList();
    }
}
