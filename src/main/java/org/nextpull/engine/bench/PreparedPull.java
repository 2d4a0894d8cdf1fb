package org.nextpull.engine.bench;

import java.util.List;
import java.util.Optional;
import org.nextpull.channel.SparkMap;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.unit.Lambda;

/**
 * A pull that can be driven.
 *
 * @param conditions what really holds
 * @param curves what the engine does at full load, one for each spark map
 * @param sparks spark maps in the order in which they are stepped through
 * @param brake what takes up the torque
 * @param instruments what is logged
 * @param chance scatter of the sensors
 */
record PreparedPull(
        Conditions conditions,
        List<FullLoadCurve> curves,
        List<SparkMap> sparks,
        Brake brake,
        Instruments instruments,
        Noise chance) {
    PreparedPull {
        curves = List.copyOf(curves);
        sparks = List.copyOf(sparks);
    }

    /** The moments of the pull, from a speed at which the engine runs. */
    List<Driver.Moment> drive(Brake.Program program, double fromRpm) {
        FullLoadCurve first = curves.get(0);
        return Driver.drive(
                program, instruments.sampleHz(), brake, rpm -> first.torque(rpm) * conditions.factorAt(rpm), fromRpm);
    }

    Sensors sensors(Sensors.State state) {
        return sensors(chance, state);
    }

    /** Sensors whose scatter comes from elsewhere. */
    Sensors sensors(Noise noise, Sensors.State state) {
        return new Sensors(curves, sparks, conditions, brake, instruments, noise, state);
    }

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
    record Conditions(
            int number,
            OperatingPoint.Surroundings surroundings,
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
}
