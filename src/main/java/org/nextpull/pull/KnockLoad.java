package org.nextpull.pull;

import org.nextpull.channel.Channel;
import org.nextpull.channel.HeldValue;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;

/**
 * Tells row by row whether the engine works hard enough for knock to hurt it, which is far below full load: at low speed a half open
 * throttle fills the cylinders. That is a throttle from 40 % or a manifold pressure from 75 % of the barometer on; where neither is
 * logged, torque (or power over speed) from half of the highest so far on, as pulls are found; where nothing tells the load, always. What
 * a noisy sensor counts at idle or on the overrun is no knock. The shares are common practice, no source. A channel that is logged more
 * slowly than the rows keeps its last value. Changes as rows come; not for use by several threads.
 */
public final class KnockLoad {
    private static final double THROTTLE_SHARE = 0.4;
    private static final double BAROMETER_SHARE = 0.75;
    private static final double TORQUE_SHARE = 0.5;
    private static final double STANDARD_PA = 101_325;

    private static final Channel ENGINE_SPEED = Channel.of(Role.ENGINE_SPEED);
    private static final Channel ROLLER_SPEED = Channel.of(Role.ROLLER_SPEED);

    private final HeldValue throttle = new HeldValue(LoadGate.ThrottleGate.THROTTLE);
    private final HeldValue manifold = new HeldValue(Channel.of(Role.MANIFOLD_PRESSURE));
    private final HeldValue barometer = new HeldValue(Channel.of(Role.BAROMETER));
    private final HeldValue torque = new HeldValue(LoadSignal.TORQUE);
    private final HeldValue power = new HeldValue(LoadSignal.POWER);
    private boolean hasEffort;
    private double effort;
    private double mostEffort;

    /** Looks at the next row. */
    public boolean isLoaded(Samples samples, int row) {
        throttle.see(samples, row);
        manifold.see(samples, row);
        barometer.see(samples, row);
        if (throttle.isKnown() || manifold.isKnown()) {
            return throttle.orElse(0) >= THROTTLE_SHARE
                    || manifold.orElse(0) >= BAROMETER_SHARE * barometer.orElse(STANDARD_PA);
        }
        seeEffort(samples, row);
        return !hasEffort || effort > TORQUE_SHARE * mostEffort;
    }

    /** Looks at the next rows together, where nobody asks for the load in each. */
    void see(Samples samples, int first, int end) {
        throttle.see(samples, first, end);
        manifold.see(samples, first, end);
        barometer.see(samples, first, end);
        for (int row = first; row < end && !throttle.isKnown() && !manifold.isKnown(); row++) {
            seeEffort(samples, row);
        }
    }

    /** Torque, or power over speed, on whatever shaft: only its share of the highest counts. */
    private void seeEffort(Samples samples, int row) {
        if (torque.see(samples, row)) {
            effort(torque.orElse(0));
        } else if (power.see(samples, row)) {
            double rpm = samples.find(ENGINE_SPEED, row)
                    .orElse(samples.find(ROLLER_SPEED, row).orElse(0));
            if (rpm > 0) {
                effort(power.orElse(0) / rpm);
            }
        }
    }

    private void effort(double now) {
        hasEffort = true;
        effort = now;
        mostEffort = Math.max(mostEffort, now);
    }
}
