package org.nextpull.fit;

/**
 * How well any method could know the vertex of a quadratic from these pulls: with half of n pulls at each of two settings h either
 * side of the peak and the curvature unknown, variance at least sigma^2/(4 k^2 n h^2).
 */
public final class InformationLimit {
    private InformationLimit() {}

    /**
     * Least standard deviation of the peak.
     *
     * @param reach half the stretch of settings that was tried
     */
    public static double peakSd(SweepPosterior posterior, double reach) {
        double scatter = posterior.scatterPercent() / 100;
        int pulls = posterior.sweep().points().size();
        return scatter / (2 * posterior.curvature().centre() * reach * Math.sqrt(pulls));
    }
}
