package org.nextpull.response;

import org.nextpull.unit.Torque;

/** Corrected torque at a speed in rpm. */
public record TorqueAtSpeed(double rpm, Torque torque) {}
