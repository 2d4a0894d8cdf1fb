package org.nextpull.fit;

/**
 * What is believed of an engine before its sweep.
 *
 * @param peak setting of the peak; Student-t with 4 degrees of freedom
 * @param lnCurvature natural log of the curvature k, k in 1/setting^2 (relative loss is k x^2 near the peak)
 * @param asymmetry share g of the cubic part: relative loss is k x^2 (1 - g x/10)
 * @param drift percent of the level a pull
 * @param lnScatter natural log of the pull-to-pull scatter in percent
 * @param pooled scatter of earlier repeats
 */
public record SweepPriors(
        Belief peak, Belief lnCurvature, Belief asymmetry, Belief drift, Belief lnScatter, PooledScatter pooled) {
    private static final Belief ASYMMETRY = new Belief(0, 0.25);
    /**
     * Centred on none: in a sweep that only climbs, drift and a shift of the peak look alike, so a centre off zero would move the peak
     * of a steady day.
     */
    private static final Belief DRIFT = new Belief(0, 0.02);

    private static final Belief LN_SCATTER = new Belief(Math.log(0.30), 0.5);

    /**
     * Timing, in degrees. Curvature centred on 5e-4 per deg^2, 5 to 95 %: 2.2e-4 to 1.1e-3; published curves span it: 1.6e-4 to
     * 2.2e-4 in the torque regression of Crossley and Cook (1991), 3e-4 to 4e-4 in textbook fall-off curves.
     */
    public static SweepPriors timing(double guessDeg) {
        return new SweepPriors(
                new Belief(guessDeg, 6),
                new Belief(Math.log(5e-4), 0.5),
                ASYMMETRY,
                DRIFT,
                LN_SCATTER,
                PooledScatter.none());
    }

    /** Mixture, in hundredths of lambda. Half an air-fuel ratio, 3.4 units, costs 0.1 to 0.5 %. */
    public static SweepPriors mixture(double guessHundredths) {
        return new SweepPriors(
                new Belief(guessHundredths, 6),
                new Belief(Math.log(2e-4), 0.5),
                ASYMMETRY,
                DRIFT,
                LN_SCATTER,
                PooledScatter.none());
    }

    public SweepPriors withPooled(PooledScatter newPooled) {
        return new SweepPriors(peak, lnCurvature, asymmetry, drift, lnScatter, newPooled);
    }

    public SweepPriors withPeak(Belief newPeak) {
        return new SweepPriors(newPeak, lnCurvature, asymmetry, drift, lnScatter, pooled);
    }

    public SweepPriors withLnCurvature(Belief newLnCurvature) {
        return new SweepPriors(peak, newLnCurvature, asymmetry, drift, lnScatter, pooled);
    }

    public SweepPriors withDrift(Belief newDrift) {
        return new SweepPriors(peak, lnCurvature, asymmetry, newDrift, lnScatter, pooled);
    }
}
