package org.nextpull.math;

/** A quantity known as a mixture of normal distributions. Immutable. */
public final class NormalMixture {
    private static final double TAIL_SDS = 9;
    private static final int HALVINGS = 60;

    private final double[] weights;
    private final double[] means;
    private final double[] sds;

    /**
     * Arrays run in parallel and are copied.
     *
     * @param weights not negative, summing to 1
     * @param means finite
     * @param sds not negative; zero is a point
     * @throws IllegalArgumentException where the arrays are empty or differ in length
     */
    public NormalMixture(double[] weights, double[] means, double[] sds) {
        if (weights.length == 0 || weights.length != means.length || weights.length != sds.length) {
            throw new IllegalArgumentException("weights, means and spreads must be as many, and one at least");
        }
        this.weights = weights.clone();
        this.means = means.clone();
        this.sds = sds.clone();
    }

    public double mean() {
        double sum = 0;
        for (int i = 0; i < means.length; i++) {
            sum += weights[i] * means[i];
        }
        return sum;
    }

    public double sd() {
        double mean = mean();
        double sum = 0;
        for (int i = 0; i < means.length; i++) {
            sum += weights[i] * (sds[i] * sds[i] + (means[i] - mean) * (means[i] - mean));
        }
        return Math.sqrt(sum);
    }

    /** The same with the standard deviation of each part multiplied. */
    public NormalMixture widened(double factor) {
        double[] newSds = new double[sds.length];
        for (int i = 0; i < sds.length; i++) {
            newSds[i] = factor * sds[i];
        }
        return new NormalMixture(weights, means, newSds);
    }

    /** The quantity in another scale: {@code origin + scale * value}; the scale is positive. */
    public NormalMixture transformed(double origin, double scale) {
        double[] newMeans = new double[means.length];
        double[] newSds = new double[means.length];
        for (int i = 0; i < means.length; i++) {
            newMeans[i] = origin + scale * means[i];
            newSds[i] = scale * sds[i];
        }
        return new NormalMixture(weights, newMeans, newSds);
    }

    /** Probability of a value below this one. */
    public double below(double value) {
        double sum = 0;
        for (int i = 0; i < means.length; i++) {
            double part = sds[i] > 0 ? Normal.below((value - means[i]) / sds[i]) : (value > means[i] ? 1 : 0);
            sum += weights[i] * part;
        }
        return sum;
    }

    /** The value below which that probability lies, by halving; 0 and 1 give the ends of what is looked at. */
    public double quantile(double probability) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < means.length; i++) {
            low = Math.min(low, means[i] - TAIL_SDS * sds[i]);
            high = Math.max(high, means[i] + TAIL_SDS * sds[i]);
        }
        for (int i = 0; i < HALVINGS && high - low > 1e-9; i++) {
            double middle = (low + high) / 2;
            if (below(middle) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
