package org.nextpull.compare;

import java.util.List;
import java.util.OptionalInt;
import org.nextpull.finding.WrittenId;

/**
 * One label against the reference.
 *
 * @param label the label
 * @param level its band average with the drift of the day taken out, in the unit of the pulls
 * @param difference from the reference
 * @param verdict what it comes to
 * @param driftFactor how many times the variance of the difference grew by telling it from the drift; 1 when pulled there and back
 * @param pullsNeeded further pulls, there and back between the two, that would settle it at the present scatter; empty when it is
 *     settled, and also when more than a day's work would be needed, which a finding says
 * @param rows the difference over speed, with a band that holds as a whole; empty where rows are missing
 */
public record Comparison(
        String label,
        double level,
        Difference difference,
        Verdict verdict,
        double driftFactor,
        OptionalInt pullsNeeded,
        List<RowDifference> rows) {
    public Comparison {
        rows = List.copyOf(rows);
    }

    /**
     * A difference.
     *
     * @param value in the unit of the pulls
     * @param percent in percent of the reference
     * @param interval 95 % interval of the percentage, for all labels together
     */
    public record Difference(double value, double percent, PercentInterval interval) {}

    /** A difference that is real and yet too small to matter. */
    public boolean isRealButSmall() {
        return verdict == Verdict.SAME && difference.interval().excludesZero();
    }

    /**
     * The difference at one speed.
     *
     * @param rpm speed
     * @param levels levels of the label and of the reference there, drift taken out
     * @param percent difference in percent of the reference
     * @param band simultaneous 95 % band: it holds at all speeds together
     */
    public record RowDifference(double rpm, Levels levels, double percent, PercentInterval band) {
        /** Levels at a speed, in the unit of the pulls. */
        public record Levels(double label, double reference) {}
    }

    /** What a comparison comes to. The order of the questions: same, more, less, else it cannot be told. */
    public enum Verdict implements WrittenId {
        /** The interval lies within plus and minus the worth. */
        SAME,
        /** The interval lies wholly above zero. */
        MORE,
        /** The interval lies wholly below zero. */
        LESS,
        /** None of these, or the pulls that were planned are not all run. */
        CANNOT_TELL;
    }

    /**
     * Interval of a difference in percent of the reference.
     *
     * @param low in percent
     * @param high in percent, not below {@code low}
     */
    public record PercentInterval(double low, double high) {
        /** Whether it lies within plus and minus {@code worth}, in percent, above 0. */
        public boolean isWithin(double worth) {
            return -worth <= low && high <= worth;
        }

        /** Whether it lies wholly above or wholly below zero. */
        boolean excludesZero() {
            return low > 0 || high < 0;
        }

        /** In percent. */
        public double halfWidth() {
            return (high - low) / 2;
        }
    }
}
