package org.nextpull.advice.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import org.nextpull.fit.SpeedRows;
import org.nextpull.fit.SurfacePull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/** One invented engine with a best advance by speed, a best mixture, and knock; what it shows in a pull, and what a setting leaves. */
final class MapEngine {
    static final int ROWS = 14;
    static final double GUESS_DEG = 27;
    static final Lambda GUESS_LAMBDA = Lambda.of(0.88);
    private static final double FAR_DEG = 30;
    private static final double DEAF_DEG = 2;
    private static final double[] WAVES = {Math.sqrt(0.6), Math.sqrt(0.25), Math.sqrt(0.15)};
    private static final int KNOTS = 15;
    private static final double KNOT_KRPM = 0.5;
    private static final double LEANEST = 7;
    private static final double RICHEST = -9;

    final SpeedRows rows;
    final double[] peak = new double[ROWS];
    final double[] onset = new double[ROWS];
    private final double[] curvature = new double[ROWS];
    private final double[] asymmetry = new double[ROWS];
    final double shift;
    final double bestHundredths;
    private final double fall;
    private final double onsetShift = 0.25;
    private final double levelSlope;
    private final double scatter;
    private final double smooth;
    private final double rowError;
    private final double drift;
    private final boolean sweepsMixture;
    private final Random random;

    MapEngine(MapClass kind, boolean sweepsMixture, long seed) {
        // neighbouring seeds of Random begin alike
        random = new Random(new SplittableRandom(seed).nextLong());
        this.sweepsMixture = sweepsMixture;
        double[] rpm = new double[ROWS];
        for (int r = 0; r < ROWS; r++) {
            rpm[r] = 3125 + 250.0 * r;
        }
        rows = SpeedRows.ofRpm(rpm);
        double k = 100 * logUniform(kind.curvature());
        double level = GUESS_DEG + kind.guessSd() * random.nextGaussian();
        double rise = uniform(kind.rise());
        double kSlope = 0.15 * random.nextGaussian();
        double kWave = 0.10 * random.nextGaussian();
        double g = kind.asymmetry() * (2 * random.nextDouble() - 1);
        double gSlope = 0.06 * random.nextGaussian();
        double[] wave = wave(kind.waveSd());
        boolean knocks = random.nextDouble() < kind.knocking();
        double onsetLevel = 6 * random.nextDouble() - 3;
        double onsetSlope = 12 * random.nextDouble() - 6;
        for (int r = 0; r < ROWS; r++) {
            double u = (r + 0.5) / ROWS - 0.5;
            peak[r] = level + rise * u + wave[r];
            curvature[r] = k * Math.exp(2 * kSlope * u + kWave * Math.sqrt(2) * Math.cos(2 * Math.PI * (u + 0.5)));
            asymmetry[r] = g + gSlope * (rpm[r] - 4750) / 1000;
            onset[r] = peak[r] + (knocks ? onsetLevel + onsetSlope * u : FAR_DEG);
        }
        shift = sweepsMixture ? 0.25 * random.nextGaussian() : 0;
        bestHundredths = sweepsMixture ? Math.max(-7, Math.min(5, 2.5 * random.nextGaussian())) : 0;
        fall = sweepsMixture ? 100 * logUniform(Span.of(1e-4, 4e-4)) : 0;
        levelSlope = 0.35 + 0.08 * random.nextGaussian();
        scatter = logUniform(kind.scatter());
        smooth = scatter * (0.2 + 0.4 * random.nextDouble());
        rowError = 0.1 + 0.2 * random.nextDouble();
        drift = uniform(kind.drift());
    }

    /**
     * The same engine on another fuel: its best advance as a whole, its rise and its waves differ, its curvature by a seventh, its best
     * mixture by 0.015. Scatter, drift and what spark and mixture have to do with one another are those of the engine.
     */
    MapEngine(MapEngine first, long seed) {
        random = new Random(new SplittableRandom(seed).nextLong());
        rows = first.rows;
        double level = 3 * random.nextGaussian();
        double rise = 0.3 * random.nextGaussian();
        double bend = Math.exp(0.15 * random.nextGaussian());
        double[] wave = wave(0.4);
        for (int r = 0; r < ROWS; r++) {
            double moved = level + rise * (rows.rpm(r) - 4750) / 1000 + wave[r];
            peak[r] = first.peak[r] + moved;
            onset[r] = first.onset[r] + moved;
            curvature[r] = first.curvature[r] * bend;
            asymmetry[r] = first.asymmetry[r];
        }
        sweepsMixture = first.sweepsMixture;
        shift = first.shift;
        bestHundredths =
                sweepsMixture ? Math.max(-7, Math.min(5, first.bestHundredths + 1.5 * random.nextGaussian())) : 0;
        fall = first.fall;
        levelSlope = first.levelSlope;
        scatter = first.scatter;
        smooth = first.smooth;
        rowError = first.rowError;
        drift = first.drift;
    }

    /** A smooth wave over speed: values a thousand rpm apart are hardly of one mind. */
    private double[] wave(double sd) {
        double[] wave = new double[ROWS];
        double[] knots = new double[KNOTS];
        for (int j = 0; j < KNOTS; j++) {
            knots[j] = random.nextGaussian();
        }
        for (int r = 0; r < ROWS; r++) {
            double squares = 0;
            for (int j = 0; j < KNOTS; j++) {
                // Gaussian bumps of width 1/sqrt 2 give a correlation exp(-d^2/2) in krpm
                double d = (rows.rpm(r) - 4750) / 1000 - (j - (KNOTS - 1) / 2.0) * KNOT_KRPM;
                double bump = Math.exp(-d * d);
                wave[r] += knots[j] * bump;
                squares += bump * bump;
            }
            wave[r] *= sd / Math.sqrt(squares);
        }
        return wave;
    }

