package org.nextpull.pull;

import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;

/** Full load by the throttle. Once open the gate forgives a little, so that a noisy sensor does not chop a pull. */
final class ThrottleGate implements LoadGate {
    static final Channel THROTTLE = Channel.of(Role.THROTTLE);
    private static final double FORGIVEN = 0.02;

    private final double fullLoad;
    private boolean open;
    private double highest = Double.NEGATIVE_INFINITY;

    ThrottleGate(double fullLoad) {
        this.fullLoad = fullLoad;
    }

    @Override
    public boolean isLoaded(Samples samples, int row) {
        if (samples.isPresent(THROTTLE, row)) {
            double throttle = samples.value(THROTTLE, row);
            highest = Math.max(highest, throttle);
            open = throttle >= (open ? fullLoad - FORGIVEN : fullLoad);
        }
        return open;
    }

    @Override
    public void restart() {
        open = false;
    }

    /** The highest throttle so far; minus infinity where there was none. */
    double highest() {
        return highest;
    }
}
