package org.nextpull.fit;

import java.util.Arrays;

/**
 * The shapes that the data leave standing, each with its weight, and for each the level and drift as a Gaussian, averaged over the
 * scatter. Arrays run in parallel over the shapes; nobody changes them after they are filled.
 */
final class CellTable {
    /** Shapes with less than this share of the heaviest are dropped. */
    private static final double LEAST_SHARE = 1e-4;

    /** Cells whose log weight is this much below the best so far are not solved to the end. */
    private static final double HOPELESS = 11;

    /** By how much the log evidence may exceed its bound, which takes the width of level and drift for that of pulls near the peak. */
    private static final double SLACK = 2;

    /** Peaks whose best cell is this much below the best are hopeless, and so are those between two of them. */
    private static final double HOPELESS_NODE = 13;

    private static final int COARSE = 4;

    final int count;
    final double peakStep;
    final double[] peak;
    final double[] curvature;
    final double[] asymmetry;
    final double[] weight;
    final double[] level;
    final double[] drift;
    final double[] levelVariance;
    final double[] covariance;
    final double[] driftVariance;
    final double[] noise;
    final double[] pullWeights;
    final double[] scatterWeights;
    final double[] peakNodes;
    final double[] peakNodeWeights;
    final double driftMean;
    final double driftSd;

    private CellTable(Filler filler) {
        count = filler.kept;
        peakStep = filler.nodes.peakStep;
        peak = Arrays.copyOf(filler.peak, count);
        curvature = Arrays.copyOf(filler.curvature, count);
        asymmetry = Arrays.copyOf(filler.asymmetry, count);
        weight = Arrays.copyOf(filler.weight, count);
        level = Arrays.copyOf(filler.level, count);
        drift = Arrays.copyOf(filler.drift, count);
        levelVariance = Arrays.copyOf(filler.levelVariance, count);
        covariance = Arrays.copyOf(filler.covariance, count);
        driftVariance = Arrays.copyOf(filler.driftVariance, count);
        noise = Arrays.copyOf(filler.noise, count);
        pullWeights = filler.pullWeights;
        scatterWeights = filler.scatterWeights;
        peakNodes = filler.nodes.peaks;
        peakNodeWeights = filler.peakNodeWeights;
        double mean = 0;
        double square = 0;
        for (int c = 0; c < count; c++) {
            mean += weight[c] * drift[c];
            square += weight[c] * (drift[c] * drift[c] + driftVariance[c]);
        }
        driftMean = mean;
        driftSd = Math.sqrt(Math.max(0, square - mean * mean));
    }

    static CellTable of(Sweep sweep, GridNodes nodes) {
        Filler filler = new Filler(sweep, nodes);
        filler.weigh();
        filler.keep();
        return new CellTable(filler);
    }

    /** Weighs all cells, then keeps the shapes that matter. */
    private static final class Filler {
        final GridNodes nodes;
        private final int shapes;
        private final int scatters;
        private final int pulls;
        private final double[] settings;
        private final CellSolver solver;
        private final double[] logWeights;
        private final double[] freeTerms;

        int kept;
        final double[] peak;
        final double[] curvature;
        final double[] asymmetry;
        final double[] weight;
        final double[] level;
        final double[] drift;
        final double[] levelVariance;
        final double[] covariance;
        final double[] driftVariance;
        final double[] noise;
        final double[] pullWeights;
        final double[] scatterWeights;
        final double[] peakNodeWeights;

        Filler(Sweep sweep, GridNodes nodes) {
            this.nodes = nodes;
            pulls = sweep.points().size();
            settings = new double[pulls];
            double[] readings = new double[pulls];
            double[] orders = new double[pulls];
            for (int i = 0; i < pulls; i++) {
                SweepPoint point = sweep.points().get(i);
                settings[i] = point.setting();
                readings[i] = sweep.percent(point);
                orders[i] = point.order();
            }
            solver = new CellSolver(readings, orders, sweep.priors().drift());
            shapes = nodes.shapeLogPriors.length;
            scatters = nodes.scatterScales.length;
            int all = nodes.peaks.length * shapes;
            logWeights = new double[all * scatters];
            freeTerms = new double[scatters];
            Arrays.setAll(freeTerms, s -> solver.freeTerm(nodes.scatterScales[s]));
            peak = new double[all];
            curvature = new double[all];
            asymmetry = new double[all];
            weight = new double[all];
            level = new double[all];
            drift = new double[all];
            levelVariance = new double[all];
            covariance = new double[all];
            driftVariance = new double[all];
            noise = new double[all];
            pullWeights = new double[pulls];
            scatterWeights = new double[scatters];
            peakNodeWeights = new double[nodes.peaks.length];
        }

        private double curvatureOf(int shape) {
            return nodes.curvatures[shape / nodes.asymmetries.length];
        }

