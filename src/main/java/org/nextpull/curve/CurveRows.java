package org.nextpull.curve;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.unit.SpeedBand;
import org.nextpull.unit.Torque;

/** A curve read at round speeds. */
final class CurveRows {
    private CurveRows() {}

    static List<CurvePoint> every(int everyRpm, RawCurve curve) {
        List<CurvePoint> points = curve.points();
        double low = points.get(0).rpm();
        double high = points.get(points.size() - 1).rpm();
        if (!(low < high)) {
            return points;
        }
        double tolerance = 1.5 * curve.grid().stepRpm();
        List<CurvePoint> rows = new ArrayList<>();
        int above = 0;
        for (double rpm : new SpeedGrid(everyRpm).pointsIn(new SpeedBand(Math.max(0, low), high))) {
            while (points.get(above).rpm() < rpm && above < points.size() - 1) {
                above++;
            }
            CurvePoint upper = points.get(above);
            CurvePoint lower = above == 0 || upper.rpm() == rpm ? upper : points.get(above - 1);
            if (upper.rpm() - lower.rpm() <= tolerance) {
                rows.add(between(curve.axes(), lower, upper, rpm));
            }
        }
        return List.copyOf(rows);
    }

    private static CurvePoint between(CurveAxes axes, CurvePoint lower, CurvePoint upper, double rpm) {
        if (lower.rpm() == upper.rpm()) {
            return upper;
        }
        double share = (rpm - lower.rpm()) / (upper.rpm() - lower.rpm());
        double torque =
                lower.torque().newtonMetres() * (1 - share) + upper.torque().newtonMetres() * share;
        return axes.point(rpm, Torque.ofNewtonMetres(torque), Math.min(lower.rows(), upper.rows()));
    }
}
