package org.nextpull.fit;

import org.nextpull.unit.Span;

/**
 * What is believed of an engine before its sweep.
 *
 * @param peak setting of the peak; Student-t with 4 degrees of freedom
 * @param curvature of the curvature k, in 1/setting^2 (relative loss is k x^2 near the peak)
 * @param asymmetry share g of the cubic part: relative loss is k x^2 (1 - g x/10)
 * @param drift percent of the level a pull
 * @param lnScatter natural log of the pull-to-pull scatter in percent
 * @param pooled scatter of earlier repeats
 */
public record SweepPriors(
        Belief peak, CurvaturePrior curvature, Belief asymmetry, Belief drift, Belief lnScatter, PooledScatter pooled) {
    private static final Belief ASYMMETRY = new Belief(0, 0.25);
    /**
     * Centred on none: in a sweep that only climbs, drift and a shift of the peak look alike, so a centre off zero would move the peak
     * of a steady day.
     */
    private static final Belief DRIFT = new Belief(0, 0.02);

    private static final Belief LN_SCATTER = new Belief(Math.log(0.30), 0.5);

    /**
     * Published curves: 1.6e-4 to 2.2e-4 per deg^2 in the torque regression of Crossley and Cook (1991), 1 % at 5 deg and 3 to 4 % at
     * 10 deg in a textbook (Heywood, Internal Combustion Engine Fundamentals; from memory), which is 3e-4 to 4e-4; the model engine of
     * this project, which is invented, has 1.7e-4 to 3.2e-4. Steep engines are up to 1.2e-3. None of these is likelier than another.
     */
    private static final CurvaturePrior TIMING_CURVATURE = CurvaturePrior.between(Span.of(2.1e-4, 9.3e-4), 0.25);

    /** Half an air-fuel ratio, 3.4 hundredths of lambda, costs 0.1 to 0.5 % (common practice, no source). */
    private static final CurvaturePrior MIXTURE_CURVATURE = CurvaturePrior.normal(new Belief(Math.log(2e-4), 0.5));

    /** Timing, in degrees. */
    public static SweepPriors timing(double guessDeg) {
        return new SweepPriors(
                new Belief(guessDeg, 6), TIMING_CURVATURE, ASYMMETRY, DRIFT, LN_SCATTER, PooledScatter.none());
    }

    /** Mixture, in hundredths of lambda. */
    public static SweepPriors mixture(double guessHundredths) {
        return new SweepPriors(
                new Belief(guessHundredths, 6), MIXTURE_CURVATURE, ASYMMETRY, DRIFT, LN_SCATTER, PooledScatter.none());
    }

    public SweepPriors withPooled(PooledScatter newPooled) {
        return new SweepPriors(peak, curvature, asymmetry, drift, lnScatter, newPooled);
    }

    public SweepPriors withPeak(Belief newPeak) {
        return new SweepPriors(newPeak, curvature, asymmetry, drift, lnScatter, pooled);
    }

    /** With a normal belief in the natural log of the curvature. */
    public SweepPriors withLnCurvature(Belief lnCurvature) {
        return withCurvature(CurvaturePrior.normal(lnCurvature));
    }

    public SweepPriors withCurvature(CurvaturePrior newCurvature) {
        return new SweepPriors(peak, newCurvature, asymmetry, drift, lnScatter, pooled);
    }

    public SweepPriors withDrift(Belief newDrift) {
        return new SweepPriors(peak, curvature, asymmetry, newDrift, lnScatter, pooled);
    }
}
