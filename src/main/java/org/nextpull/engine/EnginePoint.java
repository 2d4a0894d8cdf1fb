package org.nextpull.engine;

import org.nextpull.engine.cycle.ClosedCycle;
import org.nextpull.engine.cycle.Wiebe;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Torque;

/**
 * What an engine does at one operating point.
 *
 * @param torque brake torque
 * @param exhaust temperature at the exhaust thermocouple, in balance
 * @param burn how the charge burned
 * @param peak highest cylinder pressure
 * @param knock autoignition in the mean cycle
 * @param flow what flows through the engine
 * @param energy where the heat of one closed cycle of one cylinder went
 */
public record EnginePoint(
        Torque torque,
        Temperature exhaust,
        Wiebe burn,
        ClosedCycle.PeakPressure peak,
        ClosedCycle.Knock knock,
        Flow flow,
        ClosedCycle.Energy energy) {
    /**
     * What flows through the engine.
     *
     * @param fuel in kg/s
     * @param manifold absolute pressure ahead of the inlet valves
     */
    public record Flow(double fuel, Pressure manifold) {}
}
