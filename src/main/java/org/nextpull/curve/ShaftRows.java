package org.nextpull.curve;

import java.util.List;
import org.nextpull.finding.Finding;
import org.nextpull.math.Series;

/**
 * Speed and torque of a pull, row by row in order of time, where both are known.
 *
 * @param axes the shafts that they belong to
 * @param timeS time, s
 * @param rpm speed of the axis
 * @param torque torque of the shaft, N.m
 * @param findings what was found on the way
 */
record ShaftRows(CurveAxes axes, Series timeS, Series rpm, Series torque, List<Finding> findings) {
    ShaftRows {
        findings = List.copyOf(findings);
    }

    int size() {
        return timeS.size();
    }
}
