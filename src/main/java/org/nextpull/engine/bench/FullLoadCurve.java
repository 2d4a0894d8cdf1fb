package org.nextpull.engine.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.nextpull.channel.SparkMap;
import org.nextpull.engine.EnginePoint;
import org.nextpull.engine.ModelEngine;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.finding.Outcome;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Span;

/** What an engine does at full load over speed: calculated at nodes, straight between them, flat beyond them. */
public final class FullLoadCurve {
    private static final double WIDEST_RPM = 100;

    private final double from;
    private final double step;
    private final List<EnginePoint> points;

    private FullLoadCurve(double from, double step, List<EnginePoint> points) {
        this.from = from;
        this.step = step;
        this.points = List.copyOf(points);
    }

    /**
     * Calculates it.
     *
     * @param engine the engine
     * @param spark advance over speed
     * @param setting mixture, fuel and surroundings; its speed and advance do not count
     * @param range speeds
     */
    public static Outcome<FullLoadCurve> of(ModelEngine engine, SparkMap spark, OperatingPoint setting, Span range) {
        int steps = Math.max(1, (int) Math.ceil(range.width() / WIDEST_RPM));
        double step = range.width() / steps;
        List<EnginePoint> points = new ArrayList<>();
        for (int node = 0; node <= steps; node++) {
            double rpm = range.low() + node * step;
            OperatingPoint point = new OperatingPoint(
                    rpm, Advance.ofDeg(spark.degAt(rpm)), setting.lambda(), setting.fuel(), setting.surroundings());
            Outcome<EnginePoint> outcome = engine.at(point);
            if (outcome.value().isEmpty()) {
                return Outcome.failed(outcome.findings());
            }
            points.add(outcome.value().get());
        }
        return Outcome.of(new FullLoadCurve(range.low(), step, points));
    }

    /** Brake torque in N.m. */
    public double torque(double rpm) {
        return at(rpm, point -> point.torque().newtonMetres());
    }

    /** Exhaust temperature in balance, in K. */
    double exhaustKelvins(double rpm) {
        return at(rpm, point -> point.exhaust().kelvins());
    }

    /** Autoignition integral of the mean cycle. */
    public double knockIntegral(double rpm) {
        return at(rpm, point -> point.knock().integral());
    }

    /** Fuel flow in kg/s. */
    public double fuelFlow(double rpm) {
        return at(rpm, point -> point.flow().fuel());
    }

    /** Absolute pressure in the inlet manifold, in Pa. */
    double manifoldPascals(double rpm) {
        return at(rpm, point -> point.flow().manifold().pascals());
    }

    /** Plain mean of the torque at the nodes from one speed to another. */
    public double meanTorque(Span band) {
        double sum = 0;
        int count = 0;
        for (double rpm = band.low(); rpm <= band.high() + 1e-6; rpm += WIDEST_RPM / 4) {
            sum += torque(rpm);
            count++;
        }
        return sum / count;
    }

    private double at(double rpm, ToDoubleFunction<EnginePoint> what) {
        double place = step == 0 ? 0 : (rpm - from) / step;
        double clipped = Math.max(0, Math.min(points.size() - 1.0, place));
        int node = (int) Math.min(points.size() - 2.0, Math.floor(clipped));
        double share = clipped - node;
        return (1 - share) * what.applyAsDouble(points.get(node)) + share * what.applyAsDouble(points.get(node + 1));
    }
}
