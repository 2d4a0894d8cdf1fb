package org.nextpull.advice.bench;

import org.nextpull.unit.Span;

/**
 * How one sweep ended.
 *
 * @param pulls pulls used
 * @param leftPercent torque left at the setting that was recommended
 * @param leftAtPeakPercent torque left at the stated peak
 * @param errorOfPeak stated peak less true peak
 * @param past how far past the true peak a pull went
 * @param interval stated 90 % interval of the peak
 * @param printed whether the interval would be printed: the peak is bracketed
 * @param truth true peak
 * @param excursions pulls beyond true knock onset after the first, which the operator chose
 * @param beyondOnset whether the recommended setting lies beyond onset
 * @param hard a flat engine with a high scatter
 */
record SweepOutcome(
        int pulls,
        double leftPercent,
        double leftAtPeakPercent,
        double errorOfPeak,
        double past,
        Span interval,
        boolean printed,
        double truth,
        int excursions,
        boolean beyondOnset,
        boolean hard) {
    boolean covers() {
        return interval.contains(truth);
    }

    boolean isFalseStop() {
        return leftPercent > 0.5;
    }
}
