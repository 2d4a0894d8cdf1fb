package org.nextpull.fit;

import org.nextpull.channel.SparkMap;
import org.nextpull.math.NormalMixture;
import org.nextpull.unit.Span;

/** The best-torque map at one mixture: a belief a row. Immutable. */
public final class PeakMap {
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    private final SurfacePosterior posterior;
    private final double hundredths;
    private final double[] mean;

    PeakMap(SurfacePosterior posterior, double hundredths) {
        this.posterior = posterior;
        this.hundredths = hundredths;
        mean = new double[posterior.rows().size()];
        for (int r = 0; r < mean.length; r++) {
            int row = r;
            mean[r] = posterior.mean(cell -> peak(cell, row));
        }
    }

    private double peak(SolvedCell cell, int row) {
        return SparkMixture.peak(posterior.columns(), cell, row, hundredths);
    }

    private double sd(SolvedCell cell, int row) {
        return Math.sqrt(SparkMixture.variance(posterior.columns(), cell, row, hundredths));
    }

    /** Mean of each row, degrees. */
    public double[] means() {
        return mean.clone();
    }

    public double mean(int row) {
        return mean[row];
    }

    /** Standard deviation of a row, degrees. */
    public double sd(int row) {
        return belief(row).sd();
    }

    /** The belief of a row itself, for decisions. */
    NormalMixture belief(int row) {
        return posterior.mixture(cell -> peak(cell, row), cell -> sd(cell, row));
    }

    /** The belief of a row as it is reported: wider, since priors may be off. */
    public NormalMixture reported(int row) {
        return belief(row).widened(posterior.surface().priors().limitWidening());
    }

    /** The chance that a row's peak lies below an advance. */
    public double chanceBelow(int row, double deg) {
        return belief(row).below(deg);
    }

    /** 5 to 95 % of a row as it is reported, degrees. */
    public Span ninety(int row) {
        NormalMixture reported = reported(row);
        return Span.of(reported.quantile(LOW), reported.quantile(HIGH));
    }

    /** The means as a map over the rows. */
    public SparkMap map() {
        return SparkMap.of(posterior.rows().rpm(), mean);
    }
}
