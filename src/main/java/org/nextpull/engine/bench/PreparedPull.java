package org.nextpull.engine.bench;

import java.util.List;
import org.nextpull.channel.SparkMap;

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
        PullConditions conditions,
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
    List<BenchMoment> drive(BrakeProgram program, double fromRpm) {
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
}
