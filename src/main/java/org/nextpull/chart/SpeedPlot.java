package org.nextpull.chart;

import java.util.List;
import java.util.Optional;
import org.nextpull.unit.SpeedBand;

/**
 * The data of a chart of torque and power over speed.
 *
 * @param title what it shows
 * @param torqueTitle torque and unit
 * @param powerTitle power and unit
 * @param lines the pulls that are drawn
 * @param across speeds that the axis shows at least
 */
public record SpeedPlot(
        String title, String torqueTitle, String powerTitle, List<Line> lines, Optional<SpeedBand> across) {
    public SpeedPlot {
        lines = List.copyOf(lines);
    }

    /** Corrected curves, over the speeds that they have. */
    public SpeedPlot(String torqueTitle, String powerTitle, List<Line> lines) {
        this("Corrected torque and power", torqueTitle, powerTitle, lines, Optional.empty());
    }

    /**
     * One pull.
     *
     * @param name what it is called: baseline, best, last
     * @param torque torque over speed in rpm
     * @param power power over speed in rpm; empty to show torque alone
     */
    public record Line(String name, List<Point> torque, List<Point> power) {
        public Line {
            torque = List.copyOf(torque);
            power = List.copyOf(power);
        }
    }
}
