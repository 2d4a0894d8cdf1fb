package org.nextpull.alarm;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.HeldValue;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.pull.KnockLoad;
import org.nextpull.unit.Pressure;

/**
 * What is known of the engine's running at a row: speed, load, barometer. A channel that is logged more slowly than the rows keeps its
 * last value. Changes as rows come; not for use by several threads.
 */
final class EngineRunning {
    /** Standard atmosphere, for a boost limit without any barometer. */
    private static final Pressure STANDARD = Pressure.ofPascals(101_325);

    /** Without a throttle, torque tells load: an engine on overrun or coasting is far below half of its best. */
    private static final double SHARE_OF_BEST_TORQUE = 0.5;

    /** A lambda sensor tells of what burnt so long before, in s, where the plan does not say: gas and sensor need it (common practice, no source). */
    private static final double LAMBDA_DELAY_S = 0.5;

    /** Times in logs are decimals; their differences miss the last digit. */
    private static final double ROUNDING_S = 1e-9;

    private final AlarmWatch.Rules rules;
    private final KnockLoad knockLoad = new KnockLoad();
    private OptionalDouble rpm = OptionalDouble.empty();
    private final HeldValue engineRpm = new HeldValue(Channel.of(Role.ENGINE_SPEED));
    private final HeldValue rollerRpm = new HeldValue(Channel.of(Role.ROLLER_SPEED));
    private final HeldValue throttle = new HeldValue(Channel.of(Role.THROTTLE));
    private final HeldValue torque = new HeldValue(Channel.of(Role.TORQUE));
    private final HeldValue barometer = new HeldValue(Channel.of(Role.BAROMETER));
    private double bestTorque;
    private boolean falling;
    private boolean loadedForKnock;
    private boolean loaded = true;
    private Optional<Alarm.RowPlace> tippedIn = Optional.empty();
    private boolean atSensor = true;

    EngineRunning(AlarmWatch.Rules rules) {
        this.rules = rules;
    }

    void take(Row row) {
        Samples samples = row.view().samples();
        loadedForKnock = knockLoad.isLoaded(samples, row.index());
        boolean roller = rollerRpm.see(samples, row.index())
                && rules.engineRevPerRollerRev().isPresent();
        if (engineRpm.see(samples, row.index())) {
            speed(engineRpm.orElse(0));
        } else if (roller) {
            speed(rollerRpm.orElse(0) * rules.engineRevPerRollerRev().getAsDouble());
        }
        throttle.see(samples, row.index());
        if (torque.see(samples, row.index())) {
            bestTorque = Math.max(bestTorque, torque.orElse(0));
        }
        barometer.see(samples, row.index());
        boolean now = isFullLoad();
        if (now && !loaded) {
            tippedIn = Optional.of(row.moment());
        }
        loaded = now;
        double delayS = rules.lambdaDelayS().orElse(LAMBDA_DELAY_S);
        atSensor = now
                && tippedIn.map(since -> row.moment().secondsSince(since) >= delayS - ROUNDING_S)
                        .orElse(true);
    }

    private void speed(double now) {
        falling = rpm.isPresent() && now < rpm.getAsDouble();
        rpm = OptionalDouble.of(now);
    }

    OptionalDouble rpm() {
        return rpm;
    }

    /** Whether the load is one at which knock matters. */
    boolean isLoadedForKnock() {
        return loadedForKnock;
    }

    double baroPascals() {
        return barometer.orElse(rules.baro().orElse(STANDARD).pascals());
    }

    /** Within the band; an unknown speed counts as within. */
    boolean isInBand() {
        return rules.band().isEmpty() || rpm.isEmpty() || rules.band().get().contains(rpm.getAsDouble());
    }

    /** At or above the band's lowest speed, where oil pressure must have built up; an unknown speed counts as above. */
    boolean isAboveBandStart() {
        return rules.band().isEmpty()
                || rpm.isEmpty()
                || rpm.getAsDouble() >= rules.band().get().fromRpm();
    }

    /** Full load, and for long enough that the lambda sensor shows it: what it reads just after a tip-in was burnt before. */
    boolean isFullLoadAtSensor() {
        return atSensor;
    }

    /** By the throttle; without one by torque, without that by a speed within the band that is not falling. */
    boolean isFullLoad() {
        if (throttle.isKnown()) {
            return throttle.orElse(0) >= rules.fullLoad();
        }
        if (torque.isKnown()) {
            return isInBand() && torque.orElse(0) > SHARE_OF_BEST_TORQUE * bestTorque;
        }
        return isInBand() && !falling;
    }
}
