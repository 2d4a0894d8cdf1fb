package org.nextpull.fit;

import java.util.Arrays;
import org.nextpull.math.SymmetricFactor;

/**
 * Rows' levels, common columns and best advances of one node of the grid: Gauss-Newton rounds with reweighted pulls and readings,
 * in plain arrays that are kept from node to node. What a pull is off by is eliminated pull by pull, so the noise is never inverted.
 *
 * <p>Reading of row r in pull i, percent: {@code y = A_r + B v_i + D t - K_r x^2 (1 - g_r x/10) - Q w^2 (1 - g_z w/10) + e}, with
 * {@code x = advance - p_r - s z}, {@code w = z - z_best}, z hundredths of lambda from the guess.
 */
final class SurfaceSolver {
    private static final int EFFECTS = ReadingTable.EFFECTS;
    private static final double LEVEL_PRECISION = 1 / (200.0 * 200.0);
    private static final double FARTHEST_RHO = 16;

    final ReadingTable table;
    final CommonColumns columns;
    final SolverState state;
    final SymmetricFactor normal;
    private final SurfaceTangent tangent;
    private final PullErrors errors;
    private final int size;
    private final int firstPeak;
    private final double[] right;
    private final double[] theta;
    private final double[] zeta;
    private final double[] weight;
    private final double[] moments;
    private final double[] resolved = new double[EFFECTS];
    private double halfLogDeterminants;
    private double logTails;

    SurfaceSolver(Surface surface, double[] priorMean) {
        table = new ReadingTable(surface);
        columns = new CommonColumns(surface);
        state = new SolverState(table, columns);
        tangent = new SurfaceTangent(table, columns, priorMean);
        errors = new PullErrors(table);
        firstPeak = table.rowCount + columns.count;
        size = firstPeak + table.rowCount;
        normal = new SymmetricFactor(size);
        right = new double[size];
        theta = new double[size];
        zeta = new double[table.count];
        weight = new double[table.count];
        moments = new double[EFFECTS * size];
    }

    /**
     * One round; false where the equations cannot be solved.
     *
     * @param reweigh whether the weights follow the errors afterwards
     */
    boolean round(SurfaceGrid.Node node, MapPrecision prior, RowError rowError, boolean reweigh) {
        tangent.at(state, node.curvature());
        linearise(rowError);
        assemble(node, prior);
        if (!normal.factor()) {
            return false;
        }
        System.arraycopy(right, 0, theta, 0, size);
        normal.solve(theta);
        judgeErrors(node, reweigh);
        for (int r = 0; r < table.rowCount; r++) {
            state.rho[r] = Math.max(-FARTHEST_RHO, Math.min(FARTHEST_RHO, theta[firstPeak + r]));
        }
        for (int j = 0; j < columns.count; j++) {
            state.common[j] = columns.within(j, theta[table.rowCount + j]);
        }
        return true;
    }

    /** Working readings and weights at the tangent. */
    private void linearise(RowError rowError) {
        int common = columns.count;
        for (int i = 0; i < table.pullCount; i++) {
            double own = rowError.of(table.held[i]);
            for (int k = table.start[i]; k < table.start[i + 1]; k++) {
                double value = table.percent[k] + tangent.fall[k] + tangent.byPeak[k] * state.rho[table.row[k]];
                for (int j = columns.firstCurved(); j < columns.pastCurved(); j++) {
                    value += tangent.byCommon[k * common + j] * state.common[j];
                }
                zeta[k] = value - errors.expected(k);
                tangent.variance[k] = own * own + tangent.misfit[k] * tangent.misfit[k];
                weight[k] = state.readingWeight[k] / tangent.variance[k];
            }
        }
    }

    /** The factor of other equations with the pulls of this surface added, at common columns and best advances of the prior mean. */
    SymmetricFactor factorWith(double[] equations, double[] common, SurfaceGrid.Node node, RowError rowError) {
        System.arraycopy(common, 0, state.common, 0, common.length);
        tangent.at(state, node.curvature());
        linearise(rowError);
        System.arraycopy(equations, 0, normal.rows(), 0, equations.length);
        addPulls(node);
        if (!normal.factor()) {
            throw new IllegalStateException("equations that were solved cannot be with one more pull");
        }
        return normal;
    }

    private void addPulls(SurfaceGrid.Node node) {
        double[] h = normal.rows();
        halfLogDeterminants = 0;
        for (int i = 0; i < table.pullCount; i++) {
            addReadings(h, i);
            halfLogDeterminants += errors.factor(i, node.scatter(), state, weight);
            takeOffPull(h, i);
        }
    }

    private void assemble(SurfaceGrid.Node node, MapPrecision prior) {
        double[] h = normal.rows();
        Arrays.fill(h, 0);
        Arrays.fill(right, 0);
        addPulls(node);
        for (int r = 0; r < table.rowCount; r++) {
            h[r * size + r] += LEVEL_PRECISION;
            for (int s = r; s < table.rowCount; s++) {
                h[(firstPeak + r) * size + firstPeak + s] += prior.at(r, s);
            }
        }
        for (int j = 0; j < columns.count; j++) {
            int at = table.rowCount + j;
            double precision = 1 / (columns.sd[j] * columns.sd[j]);
            h[at * size + at] += precision;
            right[at] += columns.mean[j] * precision;
        }
    }

