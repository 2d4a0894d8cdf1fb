package org.nextpull.response;

import org.nextpull.unit.Torque;

/**
 * Corrected torque at a speed.
 *
 * @param rpm speed along the axis of the curve, rpm
 * @param torque torque there
 */
public record TorqueAtSpeed(double rpm, Torque torque) {}
