package org.nextpull.simulator.bench;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import org.nextpull.engine.Combustion;
import org.nextpull.engine.EngineDesign;
import org.nextpull.engine.EnginePoint;
import org.nextpull.engine.ExampleEngines;
import org.nextpull.engine.ModelEngine;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.engine.Surroundings;
import org.nextpull.engine.cycle.BurnDuration;
import org.nextpull.engine.gas.EngineFuel;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * A physical engine on a day with scatter and drift: its response is the mean torque at four speeds, and it knocks where the mean cycle
 * autoignites at any of them.
 */
final class PhysicalEngine {
    static final double RESOLUTION = 0.5;
    private static final double LEAST_DEG = 0;
    private static final double MOST_DEG = 48;
    private static final List<String> FUELS = List.of("e5", "e10", "e85");
    /** An operator starts where the engine is known to run without knock. */
    private static final double SAFE_START = 2;

    /** What a plan takes for its largest step when it does not say, in degrees. */
    private static final double NATURAL_STEP = 2;

    private static final double BOOSTED_STEP = 1;

    private static final double DEGREES_OF_FREEDOM = 6;

    final double start;
    final double guess;
    final double scatterPercent;
    final double pooledPercent;
    final double peak;
    final double onset;
    final double usualStep;
    private final ModelEngine engine;
    private final EngineFuel fuel;
    private final Lambda lambda;
    private final double[] speeds;
    private final double driftPercent;
    private final RandomGenerator random;
    private final Map<Double, Point> known = new HashMap<>();

    /**
     * At one advance.
     *
     * @param torque mean over the speeds, in N.m
     * @param knocks whether the mean cycle autoignites at any of them
     */
    private record Point(double torque, boolean knocks) {}

    PhysicalEngine(RandomGenerator random) {
        this.random = random;
        int kind = random.nextInt(3);
        usualStep = kind == 2 ? BOOSTED_STEP : NATURAL_STEP;
        EngineDesign base = switch (kind) {
            case 0 -> ExampleEngines.hatchback();
            case 1 -> ExampleEngines.hillClimb();
            default -> ExampleEngines.boosted();
        };
        double ratio = base.cylinder().drive().compressionRatio() + 2.5 * random.nextDouble() - 1.5;
        double burn = base.combustion().duration().constant() * Math.exp(0.12 * random.nextGaussian());
        EngineDesign design = base.withCompressionRatio(ratio)
                .withCombustion(new Combustion(
                        new BurnDuration(burn),
                        base.combustion().spread(),
                        base.combustion().completeness(),
                        base.combustion().hotSpot()));
        engine = ModelEngine.of(design).value().orElseThrow();
        fuel = EngineFuel.named(FUELS.get(random.nextInt(FUELS.size()))).value().orElseThrow();
        lambda = Lambda.of(0.84 + 0.08 * random.nextDouble());
        double tuned = base.breathing().resonance().tunedRpm();
        double width = 0.3 + 0.2 * random.nextDouble();
        speeds = new double[] {
            tuned * (1 - width), tuned * (1 - width / 3), tuned * (1 + width / 3), tuned * (1 + width / 2)
        };
        scatterPercent = 0.15 * Math.pow(4, random.nextDouble());
        driftPercent = 0.03 * random.nextGaussian();
        peak = top();
        onset = onset();
        guess = peak + 3 * random.nextGaussian();
        double wanted = Math.min(guess - 6, onset - SAFE_START) - 4 * random.nextDouble();
        start = Math.rint(wanted / RESOLUTION) * RESOLUTION;
        double chiSquare = 0;
        for (int i = 0; i < DEGREES_OF_FREEDOM; i++) {
            double z = random.nextGaussian();
            chiSquare += z * z;
        }
        pooledPercent = scatterPercent * Math.sqrt(chiSquare / DEGREES_OF_FREEDOM);
    }

    private Point at(double deg) {
        return known.computeIfAbsent(deg, this::calculate);
    }

    private Point calculate(double deg) {
        double sum = 0;
        boolean knocks = false;
        for (double rpm : speeds) {
            EnginePoint point = engine.at(
                            new OperatingPoint(rpm, Advance.ofDeg(deg), lambda, fuel, Surroundings.reference()))
                    .value()
                    .orElseThrow();
            sum += point.torque().newtonMetres();
            knocks |= point.knock().integral() >= 1;
        }
        return new Point(sum / speeds.length, knocks);
    }

    double torque(double deg) {
        return at(deg).torque();
    }

    boolean knocks(double deg) {
        return at(deg).knocks();
    }

    /** Top of the torque, by thirds: the curve has one. */
    private double top() {
        double low = LEAST_DEG;
        double high = MOST_DEG;
        while (high - low > 0.05) {
            double left = low + (high - low) / 3;
            double right = high - (high - low) / 3;
            if (torque(left) < torque(right)) {
                low = left;
            } else {
                high = right;
            }
        }
        return (low + high) / 2;
    }

    /** Where knock begins, by halving; far above all advances where it does not. */
    private double onset() {
        if (!knocks(MOST_DEG)) {
            return 99;
        }
        double low = LEAST_DEG - 10;
        double high = MOST_DEG;
        while (high - low > 0.05) {
            double middle = (low + high) / 2;
            if (knocks(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    /** Torque left at a setting against the best that keeps so far below knock, percent; none where it is beyond that. */
    double lossPercent(double deg, double marginDeg) {
        return Math.max(0, 100 * (1 - torque(deg) / torque(Math.min(peak, onset - marginDeg))));
    }

    /** One pull. */
    double pull(double deg, int order) {
        double noise = scatterPercent * random.nextGaussian();
        return torque(deg) * (1 + (driftPercent * order + noise) / 100);
    }
}
