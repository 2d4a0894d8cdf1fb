package org.nextpull.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.nextpull.curve.CorrectedCurve;
import org.nextpull.curve.CurvePoint;
import org.nextpull.plan.Band;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Unit;
import org.nextpull.unit.UnitSystem;

/** Picks the pulls worth drawing over speed, the first, the best clean one that knock allows and the last that count, and turns them into the data of a chart. */
public final class SpeedPlots {
    private SpeedPlots() {}

    /** The chart; empty when no pull that counts has a curve, as with tables of results. */
    public static Optional<SpeedPlot> of(SessionResult result, UnitSystem units) {
        List<MeasuredPull.Curve> used = used(result);
        if (used.isEmpty()) {
            return Optional.empty();
        }
        Unit torque = units.torque();
        Unit power = units.power();
        List<SpeedPlot.Line> lines = new ArrayList<>();
        MeasuredPull.Curve first = used.get(0);
        MeasuredPull.Curve last = used.get(used.size() - 1);
        MeasuredPull.Curve best = best(result, used).orElse(first);
        add(lines, named("first", first, used), first, List.of(torque, power));
        if (!isSame(best, first)) {
            add(lines, named("best", best, used), best, List.of(torque, power));
        }
        if (!isSame(last, first) && !isSame(last, best)) {
            add(lines, named("last", last, used), last, List.of(torque, power));
        }
        return Optional.of(
                new SpeedPlot("torque, corrected, " + torque.sign(), "power, corrected, " + power.sign(), lines));
    }

    /** Two pulls, named before and after; empty where one of them has no curve. */
    public static Optional<SpeedPlot> beforeAndAfter(SessionResult result, int before, int after, UnitSystem units) {
        Unit torque = units.torque();
        Unit power = units.power();
        List<SpeedPlot.Line> lines = new ArrayList<>();
        List<MeasuredPull.Curve> used = used(result);
        for (MeasuredPull.Curve one : used) {
            if (one.pull().number() == before || one.pull().number() == after) {
                boolean isBefore = one.pull().number() == before;
                add(lines, named(isBefore ? "before" : "after", one, used), one, List.of(torque, power));
            }
        }
        return lines.size() == 2
                ? Optional.of(new SpeedPlot(
                        "torque, corrected, " + torque.sign(), "power, corrected, " + power.sign(), lines))
                : Optional.empty();
    }

    /** A pull in progress, as measured, over the best one so far; empty before there is anything to draw. */
    public static Optional<SpeedPlot> underway(SessionResult result, UnitSystem units, List<Point> measured) {
        Unit torque = units.torque();
        List<MeasuredPull.Curve> used = used(result);
        List<SpeedPlot.Line> lines = new ArrayList<>();
        Optional<MeasuredPull.Curve> best = best(result, used);
        best.ifPresent(one -> lines.add(new SpeedPlot.Line(
                "best so far, pull " + one.pull().number(),
                torque(one.curve().orElseThrow().raw().points(), torque),
                List.of())));
        if (measured.size() > 1) {
            List<Point> course = measured.stream()
                    .map(point -> new Point(point.x(), torque.fromSi(point.y())))
                    .toList();
            lines.add(new SpeedPlot.Line("now", course, List.of()));
        }
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new SpeedPlot(
                        "This pull" + (best.isPresent() ? " over the best so far" : ""),
                        "torque as measured, " + torque.sign(),
                        "",
                        lines,
                        result.plan().band().map(Band::speeds)));
    }

    /** Those that count, without plateaus once there is a pull over the band: torque at one held speed is not that of the band. */
    private static List<MeasuredPull.Curve> used(SessionResult result) {
        List<MeasuredPull.Curve> used = result.measured().stream()
                .filter(one -> one.pull().isUsed() && one.hasCurve())
                .toList();
        List<MeasuredPull.Curve> overBand =
                used.stream().filter(one -> !one.pull().isHeld()).toList();
        return overBand.isEmpty() ? used : overBand;
    }

    /** A pull with what it is here and, on a day of several labels, its own. */
    private static String named(String role, MeasuredPull.Curve one, List<MeasuredPull.Curve> used) {
        boolean isOneOfSeveral = used.stream()
                        .map(other -> other.pull().setting().label())
                        .distinct()
                        .count()
                > 1;
        return role + ", pull " + one.pull().number()
                + one.pull()
                        .setting()
                        .label()
                        .filter(label -> isOneOfSeveral)
                        .map(label -> " (" + label + ")")
                        .orElse("");
    }

    private static List<Point> torque(List<CurvePoint> points, Unit unit) {
        return points.stream()
                .map(point -> new Point(point.rpm(), unit.fromSi(point.torque().newtonMetres())))
                .toList();
    }

    private static boolean isSame(MeasuredPull.Curve one, MeasuredPull.Curve other) {
        return one.pull().number() == other.pull().number();
    }

    private static Optional<MeasuredPull.Curve> best(SessionResult result, List<MeasuredPull.Curve> used) {
        List<MeasuredPull> pulls = used.stream()
                .map(MeasuredPull.Curve::pull)
                .filter(result::isClean)
                .filter(pull -> result.verdict()
                        .filter(said -> said.isAboveKnockLimit(pull.setting()))
                        .isEmpty())
                .toList();
        return Reading.of(pulls, result.plan().goal().response()).stream()
                .max(Comparator.comparingDouble(Reading::value))
                .flatMap(reading -> result.pull(reading.pull().number()));
    }

    private static List<Point> peaks(MeasuredPull.Curve one, List<Unit> units) {
        return one.pull()
                .figures()
                .flatMap(figures -> figures.peakTorque()
                        .flatMap(most -> figures.peakPower()
                                .map(strongest -> List.of(
                                        new Point(
                                                most.rpm(),
                                                units.get(0)
                                                        .fromSi(most.torque().newtonMetres())),
                                        new Point(
                                                strongest.rpm(),
                                                units.get(1)
                                                        .fromSi(strongest
                                                                .power()
                                                                .watts()))))))
                .orElse(List.of());
    }

    private static void add(List<SpeedPlot.Line> lines, String name, MeasuredPull.Curve one, List<Unit> units) {
        CorrectedCurve curve = one.curve().orElseThrow();
        List<CurvePoint> points = curve.points();
        List<Point> power = points.stream()
                .map(point ->
                        new Point(point.rpm(), units.get(1).fromSi(point.power().watts())))
                .toList();
        lines.add(new SpeedPlot.Line(name, torque(points, units.get(0)), power, peaks(one, units)));
    }
}
