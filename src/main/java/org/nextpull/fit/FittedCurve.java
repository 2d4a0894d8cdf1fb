package org.nextpull.fit;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.math.Normal;
import org.nextpull.unit.Span;

/**
 * The fitted curve of a sweep, at the mean place of its pulls in the day so that drift is taken out and pulls and curve lie on one
 * level. Medians and 5 to 95 % over the posterior.
 */
public final class FittedCurve {
    private static final double LOW = 0.05;
    private static final double MEDIAN = 0.5;
    private static final double HIGH = 0.95;

    private final SweepPosterior posterior;
    private final CellTable cells;
    private final double order;

    public FittedCurve(SweepPosterior posterior) {
        this.posterior = posterior;
        this.cells = posterior.cells();
        this.order = posterior.sweep().points().stream()
                .mapToDouble(SweepPoint::order)
                .average()
                .orElse(0);
    }

    /**
     * The response at a setting, in the unit of the sweep's responses.
     *
     * @param setting the setting
     * @param median posterior median
     * @param interval 5 to 95 %
     */
    public record At(double setting, double median, Span interval) {}

    /** The response at a setting. */
    public At at(double setting) {
        double[] values = new double[cells.count];
        double mean = 0;
        for (int c = 0; c < cells.count; c++) {
            double q = PeakShape.heldRatio(setting - cells.peak[c], cells.curvature[c], cells.asymmetry[c]);
            values[c] = cells.level[c] * q + cells.drift[c] * order;
            mean += cells.weight[c] * values[c];
        }
        double square = 0;
        for (int c = 0; c < cells.count; c++) {
            double q = PeakShape.heldRatio(setting - cells.peak[c], cells.curvature[c], cells.asymmetry[c]);
            double within = q * q * cells.levelVariance[c]
                    + 2 * q * order * cells.covariance[c]
                    + order * order * cells.driftVariance[c];
            square += cells.weight[c] * ((values[c] - mean) * (values[c] - mean) + Math.max(0, within));
        }
        double perPercent = posterior.sweep().level() / 100;
        NormalSpread spread = new NormalSpread(mean, Math.sqrt(square));
        return new At(
                setting,
                perPercent * spread.at(MEDIAN),
                Span.of(perPercent * spread.at(LOW), perPercent * spread.at(HIGH)));
    }

    /** The response at evenly spaced settings of a stretch, both ends included. */
    public List<At> over(Span stretch, int count) {
        List<At> points = new ArrayList<>();
        for (int index = 0; index < count; index++) {
            points.add(at(stretch.low() + stretch.width() * index / Math.max(1, count - 1)));
        }
        return List.copyOf(points);
    }

    /** Expected share of the best response that a setting gives away. */
    public double expectedLoss(double setting) {
        double loss = 0;
        for (int c = 0; c < cells.count; c++) {
            loss += cells.weight[c] * PeakShape.loss(setting - cells.peak[c], cells.curvature[c], cells.asymmetry[c]);
        }
        return loss;
    }

    /** Quantiles of a mixture of many shapes, close enough to a normal one for a drawn band. */
    private record NormalSpread(double mean, double sd) {
        double at(double probability) {
            return mean + sd * Normal.quantile(probability);
        }
    }
}