    private void addReadings(double[] h, int pull) {
        int common = columns.count;
        for (int k = table.start[pull]; k < table.start[pull + 1]; k++) {
            int level = table.row[k];
            int peak = firstPeak + level;
            double w = weight[k];
            double wd = w * tangent.byPeak[k];
            h[level * size + level] += w;
            h[level * size + peak] += wd;
            h[peak * size + peak] += wd * tangent.byPeak[k];
            right[level] += w * zeta[k];
            right[peak] += wd * zeta[k];
            for (int j = 0; j < common; j++) {
                double dj = tangent.byCommon[k * common + j];
                int rowJ = (table.rowCount + j) * size;
                h[level * size + table.rowCount + j] += w * dj;
                h[rowJ + peak] += wd * dj;
                right[table.rowCount + j] += w * dj * zeta[k];
                double wj = w * dj;
                for (int l = j; l < common; l++) {
                    h[rowJ + table.rowCount + l] += wj * tangent.byCommon[k * common + l];
                }
            }
        }
    }

    /** Takes off what the errors of the pull as a whole explain: {@code U'U} with {@code U = L^-1 B'W X}. */
    private void takeOffPull(double[] h, int pull) {
        int effects = table.effects(pull);
        int common = columns.count;
        Arrays.fill(moments, 0, effects * size, 0);
        Arrays.fill(resolved, 0);
        for (int k = table.start[pull]; k < table.start[pull + 1]; k++) {
            for (int q = 0; q < effects; q++) {
                double bw = table.basis[k * EFFECTS + q] * weight[k];
                int at = q * size;
                moments[at + table.row[k]] += bw;
                moments[at + firstPeak + table.row[k]] += bw * tangent.byPeak[k];
                for (int j = 0; j < common; j++) {
                    moments[at + table.rowCount + j] += bw * tangent.byCommon[k * common + j];
                }
                resolved[q] += bw * zeta[k];
            }
        }
        errors.divideByFactor(pull, moments, size, effects);
        errors.divideByFactor(pull, resolved, 1, effects);
        int u1 = size;
        int u2 = 2 * size;
        int u3 = 3 * size;
        for (int i = 0; i < size; i++) {
            double m0 = moments[i];
            double m1 = moments[u1 + i];
            double m2 = moments[u2 + i];
            double m3 = moments[u3 + i];
            right[i] -= m0 * resolved[0] + m1 * resolved[1] + m2 * resolved[2] + m3 * resolved[3];
            int rowI = i * size;
            for (int j = i; j < size; j++) {
                h[rowI + j] -= m0 * moments[j] + m1 * moments[u1 + j] + m2 * moments[u2 + j] + m3 * moments[u3 + j];
            }
        }
        if (effects == EFFECTS) {
            takeOffWarming(h);
        }
    }

    private void takeOffWarming(double[] h) {
        int u = (EFFECTS - 1) * size;
        for (int i = 0; i < size; i++) {
            double m = moments[u + i];
            right[i] -= m * resolved[EFFECTS - 1];
            for (int j = i; j < size; j++) {
                h[i * size + j] -= m * moments[u + j];
            }
        }
    }

    private void judgeErrors(SurfaceGrid.Node node, boolean reweigh) {
        int common = columns.count;
        logTails = 0;
        for (int i = 0; i < table.pullCount; i++) {
            for (int k = table.start[i]; k < table.start[i + 1]; k++) {
                double left = zeta[k] - theta[table.row[k]] - tangent.byPeak[k] * theta[firstPeak + table.row[k]];
                for (int j = 0; j < common; j++) {
                    left -= tangent.byCommon[k * common + j] * theta[table.rowCount + j];
                }
                zeta[k] = left;
            }
            logTails += errors.judge(i, node.scatter(), new PullErrors.Fitted(zeta, weight, tangent.variance));
            if (reweigh) {
                errors.reweigh(i, state);
            }
        }
    }

    /** Natural log of the weight of a node after its last round, by Laplace's approximation, up to a constant. */
    double logWeight(SurfaceGrid.Node node, MapPrecision prior) {
        double sum = node.logPrior() - normal.halfLogDeterminant() - halfLogDeterminants - logTails;
        double misplaced = 0;
        for (int r = 0; r < table.rowCount; r++) {
            for (int s = 0; s < table.rowCount; s++) {
                misplaced += theta[firstPeak + r] * prior.at(r, s) * theta[firstPeak + s];
            }
        }
        sum -= misplaced / 2 + prior.halfLogDeterminant();
        for (int j = 0; j < columns.count; j++) {
            double off = (theta[table.rowCount + j] - columns.mean[j]) / columns.sd[j];
            sum -= off * off / 2;
        }
        return sum;
    }

    /**
     * Whether the curvature that the readings ask for lies so far from the node's that other nodes have to answer: the linearised
     * node then fits them without paying for it.
     */
    boolean isBesideItsNode() {
        int at = table.rowCount + CommonColumns.CURVATURE;
        return state.common[CommonColumns.CURVATURE] != theta[at];
    }

    /** Sum of squared errors of the readings as if all had the row error only, percent squared. */
    double rowErrorSquares(boolean ofHeld, double rowError) {
        double sum = 0;
        for (int i = 0; i < table.pullCount; i++) {
            for (int k = table.start[i]; table.held[i] == ofHeld && k < table.start[i + 1]; k++) {
                double error = errors.error(k);
                sum += state.readingWeight[k] * error * error * rowError * rowError / tangent.variance[k];
            }
        }
        return sum;
    }
}
