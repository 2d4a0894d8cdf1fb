package org.nextpull.engine.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.nextpull.engine.EnginePoint;
import org.nextpull.engine.ModelEngine;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;
import org.nextpull.unit.Torque;

/** Finds what is best for an engine by asking it directly, as no operator can. */
public final class TruthFinder {
    private static final double GRID_RPM = 250;
    private static final double CLOSE = 2e-4;
    private static final double PULL_RPM_PER_SECOND = 300;
    private static final Span ADVANCES = Span.of(-5, 60);
    private static final Span MIXTURES = Span.of(0.72, 1.08);
    private static final double NEAR = 0.998;
    private static final double BEYOND_PEAK_DEG = 10;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final ModelEngine engine;
    private final OperatingPoint setting;
    private final Span band;

    private TruthFinder(ModelEngine engine, OperatingPoint setting, Span band) {
        this.engine = engine;
        this.setting = setting;
        this.band = band;
    }

    /**
     * Finds it.
     *
     * @param engine the engine
     * @param setting mixture, fuel and surroundings that are looked at
     * @param band engine speeds in rpm
     * @param rowsEveryRpm distance of the rows
     * @throws IllegalArgumentException when the engine cannot run at the setting
     */
    public static Truth find(ModelEngine engine, OperatingPoint setting, Span band, double rowsEveryRpm) {
        TruthFinder finder = new TruthFinder(engine, setting, band);
        double peak = maximum(ADVANCES, deg -> finder.mean(setting.atAdvance(deg)));
        double top = finder.mean(setting.atAdvance(peak));
        double near = finder.nearest(peak, top * NEAR);
        double lambda =
                maximum(MIXTURES, value -> finder.mean(setting.atAdvance(peak).atLambda(value)));
        List<Truth.Row> rows = new ArrayList<>();
        for (double rpm = band.low(); rpm <= band.high() + 1e-6; rpm += rowsEveryRpm) {
            OperatingPoint there = setting.atRpm(rpm);
            double best = maximum(ADVANCES, deg -> finder.torque(there.atAdvance(deg)));
            rows.add(new Truth.Row(
                    rpm,
                    Advance.ofDeg(best),
                    Torque.ofNewtonMetres(
                            finder.torque(there.atAdvance(best).in(OperatingPoint.Surroundings.reference())))));
        }
        return new Truth(
                Advance.ofDeg(peak),
                Advance.ofDeg(near),
                Lambda.of(lambda),
                Torque.ofNewtonMetres(finder.mean(setting.atAdvance(peak).in(OperatingPoint.Surroundings.reference()))),
                finder.onset(peak),
                rows);
    }

    private EnginePoint run(OperatingPoint point) {
        return engine.at(point)
                .value()
                .orElseThrow(() -> new IllegalArgumentException("the engine cannot run at " + point.rpm() + " rpm"));
    }

    private double torque(OperatingPoint point) {
        return run(point).torque().newtonMetres();
    }

    /** Plain mean over the band. */
    private double mean(OperatingPoint point) {
        double sum = 0;
        int count = 0;
        for (double rpm = band.low(); rpm <= band.high() + 1e-6; rpm += GRID_RPM) {
            sum += torque(point.atRpm(rpm));
            count++;
        }
        return sum / count;
    }

    /** Least advance whose mean reaches a torque, by halving. */
    private double nearest(double peak, double wanted) {
        double low = peak - BEYOND_PEAK_DEG * 2;
        double high = peak;
        while (high - low > 0.01) {
            double middle = (low + high) / 2;
            if (mean(setting.atAdvance(middle)) >= wanted) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private OptionalDouble onset(double peak) {
        double low = ADVANCES.low();
        double high = peak + BEYOND_PEAK_DEG;
        if (knocks(high) < 1) {
            return OptionalDouble.empty();
        }
        while (high - low > 0.01) {
            double middle = (low + high) / 2;
            if (knocks(middle) >= 1) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return OptionalDouble.of(high);
    }

    /** Expected number of knocking cycles of an accelerating pull over the band. */
    private double knocks(double deg) {
        double sum = 0;
        for (double rpm = band.low(); rpm <= band.high() + 1e-6; rpm += GRID_RPM) {
            double cycles = rpm / 120 * engine.design().cylinders() * GRID_RPM / PULL_RPM_PER_SECOND;
            double integral = run(setting.atRpm(rpm).atAdvance(deg)).knock().integral();
            sum += cycles * KnockSensor.probability(integral);
        }
        return sum;
    }

    /** Golden section search of a function with one top. */
    private static double maximum(Span span, DoubleUnaryOperator function) {
        double low = span.low();
        double high = span.high();
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = function.applyAsDouble(left);
        double atRight = function.applyAsDouble(right);
        while (high - low > CLOSE * span.width()) {
            if (atLeft > atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = function.applyAsDouble(left);
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = function.applyAsDouble(right);
            }
        }
        return (low + high) / 2;
    }

    /**
     * What is best for an engine over a band, without any scatter: what a sweep should find. Settings are best in the surroundings looked
     * at, for cool and damp air wants more advance, which no correction takes out; torques are stated in reference air.
     *
     * @param peak advance, the same at every speed, of the highest mean torque over the band at the mixture looked at
     * @param near least advance whose mean torque is within 0.2 % of that
     * @param mixture mixture of the highest mean torque at the peak advance
     * @param torque mean torque at the peak advance and the mixture looked at
     * @param onset least advance, the same at every speed, at which a pull is expected to knock once within the band; empty when it
     *     does not within ten degrees beyond the peak
     * @param rows the same speed by speed
     */
    public record Truth(
            Advance peak, Advance near, Lambda mixture, Torque torque, OptionalDouble onset, List<Row> rows) {
        public Truth {
            rows = List.copyOf(rows);
        }

        /**
         * One speed.
         *
         * @param rpm engine speed
         * @param peak advance of the highest torque
         * @param torque torque there
         */
        public record Row(double rpm, Advance peak, Torque torque) {}
    }
}
