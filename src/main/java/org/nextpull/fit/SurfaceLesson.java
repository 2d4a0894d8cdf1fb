package org.nextpull.fit;

import java.util.function.ToDoubleFunction;

/** Turns a posterior into what it teaches of other days. */
final class SurfaceLesson {
    private static final double PERCENT = 100;

    private final SurfacePosterior posterior;

    SurfaceLesson(SurfacePosterior posterior) {
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
