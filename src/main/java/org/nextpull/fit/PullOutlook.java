package org.nextpull.fit;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.nextpull.channel.SparkMap;
import org.nextpull.math.Normal;
import org.nextpull.math.SymmetricFactor;

/**
 * Torque that the next decision will leave after one more pull, before it is run: a pull adds known information to the heaviest nodes,
 * whatever it reads.
 */
public final class PullOutlook {
    private static final int NODES = 3;

    private final SurfacePosterior posterior;
    private final List<ImaginedPull> heaviest;
    private final double weight;

    public PullOutlook(SurfacePosterior posterior) {
        this.posterior = posterior;
        heaviest = posterior.cells.stream()
                .sorted(Comparator.comparingDouble((SolvedCell cell) -> -cell.weight))
                .limit(NODES)
                .map(cell -> new ImaginedPull(posterior, cell))
                .toList();
        weight = heaviest.stream().mapToDouble(imagined -> imagined.cell.weight).sum();
    }

    /**
     * One more pull and where the engine may then stand.
     *
     * @param map advance that stands in it
     * @param hundredths lambda from the guess; 0 where the mixture is no part of the surface
     * @param reach most advanced clean advance at each row after it
     * @param leanest leanest lambda that may be run after it, hundredths from the guess; infinite where there is no mixture
     */
    public record NextPull(SparkMap map, double hundredths, RowCaps reach, double leanest) {}

    /** Expected torque left after the pull, percent. */
    public double leftAfter(NextPull pull, RowCaps caps) {
        double left = 0;
        for (ImaginedPull imagined : heaviest) {
            left += imagined.cell.weight / weight * left(imagined, pull, caps);
        }
        return left;
    }

    private double left(ImaginedPull imagined, NextPull pull, RowCaps caps) {
        SolvedCell cell = imagined.cell;
        int rows = posterior.rows().size();
        SymmetricFactor after =
                imagined.factorAfter(pull.map().degAt(posterior.rows().rpm()), pull.hundredths());
        double[] covariance = after.inverseFrom(rows);
        int commons = cell.common.length;
        int width = commons + rows;
        int shift = posterior.columns().mixture.orElse(-1);
        double best = shift < 0 ? 0 : cell.common[shift + 1];
        double sum = pull.map().isFlat()
                ? flat(new After(cell, covariance, best), pull, caps)
                : byRow(new After(cell, covariance, best), pull, caps);
        if (shift >= 0) {
            double fall = Math.exp(cell.common[shift + 2]);
            double gap = Math.max(0, best - pull.leanest());
            sum += fall * (covariance[(shift + 1) * width + shift + 1] + gap * gap);
        }
        return sum;
    }

    /** A node with its covariance after the pull, and its best lambda. */
    private final class After {
        private final SolvedCell cell;
        private final double[] covariance;
        private final double best;
        private final int commons;
        private final int width;
        private final int shift = posterior.columns().mixture.orElse(-1);

        After(SolvedCell cell, double[] covariance, double best) {
            this.cell = cell;
            this.covariance = covariance;
            this.best = best;
            commons = cell.common.length;
            width = commons + cell.peak.length;
        }

        double peak(int row) {
            return cell.peak[row] + (shift < 0 ? 0 : cell.common[shift] * best);
        }

        double covariance(int row, int otherRow) {
            double between = covariance[(commons + row) * width + commons + otherRow];
            return shift < 0
                    ? between
                    : between
                            + best
                                    * (covariance[shift * width + commons + row]
                                            + covariance[shift * width + commons + otherRow])
                            + best * best * covariance[shift * width + shift];
        }
    }

    private double byRow(After after, NextPull pull, RowCaps caps) {
        SolvedCell cell = after.cell;
        int rows = cell.peak.length;
        double sum = 0;
        for (int r = 0; r < rows; r++) {
            double peak = after.peak(r);
            double sd = Math.sqrt(SparkMixture.variance(posterior.columns(), cell, r, after.best));
            double free = caps.isCapped(r) ? Normal.below((caps.deg(r) - peak) / sd) : 1;
            double gap = Math.max(0, Math.min(peak, caps.deg(r)) - pull.reach().deg(r));
            sum += cell.curvature[r] * free * (after.covariance(r, r) + gap * gap) / rows;
        }
        return sum;
    }

    /** The same of one number over all rows. */
    private double flat(After after, NextPull pull, RowCaps caps) {
        SolvedCell cell = after.cell;
        int rows = cell.peak.length;
        double total = Arrays.stream(cell.curvature).sum();
        double spread = 0;
        for (int r = 0; r < rows; r++) {
            for (int s = 0; s < rows; s++) {
                spread += cell.curvature[r] * cell.curvature[s] / (total * total) * after.covariance(r, s);
            }
        }
        FlatNumber now = FlatNumber.of(posterior.columns(), cell, after.best);
        double cap = caps.lowest();
        double free = cap < Double.POSITIVE_INFINITY ? Normal.below((cap - now.deg()) / Math.sqrt(now.variance())) : 1;
        double gap = Math.max(0, Math.min(now.deg(), cap) - pull.reach().lowest());
        return now.curvature() * free * (spread + gap * gap);
    }
}
