package org.nextpull.math;

/**
 * Robust mean and standard deviation by Algorithm A of ISO 5725-5:1998 (and ISO 13528): numbers further than 1.5 standard
 * deviations from the mean are pulled in to that distance, again and again.
 *
 * @param mean robust mean
 * @param standardDeviation robust standard deviation
 */
public record AlgorithmA(double mean, double standardDeviation) {
    private static final double CUT = 1.5;

    /** Makes the standard deviation of pulled-in normal numbers right again (ISO 5725-5, 6.2). */
    private static final double SHRINKAGE = 1.134;

    private static final int MOST_ROUNDS = 1000;
    private static final double SETTLED = 1e-13;

    /**
     * Runs the algorithm until it settles.
     *
     * @throws IllegalStateException with fewer than two numbers
     */
    public static AlgorithmA of(Series sample) {
        AlgorithmA now = new AlgorithmA(sample.median(), startingScale(sample));
        for (int round = 0; round < MOST_ROUNDS; round++) {
            AlgorithmA next = now.improved(sample);
            double scale = Math.abs(next.mean) + next.standardDeviation;
            boolean settled = Math.abs(next.mean - now.mean) <= SETTLED * scale
                    && Math.abs(next.standardDeviation - now.standardDeviation) <= SETTLED * scale;
            now = next;
            if (settled) {
                break;
            }
        }
        return now;
    }

    /** More than half equal numbers would fix the scale at 0 and with it the mean: then start from the plain one. */
    private static double startingScale(Series sample) {
        double mad = RobustScale.mad(sample);
        return mad > 0 ? mad : sample.standardDeviation();
    }

    private AlgorithmA improved(Series sample) {
        double reach = CUT * standardDeviation;
        Series pulled = sample.map(value -> Math.max(mean - reach, Math.min(mean + reach, value)));
        return new AlgorithmA(pulled.mean(), SHRINKAGE * pulled.standardDeviation());
    }
}
