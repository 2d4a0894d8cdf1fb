package org.nextpull.fit;

import java.util.Optional;

/**
 * What earlier days of the same engine, or its class, taught; kept wider than what was seen. It may shorten a step, never lengthen one or
 * move the start.
 *
 * @param lnTimingCurvature natural log of the curvature of timing sweeps, in 1/deg^2
 * @param lnMixtureCurvature natural log of the curvature of mixture brackets, in 1/(0.01 lambda)^2
 * @param scatter pull-to-pull scatter and its degrees of freedom
 * @param days how many days it rests on
 * @param kin whose days they were
 */
public record Experience(
        Optional<Belief> lnTimingCurvature,
        Optional<Belief> lnMixtureCurvature,
        Optional<PooledScatter> scatter,
        int days,
        Kin kin) {
    /** What days of the same engine taught. */
    public Experience(
            Optional<Belief> lnTimingCurvature,
            Optional<Belief> lnMixtureCurvature,
            Optional<PooledScatter> scatter,
            int days) {
        this(lnTimingCurvature, lnMixtureCurvature, scatter, days, Kin.ENGINE);
    }
}
