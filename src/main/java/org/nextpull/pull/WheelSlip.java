package org.nextpull.pull;

import java.util.Arrays;
import java.util.Optional;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.math.Series;
import org.nextpull.plan.DynoFacts;

/** Compares engine and roller: where both are logged they keep one ratio, unless a tyre or the clutch slips. */
final class WheelSlip {
    private static final double MOST = 0.025;
    private static final int SMOOTHED_ROWS = 5;

    private WheelSlip() {}

    static Optional<CandidateDraft.Objection> of(Samples samples, SpeedSource speed, DynoFacts.Gearing gearing) {
        if (speed.axis() != SpeedSource.Axis.ENGINE) {
            return Optional.empty();
        }
        return SpeedSource.roller(samples, gearing).flatMap(roller -> {
            double[] ratio = new double[samples.rows()];
            double[] rpm = new double[samples.rows()];
            int count = 0;
            for (int row = 0; row < samples.rows(); row++) {
                double engine = speed.rpm(samples, row).orElse(0);
                double wheel = roller.rpm(samples, row).orElse(0);
                if (engine > 0 && wheel > 0) {
                    ratio[count] = engine / wheel;
                    rpm[count++] = engine;
                }
            }
            return count < 2 * SMOOTHED_ROWS
                    ? Optional.empty()
                    : worst(Arrays.copyOf(ratio, count), Arrays.copyOf(rpm, count));
        });
    }

    private static Optional<CandidateDraft.Objection> worst(double[] ratio, double[] rpm) {
        double usual = Series.of(ratio).median();
        double most = 0;
        double at = rpm[0];
        for (int first = 0; first + SMOOTHED_ROWS <= ratio.length; first++) {
            double near = Series.copyOf(ratio, first, first + SMOOTHED_ROWS).median();
            double off = Math.abs(near / usual - 1);
            if (off > most) {
                most = off;
                at = rpm[first + SMOOTHED_ROWS / 2];
            }
        }
        return most > MOST
                ? Optional.of(CandidateDraft.Objection.of(
                        Refusal.Reason.WHEEL_SLIP, Detail.of("percent", 100 * most), Detail.of("at", at)))
                : Optional.empty();
    }
}
