package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * Invented days with a known truth: two labels A and B around 200 N.m.
 *
 * @param order labels in pulling order, one letter a pull
 * @param differencePercent true difference of B from A
 * @param scatterPercent scatter of a pull of A
 * @param scatterRatio scatter of B over that of A
 * @param slow slow change of the day
 * @param outliers part of the pulls that scatter five times as wide
 */
record SimulatedDay(
        String order,
        double differencePercent,
        double scatterPercent,
        double scatterRatio,
        Slow slow,
        double outliers) {
    /** Linear change in percent over ten pulls, and what the first pull lacks, dying out as exp(-pull / 3). */
    record Slow(double percentPerTen, double coldPercent) {
        static final Slow NONE = new Slow(0, 0);
    }

    static SimulatedDay of(String order, double differencePercent, Slow slow) {
        return new SimulatedDay(order, differencePercent, 0.3, 1, slow, 0);
    }

    SimulatedDay withScatterRatio(double ratio) {
        return new SimulatedDay(order, differencePercent, scatterPercent, ratio, slow, outliers);
    }

    SimulatedDay withOutliers(double part) {
        return new SimulatedDay(order, differencePercent, scatterPercent, scatterRatio, slow, part);
    }

    List<ComparedPull> pulls(RandomGenerator random) {
        List<ComparedPull> pulls = new ArrayList<>();
        for (int place = 0; place < order.length(); place++) {
            String label = order.substring(place, place + 1);
            boolean isB = label.equals("B");
            double scatter = scatterPercent * (isB ? scatterRatio : 1);
            if (random.nextDouble() < outliers) {
                scatter *= 5;
            }
            double percent = 100
                    + (isB ? differencePercent : 0)
                    + slow.percentPerTen() * place / 10
                    - slow.coldPercent() * Math.exp(-place / 3.0)
                    + scatter * random.nextGaussian();
            pulls.add(new ComparedPull(place + 1, place, label, 2 * percent, List.of()));
        }
        return pulls;
    }

    /** Verdicts of many days, in percent of them. */
    Rates run(int days, double worth, Looks looks, long seed) {
        RandomGenerator random = new SplittableRandom(seed);
        int claims = 0;
        int same = 0;
        double half = 0;
        for (int day = 0; day < days; day++) {
            Comparison comparison = LabelComparison.of(pulls(random), new ComparisonRequest("A", worth, looks, seed))
                    .value()
                    .orElseThrow()
                    .comparisons()
                    .get(0);
            PercentInterval claim = comparison.basis().claimInterval();
            claims += claim.excludesZero() ? 1 : 0;
            same += comparison.verdict() == Verdict.SAME ? 1 : 0;
            half += comparison.difference().interval().halfWidth() / days;
        }
        return new Rates(100.0 * claims / days, 100.0 * same / days, half);
    }

    /** Days on which a difference was claimed, whatever the worth; days with "same"; mean half width of the interval. */
    record Rates(double claims, double same, double halfWidth) {}
}