    private double uniform(Span span) {
        return span.low() + (span.high() - span.low()) * random.nextDouble();
    }

    private double logUniform(Span span) {
        return Math.exp(Math.log(span.low()) + Math.log(span.high() / span.low()) * random.nextDouble());
    }

    Random random() {
        return random;
    }

    double hundredths(Optional<Lambda> lambda) {
        return lambda.map(l -> (l.value() - GUESS_LAMBDA.value()) * 100).orElse(0.0);
    }

    /** Best advance of a row at a mixture. */
    double peak(int row, double z) {
        return peak[row] + shift * z;
    }

    double onset(int row, double z) {
        return onset[row] - onsetShift * z;
    }

    double sparkFall(int row, double deg, double z) {
        double x = deg - peak(row, z);
        double near = Math.max(-14, Math.min(14, x));
        return curvature[row] * x * x * Math.max(0.3, 1 - asymmetry[row] * near / 10);
    }

    private double mixtureFall(double z) {
        return fall * (z - bestHundredths) * (z - bestHundredths);
    }

    /** Torque of a row at its best advance in a stretch where its speed is held, percent, with what differs from stretch to stretch. */
    double level(int row, int order) {
        return torque((row + 0.5) / ROWS) + scatter * random.nextGaussian() + drift * order;
    }

    private static double torque(double u) {
        return 10 * Math.sin(3 * u);
    }

    /** What a pull shows, percent; a band end is missing in one of ten. */
    SurfacePull pull(int order, double[] deg, double z) {
        double level = scatter * random.nextGaussian() * (random.nextDouble() < 0.05 ? 5 : 1);
        double[] shape = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
        int missing = random.nextDouble() < 0.1 ? 1 + random.nextInt(3) : 0;
        boolean atEnd = random.nextBoolean();
        List<SurfacePull.Reading> readings = new ArrayList<>();
        for (int r = 0; r < ROWS; r++) {
            double u = (r + 0.5) / ROWS;
            double bent = 0;
            for (int j = 1; j <= 3; j++) {
                bent += smooth * WAVES[j - 1] * Math.sqrt(2) * shape[j - 1] * Math.cos(Math.PI * j * u);
            }
            double own = rowError * random.nextGaussian() * (random.nextDouble() < 0.004 ? 5 : 1);
            boolean isMissing = atEnd ? r >= ROWS - missing : r < missing;
            if (!isMissing) {
                double percent =
                        torque(u) + level + bent + own + drift * order - sparkFall(r, deg[r], z) - mixtureFall(z);
                Optional<Lambda> lambda =
                        sweepsMixture ? Optional.of(Lambda.of(GUESS_LAMBDA.value() + z / 100)) : Optional.empty();
                readings.add(new SurfacePull.Reading(r, Advance.ofDeg(deg[r]), lambda, percent, 0));
            }
        }
        return new SurfacePull(0, order, false, readings);
    }

    /** Rows that ring in a pull; a shallow knock may stay unheard. */
    List<Integer> heard(double[] deg, double z) {
        List<Integer> heard = new ArrayList<>();
        for (int r = 0; r < ROWS; r++) {
            double depth = deg[r] - onset(r, z);
            if (depth > 0 && random.nextDouble() < depth / DEAF_DEG) {
                heard.add(r);
            }
        }
        return heard;
    }

    /** ln of a graded level over its limit. */
    double lnLevel(int row, double deg, double z) {
        return levelSlope * (deg - onset(row, z)) + 0.3 * random.nextGaussian();
    }

    /** Deepest that a pull goes into knock, degrees; not positive where it does not. */
    double depth(double[] deg, double z) {
        double deepest = -FAR_DEG;
        for (int r = 0; r < ROWS; r++) {
            deepest = Math.max(deepest, deg[r] - onset(r, z));
        }
        return deepest;
    }

    private double loss(double[] deg, double z) {
        double sum = mixtureFall(z);
        for (int r = 0; r < ROWS; r++) {
            sum += sparkFall(r, deg[r], z) / ROWS;
        }
        return sum;
    }

    /** Percent of the band left by a setting against the best that a margin from knock allows. */
    double left(double[] deg, double z, double margin) {
        double best = Double.POSITIVE_INFINITY;
        for (double at = RICHEST; at <= LEANEST; at += 0.25) {
            double there = sweepsMixture ? at : 0;
            double[] allowed = new double[ROWS];
            for (int r = 0; r < ROWS; r++) {
                allowed[r] = Math.min(peak(r, there), onset(r, there) - margin);
            }
            best = Math.min(best, loss(allowed, there));
        }
        return loss(deg, z) - best;
    }

    /** The best single number, and what the best map would gain over it, percent. */
    double bestFlat() {
        double best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (double deg = 0; deg < 60; deg += 0.01) {
            double lost = flatLoss(deg);
            if (lost < least) {
                least = lost;
                best = deg;
            }
        }
        return best;
    }

    double flatLoss(double deg) {
        double sum = 0;
        for (int r = 0; r < ROWS; r++) {
            sum += sparkFall(r, deg, 0) / ROWS;
        }
        return sum;
    }
}
