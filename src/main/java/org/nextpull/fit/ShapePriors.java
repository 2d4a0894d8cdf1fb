package org.nextpull.fit;

import java.util.List;

/**
 * What is thought of the form of the curves beside their curvature: common to all rows.
 *
 * @param asymmetry g of {@code x^2 (1 - g x/10)} at the mean speed, per 10 degrees
 * @param asymmetrySlope its change per 1000 rpm
 * @param curvatureSlope ln of the curvature from the middle of the band to its end
 * @param curvatureWave of its first wave over the band
 * @param curvatureRipple of its second wave
 */
public record ShapePriors(
        Belief asymmetry, Belief asymmetrySlope, Belief curvatureSlope, Belief curvatureWave, Belief curvatureRipple) {

    /** Published sweeps differ by 15 % over a band; asymmetry of ln torque to a quarter in 10 degrees. */
    public static ShapePriors usual() {
        return new ShapePriors(
                new Belief(0, 0.25),
                new Belief(0, 0.06),
                new Belief(0, 0.175),
                new Belief(0, 0.15),
                new Belief(0, 0.10));
    }

    /** In the order of the columns, with what smears a node of the grid over its neighbours. */
    List<Belief> inOrder(Belief curvatureLevel) {
        return List.of(asymmetry, asymmetrySlope, curvatureLevel, curvatureSlope, curvatureWave, curvatureRipple);
    }
}
