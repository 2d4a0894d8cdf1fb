package org.nextpull.curve;

import org.nextpull.plan.DynoFacts;
import org.nextpull.pull.SpeedSource;
import org.nextpull.unit.Finite;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/**
 * What a curve shows.
 *
 * @param speed the shaft whose speed runs along it
 * @param torqueAt the shaft that its torque is stated at
 * @param shaftRevPerSpeedRev revolutions of the torque's shaft for one of the speed's, dimensionless and positive; power is torque times
 *     that shaft's speed
 */
record CurveAxes(SpeedSource.Axis speed, DynoFacts.Shaft torqueAt, double shaftRevPerSpeedRev) {
    /**
     * Accepts any positive finite ratio.
     *
     * @throws IllegalArgumentException when the ratio is NaN, infinite, 0 or negative
     */
    CurveAxes {
        Finite.requirePositive("a ratio of speeds", shaftRevPerSpeedRev);
    }

    /**
     * Power of a torque at a speed of these axes.
     *
     * @param torque at the torque's shaft
     * @param rpm speed of the speed's shaft in rpm, finite
     * @throws IllegalArgumentException for NaN or an infinite speed
     */
    Power power(Torque torque, double rpm) {
        return torque.at(rpm * shaftRevPerSpeedRev);
    }

    /**
     * Torque of a power at a speed of these axes, at the torque's shaft.
     *
     * @param rpm speed of the speed's shaft in rpm, finite and not 0
     * @throws IllegalArgumentException at speed 0 or NaN, where there is no such torque
     */
    Torque torque(Power power, double rpm) {
        return power.torqueAt(rpm * shaftRevPerSpeedRev);
    }

    CurvePoint point(double rpm, Torque torque) {
        return new CurvePoint(rpm, torque, power(torque, rpm));
    }

    /** Whether two curves show the same thing and may be compared. */
    boolean comparableTo(CurveAxes other) {
        return speed.isEngine() == other.speed.isEngine() && torqueAt == other.torqueAt;
    }
}
