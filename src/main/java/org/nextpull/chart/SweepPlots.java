package org.nextpull.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.nextpull.advice.Advice;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.Factor;
import org.nextpull.advice.FittedCurve;
import org.nextpull.advice.Ignition;
import org.nextpull.advice.Reason;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.EngineSetting;
import org.nextpull.plan.Goal;
import org.nextpull.plan.TimingPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Power;
import org.nextpull.unit.Span;
import org.nextpull.unit.Torque;
import org.nextpull.unit.Unit;
import org.nextpull.unit.UnitSystem;

/** Turns the sweeps of a result into the data of their charts. */
public final class SweepPlots {
    private final SessionResult result;
    private final Goal.Response response;
    private final Unit unit;

    private SweepPlots(SessionResult result, UnitSystem units) {
        this.result = result;
        this.response = result.plan().goal().response();
        this.unit = response == Goal.Response.TORQUE ? units.torque() : units.power();
    }

    /** The charts of the sweeps that a result has, timing first. */
    public static List<SweepPlot> of(SessionResult result, UnitSystem units) {
        SweepPlots plots = new SweepPlots(result, units);
        List<SweepPlot> all = new ArrayList<>();
        result.verdict().flatMap(Verdict::timing).map(plots::plot).ifPresent(all::add);
        result.verdict().flatMap(Verdict::mixture).map(plots::plot).ifPresent(all::add);
        return List.copyOf(all);
    }

    /** The chart of the sweep that the next pull belongs to, with a line at its setting; empty before the first pull. */
    public static Optional<SweepPlot> running(SessionResult result, UnitSystem units) {
        SweepPlots plots = new SweepPlots(result, units);
        Optional<Advice> advice = result.advice();
        Optional<SweepAnswer> timing = result.verdict().flatMap(Verdict::timing);
        Optional<SweepAnswer> mixture = result.verdict().flatMap(Verdict::mixture);
        boolean isTiming = advice.map(Advice::reason)
                .filter(reason ->
                        reason instanceof Reason.Searching searching && searching.ignition() != Ignition.STANDING)
                .isPresent();
        Optional<SweepAnswer> shown = isTiming || mixture.isEmpty() ? timing.or(() -> mixture) : mixture;
        return shown.map(answer -> {
            SweepPlot plot = plots.plot(answer);
            return advice.flatMap(Advice::setting)
                    .flatMap(setting -> answer.factor() == Factor.MIXTURE
                            ? setting.lambda().map(Lambda::value)
                            : setting.advance().or(setting::offset).map(Advance::deg))
                    .map(x -> plot.with(new SweepPlot.Line(SweepPlot.Line.Kind.NEXT, x)))
                    .orElse(plot);
        });
    }

    private SweepPlot plot(SweepAnswer answer) {
        List<MeasuredPull> pulls = result.pulls().stream()
                .filter(pull -> answer.pulls().contains(pull.number()))
                .toList();
        boolean timing = answer.factor() == Factor.TIMING;
        return new SweepPlot(
                timing ? "Spark advance" : "Mixture",
                timing
                        ? timingTitle(pulls)
                        : isAdjusted(pulls) ? "lambda; each pull moved to the final spark" : "lambda",
                (response == Goal.Response.TORQUE ? "band-average torque" : "band-average power") + ", corrected, "
                        + unit.sign(),
                points(
                        pulls,
                        answer,
                        pull -> !answer.outliers().contains(pull.number())
                                && !pull.knock().isHeard()),
                points(pulls, answer, pull -> answer.outliers().contains(pull.number())),
                points(pulls, answer, pull -> pull.knock().isHeard()),
                curve(answer).stream()
                        .map(point -> new Point(point.setting(), unit.fromSi(point.response())))
                        .toList(),
                band(curve(answer)),
                chosen(answer),
                answer.optimum()
                        .map(found -> timing
                                ? new SweepPlot.Interval("MBT", found.bestInterval())
                                : new SweepPlot.Interval("best lambda", found.peakInterval())),
                lines(answer));
    }

    /** Knock limit, edges and the plan's limits; the drawing leaves out what lies beyond the settings that were run. */
    private List<SweepPlot.Line> lines(SweepAnswer answer) {
        List<SweepPlot.Line> lines = new ArrayList<>();
        answer.limit().ifPresent(limit -> lines.add(new SweepPlot.Line(SweepPlot.Line.Kind.KNOCK_LIMIT, limit)));
        answer.edges().ifPresent(edges -> {
            lines.add(new SweepPlot.Line(SweepPlot.Line.Kind.RICH_EDGE, edges.low()));
            lines.add(new SweepPlot.Line(SweepPlot.Line.Kind.LEAN_EDGE, edges.high()));
        });
        Optional<Double> most = answer.factor() == Factor.TIMING
                ? result.plan().timing().map(timing -> timing.most().deg())
                : result.plan().mixture().map(mixture -> mixture.leanest().value());
        most.ifPresent(limit -> lines.add(new SweepPlot.Line(SweepPlot.Line.Kind.PLAN_LIMIT, limit)));
        return lines;
    }

