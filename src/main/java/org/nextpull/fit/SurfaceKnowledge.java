package org.nextpull.fit;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.nextpull.channel.SparkMap;
import org.nextpull.scatter.Scatter;

/**
 * What the pulls of earlier days, or of another fuel, taught, as means and spreads.
 *
 * @param map best-torque map, its level included
 * @param doubt covariance of its shape
 * @param lnCurvature ln of the curvature, relative loss per degree squared
 * @param lnScatter ln of the scatter, percent
 * @param shape form of the curves
 * @param drift percent a pull
 * @param mixture what was learned of the mixture, where it was part of the surface
 */
public record SurfaceKnowledge(
        SparkMap map,
        CarriedShape doubt,
        Belief lnCurvature,
        Belief lnScatter,
        SurfacePriors.Shape shape,
        Belief drift,
        Optional<MixturePrior> mixture) {
    private static final int LEAST_SPEEDS = 3;
    private static final double BESIDE_RPM = 500;
    private static final double CURVATURE_DOUBT = 0.5;
    /** Of the flattest published sweeps: days that tell little must not teach that advance hardly matters. */
    private static final double LEAST_LN_CURVATURE = Math.log(1.5e-4);

    private static final double LEAST_SCATTER_DOUBT = 0.3;
    /** Of the logarithm; simulated days of decision runs hold their intervals with it. */
    private static final double SCATTER_OF_ANOTHER_TIME = 0.4;

    /** Degrees of freedom with which a whole sweep tells the {@link #scatter()}. */
    public static final double SWEEP_FREEDOM = freedom(SCATTER_OF_ANOTHER_TIME);

    private static final double DRIFT_DOUBT = 0.005;
    private static final double ASYMMETRY_DOUBT = 0.08;
    private static final double ASYMMETRY_SLOPE_DOUBT = 0.02;
    private static final double CURVATURE_FORM_DOUBT = 0.05;
    private static final double SPARK_SHIFT_DOUBT = 0.15;
    private static final double BEST_LAMBDA_DOUBT = 2.5;
    private static final double FALL_DOUBT = 0.3;
    private static final double MIXTURE_WIDENING = 1.45;

    /** What a posterior teaches of other days. */
    static SurfaceKnowledge of(SurfacePosterior posterior) {
        return new Lesson(posterior).knowledge();
    }

    /**
     * Priors of a new day with its own guess of the level: the shape is that of the map learned, every doubt widened by what days and
     * fuels differ, a curvature no flatter than the flattest published.
     */
    public SurfacePriors priors(SurfacePriors usual) {
        MapPrior prior = usual.map();
        double[] rpm = doubt.learned().rpm();
        double level = 0;
        for (double at : rpm) {
            level += (prior.guess().degAt(at) - map.degAt(at)) / rpm.length;
        }
        return new SurfacePriors(
                new MapPrior(map.shiftedBy(level), MapPrior.Spread.ofCarry(), Optional.of(doubt), prior.wideShare()),
                new Belief(
                        Math.max(LEAST_LN_CURVATURE, lnCurvature.centre()),
                        Math.hypot(lnCurvature.sd(), CURVATURE_DOUBT)),
                new Belief(lnScatter.centre(), Math.max(LEAST_SCATTER_DOUBT, lnScatter.sd())),
                new SurfacePriors.Shape(
                        wider(shape.asymmetry(), ASYMMETRY_DOUBT),
                        wider(shape.asymmetrySlope(), ASYMMETRY_SLOPE_DOUBT),
                        wider(shape.curvatureSlope(), CURVATURE_FORM_DOUBT),
                        wider(shape.curvatureWave(), CURVATURE_FORM_DOUBT),
                        wider(shape.curvatureRipple(), CURVATURE_FORM_DOUBT)),
                wider(drift, DRIFT_DOUBT),
                usual.mixture()
                        .map(guessed -> mixture.map(known -> wider(known)).orElse(guessed)),
                usual.limitWidening(),
                usual.strayPulls());
    }

    /** Whether the shape of the map was learned over these speeds, and not at one or two of them. */
    public boolean knowsShapeOver(double[] rpm) {
        double[] known = doubt.learned().rpm();
        return known.length >= LEAST_SPEEDS
                && known[0] <= rpm[0] + BESIDE_RPM
                && known[known.length - 1] >= rpm[rpm.length - 1] - BESIDE_RPM;
    }

    /** The scatter from pull to pull that the pulls of the same day may count on; it may be another when they are run. */
    public Scatter scatter() {
        return new Scatter(Math.exp(lnScatter.centre()), freedom(Math.max(SCATTER_OF_ANOTHER_TIME, lnScatter.sd())));
    }

    private static double freedom(double doubtOfLn) {
        return 1 / (2 * doubtOfLn * doubtOfLn);
    }

    private static MixturePrior wider(MixturePrior known) {
        return new MixturePrior(
                known.guess(),
                wider(known.sparkShift(), SPARK_SHIFT_DOUBT),
                new Belief(known.best().centre(), BEST_LAMBDA_DOUBT),
                wider(known.lnFall(), FALL_DOUBT),
                wider(known.asymmetry(), ASYMMETRY_DOUBT),
                MIXTURE_WIDENING);
    }

    private static Belief wider(Belief known, double doubt) {
        return new Belief(known.centre(), Math.hypot(known.sd(), doubt));
    }

    /** Turns a posterior into what it teaches of other days. */
    private static final class Lesson {
        private static final double PERCENT = 100;

        private final SurfacePosterior posterior;

        Lesson(SurfacePosterior posterior) {
            this.posterior = posterior;
        }

        SurfaceKnowledge knowledge() {
            int curvature = CommonColumns.CURVATURE;
            return new SurfaceKnowledge(
                    posterior.peaks().map(),
                    new CarriedShape(posterior.rows(), covariance()),
                    belief(
                            cell -> Math.log(cell.node.curvature() / PERCENT) + cell.common[curvature],
                            cell -> cell.commons(curvature, curvature)),
                    belief(cell -> Math.log(cell.node.scatter()), cell -> 0),
                    new SurfacePriors.Shape(
                            column(CommonColumns.ASYMMETRY),
                            column(CommonColumns.ASYMMETRY_SLOPE),
                            column(curvature + 1),
                            column(curvature + 2),
                            column(curvature + 3)),
                    column(posterior.columns().drift(posterior.surface().days() - 1)),
                    posterior
                            .surface()
                            .priors()
                            .mixture()
                            .flatMap(prior -> posterior
                                    .columns()
                                    .mixture
                                    .map(first -> new MixturePrior(
                                            prior.guess(),
                                            column(first),
                                            column(first + 1),
                                            column(first + 2),
                                            column(first + 3),
                                            prior.widening()))));
        }

        private Belief column(int j) {
            return belief(cell -> cell.common[j], cell -> cell.commons(j, j));
        }

        private Belief belief(ToDoubleFunction<SolvedCell> value, ToDoubleFunction<SolvedCell> variance) {
            double mean = posterior.mean(value);
            double spread = posterior.mean(cell -> {
                double off = value.applyAsDouble(cell) - mean;
                return off * off + variance.applyAsDouble(cell);
            });
            return new Belief(mean, Math.sqrt(spread));
        }

        private double[] covariance() {
            int rows = posterior.rows().size();
            double[] mean = posterior.peaks().means();
            double[] covariance = new double[rows * rows];
            for (SolvedCell cell : posterior.cells) {
                for (int r = 0; r < rows; r++) {
                    for (int s = 0; s < rows; s++) {
                        covariance[r * rows + s] +=
                                cell.weight * (cell.peaks(r, s) + (cell.peak[r] - mean[r]) * (cell.peak[s] - mean[s]));
                    }
                }
            }
            return covariance;
        }
    }
}
