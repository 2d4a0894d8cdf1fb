package org.nextpull.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.nextpull.unit.Span;

/**
 * What the pulls of a sweep say about its peak. Immutable; every figure of a sweep is read off one of these.
 *
 * <p>Model of pull i in percent of the level: {@code y = Y (1 - k x^2 (1 - g x/10)) + D t + s e}, x = setting - peak, t the order
 * of the pull, e Student-t with 4 degrees of freedom. Peak, k, g and s on a grid; Y and D in closed form.
 */
public final class SweepPosterior {
    private static final double REACH_SDS = 8;
    private static final double SHARPEST_STEP = 0.02;
    private static final double SHARPEST_SHAPE = 0.05;

    private final Sweep sweep;
    private final GridNodes nodes;
    private final CellTable cells;
    private final double[] least;
    private final double[] bestRatio;

    private SweepPosterior(Sweep sweep, GridNodes nodes, CellTable cells) {
        this.sweep = sweep;
        this.nodes = nodes;
        this.cells = cells;
        least = new double[cells.count];
        bestRatio = new double[cells.count];
        double nearBest = sweep.permitted().nearBest();
        for (int c = 0; c < cells.count; c++) {
            double k = cells.curvature[c];
            double g = cells.asymmetry[c];
            bestRatio[c] = PeakShape.bestRatio(sweep.permitted().highest() - cells.peak[c], k, g);
            least[c] = cells.peak[c] + PeakShape.leastDistance(k, g, new PeakShape.Fall(bestRatio[c], nearBest));
        }
    }

    public static SweepPosterior of(Sweep sweep) {
        return of(sweep, GridNodes.of(sweep.priors(), sweep.peakSpan()));
    }

    static SweepPosterior of(Sweep sweep, GridNodes nodes) {
        return new SweepPosterior(sweep, nodes, CellTable.of(sweep, nodes));
    }

    /** The same posterior judged against another highest permitted setting. */
    public SweepPosterior permitting(Permitted permitted) {
        return new SweepPosterior(sweep.withPermitted(permitted), nodes, cells);
    }

    /** The posterior without the point of that index, on a grid with half the peaks: good enough to judge what a point carries. */
    public SweepPosterior without(int point) {
        List<SweepPoint> rest = new ArrayList<>(sweep.points());
        rest.remove(point);
        return of(sweep.withPoints(rest), GridNodes.of(sweep.priors(), sweep.peakSpan(), 2 * nodes.peakStep));
    }

    /** The same on a finer grid, where the pulls say more than the grid resolves. */
    public SweepPosterior sharpened() {
        Belief peak = peak();
        Belief lnCurvature = lnCurvature();
        double shapeSd = Math.min(sweep.priors().curvature().sd(), Math.max(SHARPEST_SHAPE, 1.5 * lnCurvature.sd()));
        if (peak.sd() > 2 * nodes.peakStep) {
            return this;
        }
        double reach = REACH_SDS * peak.sd() + nodes.peakStep;
        Span span = Span.of(
                Math.max(sweep.peakSpan().low(), peak.centre() - reach),
                Math.min(sweep.peakSpan().high(), peak.centre() + reach));
        double step = Math.max(SHARPEST_STEP, Math.min(nodes.peakStep, peak.sd() / 3));
        return of(
                sweep,
                GridNodes.around(
                        sweep.priors(), new GridNodes.Focus(span, step, new Belief(lnCurvature.centre(), shapeSd))));
    }

    public Sweep sweep() {
        return sweep;
    }

    CellTable cells() {
        return cells;
    }

    double least(int cell) {
        return least[cell];
    }

    double bestRatio(int cell) {
        return bestRatio[cell];
    }

    /** Mean and standard deviation of the peak. */
    public Belief peak() {
        return moments(cells.peakNodes, cells.peakNodeWeights);
    }

    /** Mean and standard deviation of the least setting that is as good as the best permitted one. */
    public Belief leastSetting() {
        return moments(least, cells.weight);
    }

    /** Mean and standard deviation of the curvature, relative loss per setting squared. */
    public Belief curvature() {
        return moments(cells.curvature, cells.weight);
    }

    /** Mean and standard deviation of the cubic share. */
    public Belief asymmetry() {
        return moments(cells.asymmetry, cells.weight);
    }

    /** Mean and standard deviation of the natural log of the curvature. */
    public Belief lnCurvature() {
        double[] logs = new double[cells.count];
        Arrays.setAll(logs, c -> Math.log(cells.curvature[c]));
        return moments(logs, cells.weight);
    }

    /** Mean and standard deviation of the drift, percent of the level a pull. */
    public Belief drift() {
        return new Belief(cells.driftMean, cells.driftSd);
    }

    /** Posterior mean of the scale of the errors, percent of the level. */
    public double errorScalePercent() {
        double mean = 0;
        for (int s = 0; s < nodes.scatterScales.length; s++) {
            mean += cells.scatterWeights[s] * nodes.scatterScales[s];
        }
        return mean;
    }

    /** Scatter from pull to pull, one standard deviation of the middle of the errors, percent of the level. */
    public double scatterPercent() {
        return errorScalePercent() / GridNodes.SCALE_OF_NODE;
    }

    /** Posterior mean weight of a point: 1.25 on the curve; below 0.4 the point looks like an outlier. */
    public double weightOf(int point) {
        return cells.pullWeights[point];
    }

    /** Quantile of the peak. */
    public double peakQuantile(double probability) {
        return peaks().at(probability);
    }

    /** Quantile of the least setting. */
    public double leastQuantile(double probability) {
        return leastSettings().at(probability);
    }

    /** Quantile of the upper setting at which the response is near-best below the peak: the lean edge of a mixture. */
    public double upperEdgeQuantile(double probability) {
        return edges(-1).at(probability);
    }

    /** Quantile of the lower such setting, whatever is permitted: the rich edge of a mixture. */
    public double lowerEdgeQuantile(double probability) {
        return edges(1).at(probability);
    }

    private CellQuantiles edges(int side) {
        PeakShape.Fall fall = new PeakShape.Fall(1, sweep.permitted().nearBest());
        double[] values = new double[cells.count];
        for (int c = 0; c < cells.count; c++) {
            double distance = PeakShape.leastDistance(cells.curvature[c], side * cells.asymmetry[c], fall);
            values[c] = cells.peak[c] + side * distance;
        }
        return CellQuantiles.ofCells(values, cells.weight, cells.peakStep);
    }

    /** Probability that the peak lies below the setting. */
    public double probabilityPeakBelow(double setting) {
        return peaks().below(setting);
    }

    /** Probability that the least setting lies below the setting. */
    public double probabilityLeastBelow(double setting) {
        return leastSettings().below(setting);
    }

    private CellQuantiles peaks() {
        return CellQuantiles.ofNodes(cells.peakNodes, cells.peakNodeWeights, cells.peakStep);
    }

    private CellQuantiles leastSettings() {
        return CellQuantiles.ofCells(least, cells.weight, cells.peakStep);
    }

    private static Belief moments(double[] values, double[] weights) {
        double mean = 0;
        for (int i = 0; i < values.length; i++) {
            mean += weights[i] * values[i];
        }
        double variance = 0;
        for (int i = 0; i < values.length; i++) {
            variance += weights[i] * (values[i] - mean) * (values[i] - mean);
        }
        return new Belief(mean, Math.sqrt(variance));
    }
}
