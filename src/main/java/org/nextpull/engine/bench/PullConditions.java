package org.nextpull.engine.bench;

import java.util.Optional;
import org.nextpull.engine.Surroundings;
import org.nextpull.unit.Lambda;

/**
 * What really held during a pull, which the log shows only through its sensors.
 *
 * @param number order of the pull in the day, from 1
 * @param surroundings air, coolant and oil
 * @param lambda mixture that the engine ran on
 * @param fuel name of the fuel
 * @param label configuration
 * @param cylinders cylinders of the engine
 * @param scatter factor on torque that belongs to this pull alone
 */
record PullConditions(
        int number,
        Surroundings surroundings,
        Lambda lambda,
        String fuel,
        Optional<String> label,
        int cylinders,
        PullScatter scatter) {
    /**
     * Factor on torque: a level and a tilt over speed.
     *
     * @param level factor at 5,000 rpm
     * @param tilt change of the factor for each 1,000 rpm
     */
    public record PullScatter(double level, double tilt) {}

    private static final double TILT_RPM = 5000;

    double factorAt(double rpm) {
        return scatter.level() + scatter.tilt() * (rpm - TILT_RPM) / 1000;
    }
}