        private double asymmetryOf(int shape) {
            return nodes.asymmetries[shape % nodes.asymmetries.length];
        }

        private void setShape(int node, int shape) {
            double k = curvatureOf(shape);
            double g = asymmetryOf(shape);
            for (int i = 0; i < pulls; i++) {
                solver.setRatio(i, 1 - PeakShape.loss(settings[i] - nodes.peaks[node], k, g));
            }
            solver.start();
        }

        /** Every fourth peak first; those between two hopeless ones are not worth a look. */
        void weigh() {
            Arrays.fill(logWeights, Double.NEGATIVE_INFINITY);
            int last = nodes.peaks.length - 1;
            double[] bestOfNode = new double[last + 1];
            double best = Double.NEGATIVE_INFINITY;
            for (int node = 0; node <= last; node++) {
                if (node % COARSE == 0 || node == last) {
                    bestOfNode[node] = weigh(node, best);
                    best = Math.max(best, bestOfNode[node]);
                }
            }
            double coarseBest = best;
            for (int node = 0; node < last; node++) {
                int below = node / COARSE * COARSE;
                double near = Math.max(bestOfNode[below], bestOfNode[Math.min(last, below + COARSE)]);
                if (node != below && near > coarseBest - HOPELESS_NODE) {
                    best = Math.max(best, weigh(node, best));
                }
            }
            for (int cell = 0; cell < logWeights.length; cell++) {
                logWeights[cell] = Math.exp(logWeights[cell] - best);
            }
        }

        /** Weighs the cells of a peak and returns the best of them. */
        private double weigh(int node, double bestSoFar) {
            double best = Double.NEGATIVE_INFINITY;
            for (int shape = 0; shape < shapes; shape++) {
                best = Math.max(best, weigh(node, shape, Math.max(best, bestSoFar)));
            }
            return best;
        }

        private double weigh(int node, int shape, double bestSoFar) {
            double best = Double.NEGATIVE_INFINITY;
            setShape(node, shape);
            double prior = nodes.peakLogPriors[node] + nodes.shapeLogPriors[shape];
            int cell = (node * shapes + shape) * scatters;
            double misfit = 1;
            double misfitScale = nodes.scatterScales[scatters - 1];
            for (int s = scatters - 1; s >= 0; s--) {
                double scale = nodes.scatterScales[s];
                double priorOfCell = prior + nodes.scatterLogPriors[s];
                double bound = CellSolver.fitBound(misfit, misfitScale / scale) + freeTerms[s] + priorOfCell;
                if (bound + SLACK < Math.max(best, bestSoFar) - HOPELESS) {
                    continue;
                }
                logWeights[cell + s] = solver.solve(scale) + priorOfCell;
                misfit = solver.misfit();
                misfitScale = scale;
                best = Math.max(best, logWeights[cell + s]);
            }
            return best;
        }

        void keep() {
            int all = weight.length;
            double[] sums = new double[all];
            double heaviest = 0;
            double everything = 0;
            for (int cell = 0; cell < all; cell++) {
                for (int s = 0; s < scatters; s++) {
                    sums[cell] += logWeights[cell * scatters + s];
                }
                heaviest = Math.max(heaviest, sums[cell]);
                everything += sums[cell];
            }
            double total = 0;
            for (int cell = 0; cell < all; cell++) {
                peakNodeWeights[cell / shapes] += sums[cell] / everything;
            }
            for (double sum : sums) {
                total += sum >= LEAST_SHARE * heaviest ? sum : 0;
            }
            for (int cell = 0; cell < all; cell++) {
                if (sums[cell] >= LEAST_SHARE * heaviest) {
                    keep(cell, sums[cell], total);
                }
            }
        }

        private void keep(int cell, double sum, double total) {
            int node = cell / shapes;
            int shape = cell % shapes;
            setShape(node, shape);
            peak[kept] = nodes.peaks[node];
            curvature[kept] = curvatureOf(shape);
            asymmetry[kept] = asymmetryOf(shape);
            weight[kept] = sum / total;
            for (int s = 0; s < scatters; s++) {
                double share = logWeights[cell * scatters + s] / sum;
                if (share < 1e-9) {
                    continue;
                }
                double scale = nodes.scatterScales[s];
                solver.solve(scale);
                double variance = share * scale * scale;
                level[kept] += share * solver.level();
                drift[kept] += share * solver.drift();
                levelVariance[kept] += variance * solver.levelVariance();
                covariance[kept] += variance * solver.covariance();
                driftVariance[kept] += variance * solver.driftVariance();
                noise[kept] += variance;
                double weightOfCell = weight[kept] * share;
                scatterWeights[s] += weightOfCell;
                for (int i = 0; i < pulls; i++) {
                    pullWeights[i] += weightOfCell * solver.weight(i, scale);
                }
            }
            kept++;
        }
    }
}
