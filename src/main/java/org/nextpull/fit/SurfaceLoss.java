package org.nextpull.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.math.Normal;
import org.nextpull.unit.Span;

/**
 * Torque that a map leaves, as the posterior has it: closed form node by node, the chance by a gamma distribution with the same mean
 * and variance (Wilson and Hilferty 1931, Proc. Natl. Acad. Sci. 17).
 */
final class SurfaceLoss {
    private static final double LEAST_SHARE = 0.4;
    private static final double PER_TEN = 0.1;
    private static final double LOW = 0.05;
    private static final double MOST_PERCENT = 64;
    private static final int HALVINGS = 24;
    private static final double NO_LOSS = 1e-9;

    private final SurfacePosterior posterior;
    private final Optional<Double> sought;
    private final double hundredths;
    private final RowCaps caps;

    /**
     * @param posterior what the pulls say
     * @param sought lambda that the maps are run at, in hundredths from the guess, whose own distance from the best counts as lost; empty
     *     where it is not swept, though it may have moved by itself
     * @param caps advance beyond which nobody may go
     */
    SurfaceLoss(SurfacePosterior posterior, Optional<Double> sought, RowCaps caps) {
        this.posterior = posterior;
        this.sought = sought;
        hundredths = sought.orElse(0.0);
        this.caps = caps;
    }

    /** What is left by a map, degrees at each row. */
    public TorqueLeft of(double[] deg) {
        double expected = 0;
        double chance = 0;
        Cell work = new Cell(deg.length);
        for (SolvedCell cell : posterior.cells) {
            work.judge(cell, deg);
            expected += work.weight * work.mean;
            chance += work.weight * work.chanceAbove(TorqueLeft.MUCH_PERCENT);
        }
        return new TorqueLeft(expected, chance);
    }

    /** The 90 % interval of what is left by a map, percent. */
    public Span interval(double[] deg) {
        List<Cell> nodes = new ArrayList<>();
        for (SolvedCell cell : posterior.cells) {
            Cell node = new Cell(deg.length);
            node.judge(cell, deg);
            nodes.add(node);
        }
        return Span.of(quantile(nodes, LOW), quantile(nodes, 1 - LOW));
    }

    private static double quantile(List<Cell> nodes, double probability) {
        double low = 0;
        double high = MOST_PERCENT;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            double above = 0;
            for (Cell node : nodes) {
                above += node.weight * node.chanceAbove(middle);
            }
            if (above > 1 - probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Weight of one node, mean and variance of the loss in it; the arrays serve any number of nodes one after the other. */
    private final class Cell {
        private final int rows;
        private final double[] quadratic;
        private final double[] linear;
        private double weight;
        private double mean;
        private double variance;

        Cell(int rows) {
            this.rows = rows;
            quadratic = new double[rows];
            linear = new double[rows];
        }

        void judge(SolvedCell cell, double[] deg) {
            weight = cell.weight;
            mean = 0;
            for (int r = 0; r < rows; r++) {
                double peak = SparkMixture.peak(posterior.columns(), cell, r, hundredths);
                double spread = SparkMixture.variance(posterior.columns(), cell, r, hundredths);
                double off = deg[r] - peak;
                double curvature = share(cell, r, off) * cell.curvature[r];
                double lost = off * off + spread;
                double free = 1;
                if (caps.isCapped(r)) {
                    double sd = Math.sqrt(spread);
                    double beyond = peak - caps.deg(r);
                    double u = beyond / sd;
                    lost -= (beyond * beyond + spread) * Normal.below(u) + beyond * sd * Normal.density(u);
                    free = Normal.below(-u);
                }
                mean += curvature * lost / rows;
                quadratic[r] = curvature * free / rows;
                linear[r] = 2 * quadratic[r] * off;
            }
            variance = 0;
            for (int r = 0; r < rows; r++) {
                for (int s = 0; s < rows; s++) {
                    double covariance = SparkMixture.covariance(posterior.columns(), cell, r, s, hundredths);
                    variance += 2 * quadratic[r] * quadratic[s] * covariance * covariance
                            + linear[r] * linear[s] * covariance;
                }
            }
            addMixture(cell);
        }

        private double share(SolvedCell cell, int row, double off) {
            return Math.max(LEAST_SHARE, 1 - cell.asymmetry[row] * off * PER_TEN);
        }

        private void addMixture(SolvedCell cell) {
            sought.flatMap(run -> posterior.columns().mixture).ifPresent(first -> {
                double fall = Math.exp(cell.common[first + 2]);
                double off = hundredths - cell.common[first + 1];
                double spread = cell.commons(first + 1, first + 1);
                mean += fall * (off * off + spread);
                variance += fall * fall * (2 * spread * spread + 4 * off * off * spread);
            });
        }

        private double chanceAbove(double percent) {
            if (mean < NO_LOSS) {
                return 0;
            }
            double shape = mean * mean / Math.max(variance, NO_LOSS * mean * mean);
            double ninth = 1 / (9 * shape);
            return Normal.below(-(Math.cbrt(percent / mean) - 1 + ninth) / Math.sqrt(ninth));
        }
    }
}
