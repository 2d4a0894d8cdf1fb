package org.nextpull.pull;

import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
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

    private static final Channel MANIFOLD = Channel.of(Role.MANIFOLD_PRESSURE);
    private static final Channel BAROMETER = Channel.of(Role.BAROMETER);
    private static final Channel ENGINE_SPEED = Channel.of(Role.ENGINE_SPEED);
    private static final Channel ROLLER_SPEED = Channel.of(Role.ROLLER_SPEED);

    private OptionalDouble throttle = OptionalDouble.empty();
    private OptionalDouble manifold = OptionalDouble.empty();
    private OptionalDouble torque = OptionalDouble.empty();
    private double barometer = STANDARD_PA;
    private double mostTorque;

    /** Looks at the next row. */
    public boolean isLoaded(Samples samples, int row) {
        throttle = latest(samples.find(LoadGate.ThrottleGate.THROTTLE, row), throttle);
        manifold = latest(samples.find(MANIFOLD, row), manifold);
        barometer = samples.find(BAROMETER, row).orElse(barometer);
        torque = latest(effort(samples, row), torque);
        mostTorque = Math.max(mostTorque, torque.orElse(0));
        if (throttle.isPresent() || manifold.isPresent()) {
            return throttle.orElse(0) >= THROTTLE_SHARE || manifold.orElse(0) >= BAROMETER_SHARE * barometer;
        }
        return torque.isEmpty() || torque.getAsDouble() > TORQUE_SHARE * mostTorque;
    }

    private static OptionalDouble latest(OptionalDouble now, OptionalDouble before) {
        return now.isPresent() ? now : before;
    }

    /** Torque, or power over speed, on whatever shaft: only its share of the highest counts. */
    private static OptionalDouble effort(Samples samples, int row) {
        OptionalDouble logged = samples.find(Effort.TORQUE, row);
        OptionalDouble power = samples.find(Effort.POWER, row);
        if (logged.isPresent() || power.isEmpty()) {
            return logged;
        }
        double rpm = latest(samples.find(ENGINE_SPEED, row), samples.find(ROLLER_SPEED, row))
                .orElse(0);
        return rpm > 0 ? OptionalDouble.of(power.getAsDouble() / rpm) : OptionalDouble.empty();
    }
}
