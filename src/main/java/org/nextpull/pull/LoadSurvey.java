package org.nextpull.pull;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Block;
import org.nextpull.channel.Samples;
import org.nextpull.plan.DynoFacts;

/**
 * A first look over a log without a throttle: how much torque does it reach? Keeps a histogram of one percent steps, so a log of any
 * length takes the same memory and the order of its blocks does not matter.
 */
final class LoadSurvey {
    private static final double LEAST_NM = 0.01;
    private static final double STEP = 1.01;
    private static final int BINS = 1700;

    /** Rows at the top that may be faults of the sensor: one in two thousand, at least five. */
    private static final double FAULTS = 0.0005;

    private static final int LEAST_FAULTS = 5;

    private final DynoFacts.Gearing gearing;
    private final long[] counts = new long[BINS];
    private long rows;

    /** Looks at logs whose speed may have to come from the roller. */
    public LoadSurvey(DynoFacts.Gearing gearing) {
        this.gearing = gearing;
    }

    /** Takes the next block in. */
    public void accept(Block block) {
        Samples samples = block.samples();
        SpeedSource.of(samples, gearing)
                .flatMap(speed -> Effort.of(samples, speed))
                .ifPresent(effort -> {
                    for (int row = 0; row < samples.rows(); row++) {
                        count(effort.newtonMetres(samples, row));
                    }
                });
    }

    private void count(OptionalDouble torque) {
        if (torque.isPresent() && torque.getAsDouble() > LEAST_NM) {
            int bin = (int) (Math.log(torque.getAsDouble() / LEAST_NM) / Math.log(STEP));
            counts[Math.min(bin, BINS - 1)]++;
            rows++;
        }
    }

    /** The level that was reached; empty when no torque was positive. */
    public Optional<LoadGate.Level> level() {
        if (rows == 0) {
            return Optional.empty();
        }
        long above = Math.min(rows / 10, Math.max(LEAST_FAULTS, (long) (FAULTS * rows)));
        int bin = BINS - 1;
        long passed = 0;
        while (bin > 0 && passed + counts[bin] <= above) {
            passed += counts[bin--];
        }
        return Optional.of(new LoadGate.Level(LEAST_NM * Math.pow(STEP, bin + 0.5)));
    }
}