    private static String timingTitle(List<MeasuredPull> pulls) {
        boolean offset = pulls.stream().anyMatch(pull -> pull.setting().offset().isPresent());
        return offset ? "degrees added to the map" : "spark advance, deg before top dead centre";
    }

    private List<Point> points(List<MeasuredPull> pulls, SweepAnswer answer, Predicate<MeasuredPull> which) {
        return pulls.stream()
                .filter(which)
                .flatMap(pull -> point(pull, answer.factor()).stream())
                .toList();
    }

    private Optional<Point> point(MeasuredPull pull, Factor factor) {
        EngineSetting setting = pull.setting();
        Optional<Double> x = factor == Factor.MIXTURE
                ? setting.lambda().map(Lambda::value)
                : offsets()
                        ? setting.offset().map(Advance::deg)
                        : setting.advance().map(Advance::deg);
        Optional<Double> y = pull.figures()
                .flatMap(figures -> response == Goal.Response.TORQUE
                        ? figures.meanTorque().map(Torque::newtonMetres)
                        : figures.meanPower().map(Power::watts));
        double moved = factor == Factor.MIXTURE ? toFinalSpark(pull).orElse(0.0) : 0;
        return x.flatMap(place -> y.map(value -> new Point(place, unit.fromSi(value + moved))));
    }

    /** Whether pulls that ran other spark than stays are moved: they would lie below a curve that is at the final one. */
    private boolean isAdjusted(List<MeasuredPull> pulls) {
        return pulls.stream()
                .anyMatch(pull -> toFinalSpark(pull).filter(by -> by != 0).isPresent());
    }

    /** What the fitted curve over spark makes of the final advance over that of a pull, in SI. */
    private Optional<Double> toFinalSpark(MeasuredPull pull) {
        List<FittedCurve.Point> curve = result.verdict()
                .flatMap(Verdict::timing)
                .map(answer -> answer.curve().points())
                .orElse(List.of());
        return stays(Factor.TIMING)
                .flatMap(advance -> at(curve, advance))
                .flatMap(there -> pull.setting()
                        .advance()
                        .flatMap(advance -> at(curve, advance.deg()))
                        .map(here -> there - here));
    }

    private boolean offsets() {
        return result.plan()
                .timing()
                .map(timing -> timing.sets() == TimingPlan.Sets.OFFSET)
                .orElse(false);
    }

    private Optional<Plot.Band> band(List<FittedCurve.Point> curve) {
        if (curve.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Plot.Band(
                curve.stream()
                        .map(point -> new Point(
                                point.setting(), unit.fromSi(point.interval().low())))
                        .toList(),
                curve.stream()
                        .map(point -> new Point(
                                point.setting(), unit.fromSi(point.interval().high())))
                        .toList()));
    }

    private Optional<Point> chosen(SweepAnswer answer) {
        return stays(answer.factor())
                .flatMap(place -> at(curve(answer), place).map(y -> new Point(place, unit.fromSi(y))));
    }

    private Optional<Double> stays(Factor factor) {
        return result.verdict()
                .flatMap(Verdict::chosen)
                .map(Chosen::setting)
                .flatMap(setting -> factor == Factor.MIXTURE
                        ? setting.lambda().map(Lambda::value)
                        : setting.advance().or(setting::offset).map(Advance::deg));
    }

    /** The fitted curve. That of the mixture is at the best spark of each speed: it is moved to the spark that stays, so that both charts agree there. */
    private List<FittedCurve.Point> curve(SweepAnswer answer) {
        Optional<SweepAnswer> timing = result.verdict().flatMap(Verdict::timing);
        if (answer.factor() == Factor.TIMING || timing.isEmpty()) {
            return answer.curve().points();
        }
        double by = stays(Factor.TIMING)
                .flatMap(advance -> at(timing.get().curve().points(), advance))
                .flatMap(there -> stays(Factor.MIXTURE)
                        .flatMap(lambda -> at(answer.curve().points(), lambda))
                        .map(here -> there - here))
                .orElse(0.0);
        return answer.curve().points().stream()
                .map(point -> new FittedCurve.Point(
                        point.setting(),
                        point.response() + by,
                        Span.of(point.interval().low() + by, point.interval().high() + by)))
                .toList();
    }

    /** The fitted curve at a place between its points. */
    private static Optional<Double> at(List<FittedCurve.Point> curve, double place) {
        for (int index = 1; index < curve.size(); index++) {
            FittedCurve.Point left = curve.get(index - 1);
            FittedCurve.Point right = curve.get(index);
            if (place >= left.setting() && place <= right.setting()) {
                double share = (place - left.setting()) / (right.setting() - left.setting());
                return Optional.of(left.response() + share * (right.response() - left.response()));
            }
        }
        return Optional.empty();
    }
}
