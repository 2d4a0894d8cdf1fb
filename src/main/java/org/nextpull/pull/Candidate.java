package org.nextpull.pull;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Place;
import org.nextpull.finding.WrittenId;
import org.nextpull.unit.SpeedBand;

/**
 * A stretch at full load that is a pull, or would be one but for its refusal.
 *
 * @param number number within its source, from 1; refused candidates are counted too
 * @param source name of the recording
 * @param lines first and last line of the source that it uses
 * @param kind what it is
 * @param fromRpm speed at its start, rpm along the axis of {@code speed}
 * @param toRpm speed at its end in rpm; below the start when the speed falls
 * @param rows gives the trimmed rows, lambda lined up; of a stepped pull only the settled parts of its plateaus
 * @param plateaus the plateaus as rows of the samples, in order of time; one for a hold, none for a sweep
 * @param speed where its speed is read from
 * @param lambda how lambda was lined up
 * @param knock the rows under load in which knock was counted in it or just beside it, lambda as its sensor answered; none where none was
 * @param refusal why it cannot be used; empty for a good pull
 * @param findings what else is worth saying about it
 */
public record Candidate(
        int number,
        String source,
        Lines lines,
        Kind kind,
        double fromRpm,
        double toRpm,
        Supplier<Samples> rows,
        List<RowRange> plateaus,
        SpeedSource speed,
        LambdaAlignment lambda,
        Samples knock,
        Optional<Refusal> refusal,
        List<Finding> findings) {
    /**
     * Lines and time of the source that a candidate uses.
     *
     * @param first first line, from 1
     * @param last last line
     * @param durationS time from the first to the last, s
     * @param stepS usual time from row to row, s; 0 where there are not two rows with a time
     */
    public record Lines(long first, long last, double durationS, double stepS) {
        /** A step longer than so many usual ones is a gap. */
        private static final double GAP = 1.5;

        /** The lines of rows that have a time each, at least one. */
        static Lines of(Samples samples) {
            int last = samples.rows() - 1;
            return new Lines(
                    samples.line(0),
                    samples.line(last),
                    samples.value(TimedChannel.TIME, last) - samples.value(TimedChannel.TIME, 0),
                    stepS(samples));
        }

        /**
         * Mean step from row to row but for gaps, s: a stepped pull keeps only the settled parts of its plateaus, and what lies between
         * them is no step.
         */
        public static double stepS(Samples samples) {
            double[] times = samples.presentValues(TimedChannel.TIME);
            double[] steps = new double[times.length];
            int count = 0;
            for (int row = 1; row < times.length; row++) {
                double step = times[row] - times[row - 1];
                steps[count] = step;
                count += step > 0 ? 1 : 0;
            }
            Arrays.sort(steps, 0, count);
            double longest = GAP * (count == 0 ? 0 : steps[count / 2]);
            while (count > 0 && steps[count - 1] >= longest) {
                count--;
            }
            double sum = 0;
            for (int step = 0; step < count; step++) {
                sum += steps[step];
            }
            return count == 0 ? 0 : sum / count;
        }
    }

    public Candidate {
        plateaus = List.copyOf(plateaus);
        findings = List.copyOf(findings);
    }

    /** The same, but not to be used. */
    public Candidate refused(Refusal why) {
        return with(source, rows, knock, Optional.of(why));
    }

    /** The same with other rows of knock. */
    public Candidate withKnock(Samples newKnock) {
        return with(source, rows, newKnock, refusal);
    }

    /** The same without its rows, which fill far more memory than what is known of it. */
    public Candidate withoutSamples() {
        Samples none = Samples.builder(List.of()).build();
        return kept(rows -> new Samples.AtHand(none)).withKnock(none);
    }

    /** The same with its rows kept elsewhere. */
    public Candidate kept(Function<Samples, Supplier<Samples>> elsewhere) {
        return with(source, elsewhere.apply(samples()), knock, refusal);
    }

    /** Its rows, read back from where they are kept: ask once for what is looked at often. */
    public Samples samples() {
        return rows.get();
    }

    /** Whether its rows are in memory. */
    public boolean isAtHand() {
        return rows instanceof Samples.AtHand;
    }

    /** The same with its rows at hand. */
    public Candidate atHand() {
        return isAtHand() ? this : kept(Samples.AtHand::new);
    }

    /** The same in a source of another name. */
    public Candidate withSource(String newSource) {
        return with(newSource, rows, knock, refusal);
    }

    private Candidate with(
            String newSource, Supplier<Samples> newRows, Samples newKnock, Optional<Refusal> newRefusal) {
        return new Candidate(
                number,
                newSource,
                lines,
                kind,
                fromRpm,
                toRpm,
                newRows,
                plateaus,
                speed,
                lambda,
                newKnock,
                newRefusal,
                findings);
    }

    /** Whether it is no pull at all, but a stretch under load that is kept for its knock. */
    public boolean isKnockAlone() {
        return refusal.filter(why -> why.reason() == Refusal.Reason.KNOCK_ALONE).isPresent();
    }

    public boolean isUsable() {
        return refusal.isEmpty();
    }

    public long firstLine() {
        return lines.first();
    }

    public long lastLine() {
        return lines.last();
    }

    /** It as a place of its source. */
    public Place place() {
        return Place.inFile(source).withLine(firstLine()).withPull(number);
    }

    /** Its samples whose speed lies in a band; all of them where there is no band or none lies in it. */
    public Samples samplesIn(Optional<SpeedBand> band) {
        Samples samples = samples();
        if (band.isEmpty()) {
            return samples;
        }
        SamplesBuilder builder = Samples.builder(samples.channels());
        for (int row = 0; row < samples.rows(); row++) {
            OptionalDouble rpm = speed.rpm(samples, row);
            if (rpm.isPresent() && band.get().contains(rpm.getAsDouble())) {
                builder.appendRow(samples, row);
            }
        }
        return builder.rows() == 0 ? samples : builder.build();
    }

    /** Mean of a channel over the rows whose speed lies in a band, in the channel's unit; empty where none does. */
    public OptionalDouble meanIn(SpeedBand band, Channel channel) {
        Samples samples = samples();
        Samples.Cells speeds = samples.cells(speed.channel());
        Samples.Cells cells = samples.cells(channel);
        double sum = 0;
        int count = 0;
        for (int row = 0; row < samples.rows(); row++) {
            if (cells.isPresent(row)
                    && speeds.isPresent(row)
                    && band.contains(speeds.value(row) * speed.rpmPerUnit())) {
                sum += cells.value(row);
                count++;
            }
        }
        return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / count);
    }

    /** Time from its first to its last line, s. */
    public double durationS() {
        return lines.durationS();
    }

    /** The speeds between its ends; empty when they are the same, as in a hold. */
    public Optional<SpeedBand> span() {
        double low = Math.min(fromRpm, toRpm);
        double high = Math.max(fromRpm, toRpm);
        return low < high ? Optional.of(new SpeedBand(Math.max(0, low), high)) : Optional.empty();
    }

    /** How the lambda channels of a candidate were lined up with the others. */
    public sealed interface LambdaAlignment {
        /** By how much lambda was moved towards the start, s; 0 where nothing was done. */
        double appliedS();

        /**
         * The delay that the rules gave.
         *
         * @param appliedS the delay, s, 0 to 5
         */
        record Given(double appliedS) implements LambdaAlignment {}

        /**
         * A delay read off the answer of lambda to the throttle edge.
         *
         * @param appliedS the delay, s
         * @param errorS its standard error, s
         */
        record Estimated(double appliedS, double errorS) implements LambdaAlignment {}

        /** Nothing was moved: there is no lambda, or nothing that a delay could be read from. */
        record NotApplied() implements LambdaAlignment {
            @Override
            public double appliedS() {
                return 0;
            }
        }
    }

    /** What a candidate turned out to be. */
    public enum Kind implements WrittenId {
        /** Speed rising all the way. */
        RISING,
        /** Speed falling all the way, drawn down by the brake. */
        FALLING,
        /** Plateaus, each faster than the one before. */
        STEPS_UP,
        /** Plateaus, each slower than the one before. */
        STEPS_DOWN,
        /** One plateau at one speed with one spark setting. */
        HOLD;

        public boolean isSweep() {
            return this == RISING || this == FALLING;
        }
    }
}
