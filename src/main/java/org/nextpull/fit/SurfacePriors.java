package org.nextpull.fit;

import java.util.List;
import java.util.Optional;
import org.nextpull.channel.SparkMap;

/**
 * What is thought of torque over speed, advance and mixture before the pulls.
 *
 * @param map best-torque map
 * @param lnCurvature ln of the curvature k, relative loss per degree squared
 * @param lnScatter ln of the scatter from pull to pull in percent
 * @param shape form of the curves
 * @param drift percent of the torque a pull
 * @param mixture where lambda is swept, or varies
 * @param limitWidening factor of the standard deviation in reported limits
 * @param strayPulls up to so many pulls a node of the grid counts though the readings ask for a curvature far from its own. It fits a
 *     fall that its own curve could not: with the pulls of a day that keeps the intervals honest, with many more such nodes win
 */
public record SurfacePriors(
        MapPrior map,
        Belief lnCurvature,
        Belief lnScatter,
        Shape shape,
        Belief drift,
        Optional<MixturePrior> mixture,
        double limitWidening,
        int strayPulls) {
    private static final double USUAL_LIMIT_WIDENING = 1.06;
    private static final int USUAL_STRAY_PULLS = 16;

    /** The program's own: chosen so that intervals hold where one of these is off. */
    public static SurfacePriors usual(SparkMap guess) {
        return new SurfacePriors(
                MapPrior.ofGuess(guess),
                new Belief(Math.log(4e-4), 0.75),
                new Belief(Math.log(0.30), 0.6),
                Shape.usual(),
                new Belief(-0.015, 0.012),
                Optional.empty(),
                USUAL_LIMIT_WIDENING,
                USUAL_STRAY_PULLS);
    }

    public SurfacePriors withMap(MapPrior newMap) {
        return new SurfacePriors(newMap, lnCurvature, lnScatter, shape, drift, mixture, limitWidening, strayPulls);
    }

    public SurfacePriors withLnCurvature(Belief newCurvature) {
        return new SurfacePriors(map, newCurvature, lnScatter, shape, drift, mixture, limitWidening, strayPulls);
    }

    public SurfacePriors withMixture(Optional<MixturePrior> newMixture) {
        return new SurfacePriors(map, lnCurvature, lnScatter, shape, drift, newMixture, limitWidening, strayPulls);
    }

    public SurfacePriors withDrift(Belief newDrift) {
        return new SurfacePriors(map, lnCurvature, lnScatter, shape, newDrift, mixture, limitWidening, strayPulls);
    }

    public SurfacePriors withLimitWidening(double factor) {
        return new SurfacePriors(map, lnCurvature, lnScatter, shape, drift, mixture, factor, strayPulls);
    }

    public SurfacePriors withStrayPulls(int pulls) {
        return new SurfacePriors(map, lnCurvature, lnScatter, shape, drift, mixture, limitWidening, pulls);
    }

    /**
     * What is thought of the form of the curves beside their curvature: common to all rows.
     *
     * @param asymmetry g of {@code x^2 (1 - g x/10)} at the mean speed, per 10 degrees
     * @param asymmetrySlope its change per 1000 rpm
     * @param curvatureSlope ln of the curvature from the middle of the band to its end
     * @param curvatureWave of its first wave over the band
     * @param curvatureRipple of its second wave
     */
    public record Shape(
            Belief asymmetry,
            Belief asymmetrySlope,
            Belief curvatureSlope,
            Belief curvatureWave,
            Belief curvatureRipple) {

        /** Published sweeps differ by 15 % over a band; asymmetry of ln torque to a quarter in 10 degrees. */
        public static Shape usual() {
            return new Shape(
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
}
