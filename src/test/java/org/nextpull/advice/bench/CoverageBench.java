package org.nextpull.advice.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.IntStream;
import org.nextpull.fit.Permitted;
import org.nextpull.fit.Sweep;
import org.nextpull.fit.SweepPoint;
import org.nextpull.fit.SweepPosterior;
import org.nextpull.fit.SweepPriors;
import org.nextpull.unit.Span;

/**
 * Sweeps at settings fixed beforehand, over flat and steep engines, quiet and noisy ones, five to ten pulls, steady and drifting
 * days, up or in no order: among the intervals that are printed, how many hold the truth.
 */
final class CoverageBench {
    private CoverageBench() {}

    /**
     * What was found.
     *
     * @param printedPercent share of sweeps that are bracketed, so that an interval is printed
     * @param heldPercent share of those whose 90 % interval holds the true peak
     */
    record Coverage(double printedPercent, double heldPercent) {}

    private record One(boolean printed, boolean held) {}

    /** Fits so many sweeps with the usual priors, the curvature prior shifted by a factor. */
    static Coverage of(BenchResult.Sample sample, double curvatureFactor) {
        List<One> all = IntStream.range(0, sample.engines())
                .parallel()
                .mapToObj(i -> one(
                        RandomGeneratorFactory.of("L64X128MixRandom").create(sample.seed() * 1_000_003 + i),
                        curvatureFactor))
                .toList();
        double printed = all.stream().filter(One::printed).count();
        double held = all.stream().filter(one -> one.printed() && one.held()).count();
        return new Coverage(100 * printed / all.size(), 100 * held / printed);
    }

    private static One one(RandomGenerator random, double curvatureFactor) {
        double peak = 22 + 14 * random.nextDouble();
        double k = 1.5e-4 * Math.pow(6, random.nextDouble());
        double g = 0.7 * random.nextDouble() - 0.35;
        double scatter = 0.1 * Math.pow(6, random.nextDouble());
        double drift = 0.2 * random.nextDouble() - 0.1;
        int pulls = 5 + random.nextInt(6);
        double first = Math.rint(peak - 6 - 4 * random.nextDouble());
        double last = Math.rint(peak + 2 + 5 * random.nextDouble());
        List<Double> settings = new ArrayList<>();
        for (int i = 0; i < pulls; i++) {
            settings.add(first + Math.rint((last - first) * i / (pulls - 1)));
        }
        if (random.nextBoolean()) {
            for (int i = pulls - 1; i > 0; i--) {
                Collections.swap(settings, i, random.nextInt(i + 1));
            }
        }
        List<SweepPoint> points = new ArrayList<>();
        double top = first;
        for (int i = 0; i < pulls; i++) {
            double x = settings.get(i) - peak;
            double noise = scatter * (random.nextDouble() < 0.05 ? 5 : 1) * random.nextGaussian();
            double response = 180 * (1 - k * x * x * (1 - g * x / 10)) * (1 + (drift * i + noise) / 100);
            points.add(new SweepPoint(settings.get(i), response, i + 1, i));
            top = Math.max(top, settings.get(i));
        }
        SweepPriors usual = SweepPriors.timing(peak + 3 * random.nextGaussian());
        SweepPriors priors = usual.withCurvature(usual.curvature().times(curvatureFactor));
        SweepPosterior posterior = SweepPosterior.of(
                Sweep.of(points, priors, Span.of(first - 4, last + 8), new Permitted(last + 8, 0.002)));
        boolean printed = posterior.probabilityPeakBelow(top) >= 0.95 && posterior.peakQuantile(0.5) > first;
        boolean held = posterior.peakQuantile(0.05) <= peak && peak <= posterior.peakQuantile(0.95);
        return new One(printed, held);
    }
}
