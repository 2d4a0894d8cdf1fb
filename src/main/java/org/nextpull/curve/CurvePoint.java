package org.nextpull.curve;

import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/**
 * One point of a curve.
 *
 * @param rpm speed along the axis of the curve, rpm, not negative
 * @param torque torque there, at the shaft that the axes name
 * @param power power there
 */
public record CurvePoint(double rpm, Torque torque, Power power) {
    CurvePoint times(double factor) {
        return new CurvePoint(
                rpm, Torque.ofNewtonMetres(torque.newtonMetres() * factor), Power.ofWatts(power.watts() * factor));
    }
}
