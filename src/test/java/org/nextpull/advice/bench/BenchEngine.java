package org.nextpull.advice.bench;

import java.util.random.RandomGenerator;
import org.nextpull.fit.Ladder;
import org.nextpull.unit.Span;

/** One invented engine with a known truth, and one day's sweep on it. */
final class BenchEngine {
    final double peak;
    final double curvature;
    final double asymmetry;
    final double scatterPercent;
    final double knockAt;
    final double guess;
    final double start;
    final double resolution;
    final Span allowed;
    final double pooledPercent;
    private final double drift;
    private final EngineClass.Outliers outliers;
    private final RandomGenerator random;

    /** Degrees of freedom of the scatter that earlier repeats gave. */
    static final double POOLED_DOF = 6;

    private BenchEngine(EngineClass engines, Kind kind, RandomGenerator random) {
        this.random = random;
        peak = EngineClass.uniform(random, kind.peaks());
        curvature = EngineClass.uniform(random, engines.curvature());
        asymmetry = EngineClass.uniform(random, engines.asymmetry());
        Span scatter = engines.scatterPercent();
        scatterPercent = scatter.low() * Math.pow(scatter.high() / scatter.low(), random.nextDouble());
        drift = EngineClass.uniform(random, engines.driftPercentPerPull());
        outliers = engines.outliers();
        guess = peak + engines.guessSd() * random.nextGaussian();
        resolution = random.nextBoolean() ? 0.5 : 1;
        double wanted = guess - EngineClass.uniform(random, engines.startBelowGuess());
        start = Math.rint(wanted / resolution) * resolution;
        knockAt = peak + EngineClass.uniform(random, engines.knockFromPeak());
        allowed = Span.of(
                start - 10, Math.min(kind.most, new Ladder(start, resolution, kind.peaks()).roundedDown(guess + 10)));
        double chiSquare = 0;
        for (int i = 0; i < POOLED_DOF; i++) {
            double z = random.nextGaussian();
            chiSquare += z * z;
        }
        pooledPercent = scatterPercent * Math.sqrt(chiSquare / POOLED_DOF);
    }

    static BenchEngine draw(EngineClass engines, Kind kind, RandomGenerator random) {
        return new BenchEngine(engines, kind, random);
    }

    /** What the engine is swept in. */
    enum Kind {
        TIMING(20, 38, 1000),
        MIXTURE(84, 92, 95);

        private final double lowest;
        private final double highest;
        private final double most;

        Kind(double lowest, double highest, double most) {
            this.lowest = lowest;
            this.highest = highest;
            this.most = most;
        }

        Span peaks() {
            return Span.of(lowest, highest);
        }
    }

    private double ratio(double setting) {
        double x = setting - peak;
        return 1 - curvature * x * x * (1 - asymmetry * x / 10);
    }

    boolean knocks(double setting) {
        return setting > knockAt;
    }

    /** Highest setting that the plan and the engine allow. */
    double permitted() {
        return Math.min(knockAt, allowed.high());
    }

    /** Share of the best permitted torque that a setting gives away. */
    double loss(double setting) {
        return 1 - ratio(setting) / ratio(Math.min(peak, permitted()));
    }

    /** One pull, in N.m. */
    double pull(double setting, int order) {
        double sd = scatterPercent * (random.nextDouble() < outliers.share() ? outliers.times() : 1);
        double noise = sd * random.nextGaussian();
        return 200 * ratio(setting) * (1 + (drift * order + noise) / 100);
    }

    /** Natural log of a graded knock level whose limit is 0. */
    double lnKnock(double setting, KnockSensor sensor) {
        double slope = sensor.slope();
        return Math.max(sensor.floor(), slope * (setting - knockAt) + sensor.scatter() * random.nextGaussian());
    }

    /** A graded knock sensor: growth of ln(level) a degree, scatter of it, and its floor. */
    record KnockSensor(double slope, double floor, double scatter) {}
}
