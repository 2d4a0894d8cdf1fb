package org.nextpull.pull;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Samples;

/**
 * Full load by torque where no throttle is logged: at least half of what the log reaches. That is known from a survey of the whole log,
 * or else the highest torque so far is taken, with single rows smoothed out.
 */
final class EffortGate implements LoadGate {
    private static final double SHARE = 0.5;
    private static final int SMOOTHED_ROWS = 5;

    private final Effort effort;
    private final boolean surveyed;
    private final double[] recent = new double[SMOOTHED_ROWS];
    private double reference;
    private int seen;
    private boolean open;

    EffortGate(Effort effort, Optional<LoadLevel> level) {
        this.effort = effort;
        this.surveyed = level.isPresent();
        this.reference = level.map(LoadLevel::newtonMetres).orElse(0.0);
    }

    @Override
    public boolean isLoaded(Samples samples, int row) {
        OptionalDouble torque = effort.newtonMetres(samples, row);
        if (torque.isPresent()) {
            if (!surveyed) {
                follow(torque.getAsDouble());
            }
            open = reference > 0 && torque.getAsDouble() >= SHARE * reference;
        }
        return open;
    }

    private void follow(double torque) {
        recent[seen++ % SMOOTHED_ROWS] = torque;
        if (seen >= SMOOTHED_ROWS) {
            double[] sorted = recent.clone();
            Arrays.sort(sorted);
            reference = Math.max(reference, sorted[SMOOTHED_ROWS / 2]);
        }
    }

    @Override
    public void restart() {
        open = false;
    }
}
