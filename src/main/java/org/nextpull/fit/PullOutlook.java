package org.nextpull.fit;

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
        double sum = 0;
        for (int r = 0; r < rows; r++) {
            int at = (commons + r) * width + commons + r;
            double spread = covariance[at];
            double peak = cell.peak[r];
            if (shift >= 0) {
                spread += 2 * best * covariance[shift * width + commons + r]
                        + best * best * covariance[shift * width + shift];
                peak += cell.common[shift] * best;
            }
            double sd = Math.sqrt(SparkMixture.variance(posterior.columns(), cell, r, best));
            double free = caps.isCapped(r) ? Normal.below((caps.deg(r) - peak) / sd) : 1;
            double gap = Math.max(0, Math.min(peak, caps.deg(r)) - pull.reach().deg(r));
            sum += cell.curvature[r] * free * (spread + gap * gap) / rows;
        }
        if (shift >= 0) {
            double fall = Math.exp(cell.common[shift + 2]);
            double gap = Math.max(0, best - pull.leanest());
            sum += fall * (covariance[(shift + 1) * width + shift + 1] + gap * gap);
        }
        return sum;
    }
}
