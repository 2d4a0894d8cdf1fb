package org.nextpull.math;

/** Quantiles of a sample, by linear interpolation between order statistics (Hyndman and Fan 1996, definition 7). */
public final class Quantiles {
    private final Series sorted;

    private Quantiles(Series sorted) {
        this.sorted = sorted;
    }

    /**
     * The quantiles of a sample in any order.
     *
     * @throws IllegalArgumentException when the sample is empty
     */
    public static Quantiles of(Series sample) {
        if (sample.isEmpty()) {
            throw new IllegalArgumentException("an empty sample has no quantiles");
        }
        return new Quantiles(sample.sorted());
    }

    /**
     * The quantile at a fraction; the ends are the least and the largest number.
     *
     * @param fraction from 0 to 1, dimensionless
     * @throws IllegalArgumentException when it is not, or NaN
     */
    public double at(double fraction) {
        if (!(fraction >= 0 && fraction <= 1)) {
            throw new IllegalArgumentException("a fraction lies from 0 to 1, not at " + fraction);
        }
        double place = fraction * (sorted.size() - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.size() - 1);
        return sorted.get(below) + (place - below) * (sorted.get(above) - sorted.get(below));
    }
}
