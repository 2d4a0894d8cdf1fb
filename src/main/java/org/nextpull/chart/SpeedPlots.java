package org.nextpull.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.nextpull.curve.CorrectedCurve;
import org.nextpull.curve.CurvePoint;
import org.nextpull.response.MeasuredCurve;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Unit;
import org.nextpull.unit.UnitSystem;

/** Picks the pulls worth drawing over speed, the first, the best clean one and the last that count, and turns them into the data of a chart. */
public final class SpeedPlots {
    private SpeedPlots() {}

    /** The chart; empty when no pull that counts has a curve, as with tables of results. */
    public static Optional<SpeedPlot> of(SessionResult result, UnitSystem units) {
        List<MeasuredCurve> used = result.measured().stream()
                .filter(one -> one.pull().isUsed() && one.curve().isPresent())
                .toList();
        if (used.isEmpty()) {
            return Optional.empty();
        }
        Unit torque = ResponseUnit.torque(units);
        Unit power = ResponseUnit.power(units);
        List<SpeedPlot.Line> lines = new ArrayList<>();
        MeasuredCurve first = used.get(0);
        MeasuredCurve last = used.get(used.size() - 1);
        MeasuredCurve best = best(result, used).orElse(first);
        add(lines, "first", first, List.of(torque, power));
        if (!isSame(best, first)) {
            add(lines, "best", best, List.of(torque, power));
        }
        if (!isSame(last, first) && !isSame(last, best)) {
            add(lines, "last", last, List.of(torque, power));
        }
        return Optional.of(
                new SpeedPlot("torque, corrected, " + torque.symbol(), "power, corrected, " + power.symbol(), lines));
    }

    private static boolean isSame(MeasuredCurve one, MeasuredCurve other) {
        return one.pull().number() == other.pull().number();
    }

    private static Optional<MeasuredCurve> best(SessionResult result, List<MeasuredCurve> used) {
        List<MeasuredPull> pulls =
                used.stream().map(MeasuredCurve::pull).filter(result::isClean).toList();
        return Reading.of(pulls, result.plan().goal().response()).stream()
                .max(Comparator.comparingDouble(Reading::value))
                .flatMap(reading -> used.stream()
                        .filter(one -> one.pull().number() == reading.pull())
                        .findFirst());
    }

    private static void add(List<SpeedPlot.Line> lines, String role, MeasuredCurve one, List<Unit> units) {
        CorrectedCurve curve = one.curve().orElseThrow();
        List<Point> torque = new ArrayList<>();
        List<Point> power = new ArrayList<>();
        for (CurvePoint point : curve.points()) {
            torque.add(new Point(point.rpm(), units.get(0).fromSi(point.torque().newtonMetres())));
            power.add(new Point(point.rpm(), units.get(1).fromSi(point.power().watts())));
        }
        lines.add(new SpeedPlot.Line(role + ", pull " + one.pull().number(), torque, power));
    }
}
