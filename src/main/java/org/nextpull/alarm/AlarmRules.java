package org.nextpull.alarm;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.plan.Band;
import org.nextpull.plan.Limits;
import org.nextpull.plan.SweepPlan;
import org.nextpull.unit.Pressure;

/**
 * What the watch needs of a plan.
 *
 * @param limits the limits
 * @param band from whose lowest speed oil pressure is watched; empty for everywhere
 * @param fullLoad throttle from which the load is full, as a fraction, 0.9 for 90 %
 * @param engineRevPerRollerRev engine revolutions for one of the roller, positive; gives the engine's speed where only the roller's is
 *     logged
 * @param baro barometer where the log has none
 * @param lambdaDelayS time from the cylinder to the lambda reading in s, 0 to 5, where the plan gives it
 */
public record AlarmRules(
        Limits limits,
        Optional<Band> band,
        double fullLoad,
        OptionalDouble engineRevPerRollerRev,
        Optional<Pressure> baro,
        OptionalDouble lambdaDelayS) {

    public static AlarmRules of(SweepPlan plan) {
        return new AlarmRules(
                plan.limits(),
                plan.band(),
                plan.pull().fullLoad(),
                plan.dyno().gearing().engineRevPerRollerRev(),
                plan.air().baro(),
                plan.log().lambdaDelayS());
    }

    public AlarmRules withLimits(Limits newLimits) {
        return new AlarmRules(newLimits, band, fullLoad, engineRevPerRollerRev, baro, lambdaDelayS);
    }
}
