package org.nextpull.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Solves the surface at each node of a small grid over curvature, scatter and the two priors of the map. */
final class SurfaceGrid {
    private static final double FARTHEST_SDS = 2.25;
    private static final double STEP_SDS = 0.75;
    private static final int CURVATURES = 7;
    private static final double LEAST_SCATTER = 0.13;
    private static final double MOST_SCATTER = 0.80;
    private static final int SCATTERS = 4;
    private static final double PERCENT = 100;
    private static final int REFERENCE_ROUNDS = 10;
    private static final double REFERENCE_SCATTER = 0.35;
    /** Log weight below the best node so far at which a node is given up, after one round and after two. */
    private static final double FAR_FROM_BEST = 60;

    private static final double HOPELESS = 20;
    private static final double LEAST_WEIGHT = 0.001;
    private static final double ROW_ERROR_WEIGHT = 10;

    private final Surface surface;
    private final double[] priorMean;
    private final SurfaceSolver solver;
    private final SolverState reference;
    private final MapPrecision narrow;
    private final MapPrecision wide;
    private final boolean hasWide;
    private RowError rowError;

    SurfaceGrid(Surface surface) {
        this.surface = surface;
        rowError = RowError.usual(surface.rows());
        MapPrior map = surface.priors().map();
        int rows = surface.rows().size();
        priorMean = map.mean(surface.rows());
        solver = new SurfaceSolver(surface, priorMean);
        reference = new SolverState(solver.table, solver.columns);
        hasWide = map.wideShare() > 0;
        narrow = new MapPrecision(map.covariance(surface.rows(), 1), rows);
        wide = hasWide ? new MapPrecision(map.covariance(surface.rows(), MapPrior.WIDE_SCALE), rows) : narrow;
    }

    RowError rowError() {
        return rowError;
    }

    CommonColumns columns() {
        return solver.columns;
    }

    /** The nodes that count, with weights that sum to 1. */
    List<SolvedCell> solve() {
        startFromReference();
        List<SolvedCell.Solution> solutions = solutions();
        double best = solutions.stream()
                .mapToDouble(SolvedCell.Solution::logWeight)
                .max()
                .orElseThrow(() -> new IllegalStateException("no node of the surface could be solved"));
        return weighted(solutions, best);
    }

    private List<SolvedCell.Solution> solutions() {
        List<SolvedCell.Solution> solutions = new ArrayList<>();
        List<Node> givenUp = new ArrayList<>();
        Optional<SolvedCell.Solution> best = Optional.empty();
        for (Node node : nodes()) {
            if (best.isPresent() && isBeyond(node, best.get().node(), givenUp)) {
                continue;
            }
            double most = best.map(SolvedCell.Solution::logWeight).orElse(Double.NEGATIVE_INFINITY);
            solver.state.set(reference);
            MapPrecision prior = node.isWide() ? wide : narrow;
            if (!isWorthSolving(node, prior, most)) {
                givenUp.add(node);
            } else if (solver.round(node, prior, rowError, false) && isKept()) {
                SolvedCell.Solution solution = solution(node, solver.logWeight(node, prior));
                best = solution.logWeight() > most ? Optional.of(solution) : best;
                solutions.add(solution);
            }
        }
        return solutions;
    }

    /** Whether a node lies behind one that was given up, seen from the best: weights fall away from it along curvature and scatter. */
    private static boolean isBeyond(Node node, Node best, List<Node> givenUp) {
        return givenUp.stream()
                .anyMatch(up -> up.isWide() == node.isWide()
                        && isBetween(best.curvature(), up.curvature(), node.curvature())
                        && isBetween(best.scatter(), up.scatter(), node.scatter()));
    }

    private static boolean isBetween(double from, double middle, double to) {
        return Math.min(from, to) <= middle && middle <= Math.max(from, to);
    }

    /** Two rounds, if the first does not already show that the node will not count. */
    private boolean isWorthSolving(Node node, MapPrecision prior, double best) {
        return solver.round(node, prior, rowError, true)
                && solver.logWeight(node, prior) >= best - FAR_FROM_BEST
                && solver.round(node, prior, rowError, true)
                && solver.logWeight(node, prior) >= best - HOPELESS;
    }

    private boolean isKept() {
        return solver.table.pullCount <= surface.priors().strayPulls() || !solver.isBesideItsNode();
    }

