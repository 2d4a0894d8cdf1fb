package org.nextpull.curve;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.nextpull.math.Series;
import org.nextpull.math.WindowQuadratic;
import org.nextpull.unit.Torque;

/** The highest point of a curve after a local quadratic has taken the noise of single points away. */
final class CurvePeak {
    private static final double HALF_WINDOW_RPM = 200;
    private static final int LEAST_POINTS = 5;

    private CurvePeak() {}

    static CurvePoint ofTorque(RawCurve curve) {
        return highest(curve, point -> point.torque().newtonMetres());
    }

    static CurvePoint ofPower(RawCurve curve) {
        return highest(curve, point -> point.power().watts());
    }

    private static CurvePoint highest(RawCurve curve, ToDoubleFunction<CurvePoint> figure) {
        List<CurvePoint> points = smoothed(curve);
        CurvePoint best = points.get(0);
        for (CurvePoint point : points) {
            if (figure.applyAsDouble(point) > figure.applyAsDouble(best)) {
                best = point;
            }
        }
        return best;
    }

    private static List<CurvePoint> smoothed(RawCurve curve) {
        List<CurvePoint> points = curve.points();
        if (points.size() < LEAST_POINTS) {
            return points;
        }
        Series rpm = Series.of(points.stream().mapToDouble(CurvePoint::rpm));
        Series torque =
                Series.of(points.stream().mapToDouble(point -> point.torque().newtonMetres()));
        WindowQuadratic fit = new WindowQuadratic(rpm, torque);
        return points.stream()
                .map(point -> curve.axes()
                        .point(
                                point.rpm(),
                                Torque.ofNewtonMetres(fit.at(point.rpm(), HALF_WINDOW_RPM, LEAST_POINTS)
                                        .value()),
                                point.rows()))
                .toList();
    }
}
