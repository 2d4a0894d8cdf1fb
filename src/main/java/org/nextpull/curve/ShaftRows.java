package org.nextpull.curve;

import org.nextpull.math.Series;

/**
 * Speed and torque of a pull, row by row in order of time, where both are known.
 *
 * @param axes the shafts that they belong to
 * @param timeS time, s
 * @param rpm speed of the axis
 * @param torque torque of the shaft, N.m
 */
record ShaftRows(CurveAxes axes, Series timeS, Series rpm, Series torque) {
    int size() {
        return timeS.size();
    }
}