    private static List<SolvedCell> weighted(List<SolvedCell.Solution> solutions, double best) {
        double sum = 0;
        for (SolvedCell.Solution solution : solutions) {
            sum += Math.exp(solution.logWeight() - best);
        }
        double least = LEAST_WEIGHT * sum;
        double kept = 0;
        for (SolvedCell.Solution solution : solutions) {
            double weight = Math.exp(solution.logWeight() - best);
            kept += weight >= least ? weight : 0;
        }
        List<SolvedCell> cells = new ArrayList<>();
        for (SolvedCell.Solution solution : solutions) {
            double weight = Math.exp(solution.logWeight() - best);
            if (weight >= least) {
                cells.add(solution.weighted(weight / kept));
            }
        }
        return cells;
    }

    /** One node in the middle, solved from the prior mean: where all others start, and what rows are off by. */
    private void startFromReference() {
        double curvature = PERCENT * Math.exp(surface.priors().lnCurvature().centre());
        Node middle = new Node(curvature, REFERENCE_SCATTER, hasWide, 0);
        for (int round = 1; round <= REFERENCE_ROUNDS; round++) {
            solver.round(middle, wide, rowError, round < REFERENCE_ROUNDS);
        }
        reference.set(solver.state);
        ReadingTable table = solver.table;
        double sweepDof = table.readings(false) - table.rowCount - 4.0 * table.pulls(false) - 8;
        double heldDof = table.readings(true) - 3.0 * table.pulls(true) - 2;
        rowError = new RowError(
                learned(rowError.sweep(), sweepDof, solver.rowErrorSquares(false, rowError.sweep())),
                learned(rowError.held(), heldDof, solver.rowErrorSquares(true, rowError.held())));
    }

    private static double learned(double prior, double dof, double squares) {
        return dof > 0 ? Math.sqrt((ROW_ERROR_WEIGHT * prior * prior + squares) / (ROW_ERROR_WEIGHT + dof)) : prior;
    }

    private List<Node> nodes() {
        Belief lnCurvature = surface.priors().lnCurvature();
        List<Node> nodes = new ArrayList<>();
        for (int v = 0; v < (hasWide ? 2 : 1); v++) {
            double logShare = v == 0 ? 0 : Math.log(surface.priors().map().wideShare());
            for (int i = 0; i < CURVATURES; i++) {
                double z = -FARTHEST_SDS + i * STEP_SDS;
                double curvature = PERCENT * Math.exp(lnCurvature.centre() + lnCurvature.sd() * z);
                for (double scatter : scatters()) {
                    Belief lnScatter = surface.priors().lnScatter();
                    double s = (Math.log(scatter) - lnScatter.centre()) / lnScatter.sd();
                    nodes.add(new Node(curvature, scatter, v == 1, logShare - z * z / 2 - s * s / 2));
                }
            }
        }
        // the likeliest first, so that the others are soon given up
        nodes.sort(Comparator.comparingDouble(Node::logPrior).reversed());
        return nodes;
    }

    private double[] scatters() {
        if (solver.table.pulls(false) == 0 && solver.table.pullCount > 0) {
            return new double[] {Math.exp(surface.priors().lnScatter().centre())};
        }
        double[] scatters = new double[SCATTERS];
        for (int s = 0; s < SCATTERS; s++) {
            scatters[s] = LEAST_SCATTER * Math.pow(MOST_SCATTER / LEAST_SCATTER, (double) s / (SCATTERS - 1));
        }
        return scatters;
    }

    private SolvedCell.Solution solution(Node node, double logWeight) {
        int rows = priorMean.length;
        double[] peak = new double[rows];
        double[] curvature = new double[rows];
        double[] asymmetry = new double[rows];
        double[] common = solver.state.common.clone();
        double[] waves = SurfaceTangent.waves(surface.rows());
        for (int r = 0; r < rows; r++) {
            peak[r] = priorMean[r] + solver.state.rho[r];
            double ln = 0;
            for (int j = 0; j < CommonColumns.CURVATURES; j++) {
                ln += common[CommonColumns.CURVATURE + j] * waves[r * CommonColumns.CURVATURES + j];
            }
            curvature[r] = node.curvature() * Math.exp(ln);
            asymmetry[r] = common[CommonColumns.ASYMMETRY]
                    + common[CommonColumns.ASYMMETRY_SLOPE] * surface.rows().krpmFromMean(r);
        }
        return new SolvedCell.Solution(
                node,
                logWeight,
                peak,
                common,
                solver.state.levelWeight.clone(),
                curvature,
                asymmetry,
                solver.normal.rows().clone());
    }

    /**
     * A node of the grid over what enters the surface other than nearly linearly.
     *
     * @param curvature percent of torque lost per degree squared
     * @param scatter scale of what whole pulls are off by, percent
     * @param isWide whether under the wide prior of the map
     * @param logPrior natural log of its weight before the data, up to a constant
     */
    record Node(double curvature, double scatter, boolean isWide, double logPrior) {}
}
