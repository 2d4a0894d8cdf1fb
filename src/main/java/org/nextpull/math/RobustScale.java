package org.nextpull.math;

import java.util.Arrays;

/** Standard deviations that a few wild numbers do not move; each is consistent with the normal standard deviation. */
public final class RobustScale {
    /** 1 / (third quartile of the standard normal). */
    private static final double MAD_TO_SD = 1.482602218505602;

    /** 1 / (sqrt(2) times the 5/8 quantile of the standard normal). */
    private static final double QN_TO_SD = 2.219144465985076;

    /** Factors for 2 to 9 numbers, Croux and Rousseeuw 1992, "Time-efficient algorithms for two highly robust estimators". */
    private static final Series QN_SMALL = Series.of(0.399, 0.994, 0.512, 0.844, 0.611, 0.857, 0.669, 0.872);

    private RobustScale() {}

    /**
     * Median absolute deviation from the median, times 1.4826. Zero when more than half of the numbers are equal.
     *
     * @throws IllegalStateException when empty
     */
    public static double mad(Series sample) {
        double median = sample.median();
        return MAD_TO_SD * sample.map(value -> Math.abs(value - median)).median();
    }

    /**
     * Qn of Rousseeuw and Croux (JASA 88, 1993): the first quartile of the distances between all pairs, with the factors for small
     * samples. Stands half of the numbers being wrong, wastes less of the good ones than {@link #mad} and needs no centre. Takes
     * n squared steps: meant for samples, not for signals.
     *
     * @throws IllegalStateException with fewer than two numbers
     */
    public static double qn(Series sample) {
        int size = sample.size();
        if (size < 2) {
            throw new IllegalStateException("needs at least 2 numbers and has " + size);
        }
        double[] distances = new double[size * (size - 1) / 2];
        int next = 0;
        for (int left = 0; left < size; left++) {
            for (int right = left + 1; right < size; right++) {
                distances[next++] = Math.abs(sample.get(left) - sample.get(right));
            }
        }
        Arrays.sort(distances);
        int half = size / 2 + 1;
        return QN_TO_SD * smallSampleFactor(size) * distances[half * (half - 1) / 2 - 1];
    }

    private static double smallSampleFactor(int size) {
        if (size <= 9) {
            return QN_SMALL.get(size - 2);
        }
        return size % 2 == 1 ? size / (size + 1.4) : size / (size + 3.8);
    }
}
