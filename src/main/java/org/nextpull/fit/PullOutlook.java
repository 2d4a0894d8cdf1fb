package org.nextpull.fit;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
     * @param reach most advanced clean advance at each row after it
     * @param mixture what it runs with; empty where the mixture is not swept
     */
    public record NextPull(SparkMap map, RowCaps reach, Optional<NextMixture> mixture) {}

    /**
     * A mixture of a pull.
     *
     * @param hundredths lambda from the guess
     * @param leanest leanest that may be run after it, likewise
     */
    public record NextMixture(double hundredths, double leanest) {}

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
        Optional<NextMixture> mixture = pull.mixture();
        SymmetricFactor after = imagined.factorAfter(
                pull.map().degAt(posterior.rows().rpm()),
                mixture.map(NextMixture::hundredths).orElse(0.0));
        double[] covariance = after.inverseFrom(rows);
        int commons = cell.common.length;
        int width = commons + rows;
        int shift = mixture.isEmpty() ? -1 : posterior.columns().mixture.orElse(-1);
        double best = shift < 0 ? 0 : cell.common[shift + 1];
        After then = new After(cell, covariance, shift, best);
        double sum = pull.map().isFlat() ? flat(then, pull, caps) : byRow(then, pull, caps);
        if (shift >= 0) {
            double fall = Math.exp(cell.common[shift + 2]);
            double gap = Math.max(0, best - mixture.orElseThrow().leanest());
            sum += fall * (covariance[(shift + 1) * width + shift + 1] + gap * gap);
        }
        return sum;
    }

    /** A node with its covariance after the pull, and its best lambda. */
    private static final class After {
        private final SolvedCell cell;
        private final double[] covariance;
        private final double best;
        private final int commons;
        private final int width;
        private final int shift;

        After(SolvedCell cell, double[] covariance, int shift, double best) {
            this.cell = cell;
            this.covariance = covariance;
            this.shift = shift;
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
