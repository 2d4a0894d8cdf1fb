package org.nextpull.report.csv;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.nextpull.curve.CorrectedCurve;
import org.nextpull.curve.CurvePoint;
import org.nextpull.response.MeasuredCurve;
import org.nextpull.session.SessionResult;

/** The corrected curves of a day over speed, one row a point. */
public final class CurvesCsv {
    private static final List<String> HEADER =
            List.of("pull", "advance_deg", "lambda", "label", "rpm", "torque_nm", "power_kw");

    private CurvesCsv() {}

    /** All curves, or that of one pull. */
    public static String of(SessionResult result, Optional<Integer> pull) {
        StringBuilder text = new StringBuilder(CsvLine.of(HEADER));
        for (MeasuredCurve one : result.measured()) {
            if (pull.isEmpty() || pull.get() == one.pull().number()) {
                List<CurvePoint> points =
                        one.curve().map(CorrectedCurve::points).orElse(List.of());
                points.forEach(point -> text.append(CsvLine.of(cells(one, point))));
            }
        }
        return text.toString();
    }

    private static List<String> cells(MeasuredCurve one, CurvePoint point) {
        return List.of(
                String.valueOf(one.pull().number()),
                number(one.pull().setting().advance().map(advance -> advance.deg()), 2),
                number(one.pull().setting().lambda().map(lambda -> lambda.value()), 4),
                one.pull().setting().label().orElse(""),
                number(Optional.of(point.rpm()), 1),
                number(Optional.of(point.torque().newtonMetres()), 3),
                number(Optional.of(point.power().kilowatts()), 3));
    }

    private static String number(Optional<Double> value, int places) {
        return value.map(found -> String.format(Locale.ROOT, "%." + places + "f", found))
                .orElse("");
    }
}
