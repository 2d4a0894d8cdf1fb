package org.nextpull.math.regression;

import org.nextpull.math.Interval;

/** A confidence set of a ratio, which need not be an interval. */
public sealed interface ConfidenceSet {
    /** Everything between two points. */
    record Between(Interval interval) implements ConfidenceSet {
        @Override
        public boolean contains(double value) {
            return interval.contains(value);
        }
    }

    /** Everything except what lies between two points: the denominator could be zero, but not every ratio fits. */
    record Outside(Interval gap) implements ConfidenceSet {
        @Override
        public boolean contains(double value) {
            return value <= gap.low() || value >= gap.high();
        }
    }

    /** The data exclude nothing. */
    record WholeLine() implements ConfidenceSet {
        @Override
        public boolean contains(double value) {
            return true;
        }
    }

    boolean contains(double value);
}
