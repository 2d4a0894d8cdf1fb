package org.nextpull.chart;

import java.util.List;

/**
 * The data of a chart of corrected torque and power over speed.
 *
 * @param torqueTitle torque and unit
 * @param powerTitle power and unit
 * @param lines the pulls that are drawn
 */
public record SpeedPlot(String torqueTitle, String powerTitle, List<Line> lines) {
    public SpeedPlot {
        lines = List.copyOf(lines);
    }

    /**
     * One pull.
     *
     * @param name what it is called: baseline, best, last
     * @param torque torque over speed in rpm
     * @param power power over speed in rpm
     */
    public record Line(String name, List<Point> torque, List<Point> power) {
        public Line {
            torque = List.copyOf(torque);
            power = List.copyOf(power);
        }
    }
}
