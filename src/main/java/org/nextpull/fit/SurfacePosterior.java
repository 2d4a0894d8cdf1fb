package org.nextpull.fit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.nextpull.channel.EngineSetting;
import org.nextpull.math.NormalMixture;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/**
 * What pulls say of torque over speed, advance and mixture, all rows of all pulls at once: a weighted handful of solved nodes, each a
 * normal distribution. Immutable; nothing here draws random numbers.
 */
public final class SurfacePosterior {
    private final Surface surface;
    private final RowError rowError;
    private final CommonColumns columns;
    final List<SolvedCell> cells;

    private SurfacePosterior(Surface surface, SurfaceGrid grid) {
        this.surface = surface;
        cells = List.copyOf(grid.solve());
        rowError = grid.rowError();
        columns = grid.columns();
    }

    public static SurfacePosterior of(Surface surface) {
        return new SurfacePosterior(surface, new SurfaceGrid(surface));
    }

    public Surface surface() {
        return surface;
    }

    /** One surface is solved in one way. */
    @Override
    public boolean equals(Object other) {
        return other instanceof SurfacePosterior posterior && surface.equals(posterior.surface);
    }

    @Override
    public int hashCode() {
        return surface.hashCode();
    }

    public SpeedRows rows() {
        return surface.rows();
    }

    RowError rowError() {
        return rowError;
    }

    CommonColumns columns() {
        return columns;
    }

    /** Best-torque advance of each row, at the mixture that was guessed where there is one. */
    public PeakMap peaks() {
        return new PeakMap(this, 0);
    }

    /** Best-torque advance of each row at a mixture. */
    public PeakMap peaks(Lambda lambda) {
        return new PeakMap(this, hundredths(lambda));
    }

    /** Best lambda, its spread as reported; empty where the mixture is no part of the surface. */
    public Optional<NormalMixture> bestLambda() {
        return surface.priors()
                .mixture()
                .flatMap(prior -> columns.mixture.map(first -> {
                    NormalMixture hundredths = mixture(
                            cell -> cell.common[first + 1], cell -> Math.sqrt(cell.commons(first + 1, first + 1)));
                    return hundredths
                            .widened(prior.widening())
                            .transformed(prior.guess().value(), 1 / MixturePrior.HUNDREDTHS);
                }));
    }

    /** What maps leave of the torque that caps allow, whatever the mixture. */
    public SurfaceLoss loss(RowCaps caps) {
        return new SurfaceLoss(this, Optional.empty(), caps);
    }

    /** The best single number over all rows, its spread as reported, at the mixture that was guessed where there is one. */
    public NormalMixture bestFlat() {
        return bestFlat(Optional.empty());
    }

    /** The same at a mixture. */
    NormalMixture bestFlat(Optional<Lambda> lambda) {
        return new FlatAim(this, lambda.map(this::hundredths), Double.POSITIVE_INFINITY)
                .best()
                .widened(surface.priors().limitWidening());
    }

    /** The best single number at a mixture, degrees. */
    public PosteriorValue flatDeg(Optional<Lambda> lambda) {
        return new PosteriorValue(bestFlat(lambda));
    }

    /** The best lambda; empty where the mixture is no part of the surface. */
    public Optional<PosteriorValue> lambda() {
        return bestLambda().map(PosteriorValue::new);
    }

    /** What the best map would gain over one number, percent of torque, as a 90 % interval. Knock is not looked at. */
    public Span gainOfMap(double flatDeg) {
        return loss(RowCaps.none(rows().size())).interval(everywhere(flatDeg));
    }

    /** The mean of that, percent of torque. */
    public double meanGainOfMap(double flatDeg) {
        return loss(RowCaps.none(rows().size())).of(everywhere(flatDeg)).expectedPercent();
    }

    private double[] everywhere(double flatDeg) {
        double[] deg = new double[rows().size()];
        Arrays.fill(deg, flatDeg);
        return deg;
    }

    /**
     * What one setting makes over another, percent of torque, mean over the rows; empty where no pull ran as far as one of them. Knock is
     * not looked at.
     */
    public Optional<PosteriorValue> gain(EngineSetting from, EngineSetting to) {
        return new SettingGain(this).of(from, to);
    }

    /** Percent of torque lost per hundredth of lambda squared away from the best; empty where the mixture is no part of the surface. */
    public OptionalDouble mixtureFallPercent() {
        return columns.mixture
                .map(first -> OptionalDouble.of(mean(cell -> Math.exp(cell.common[first + 2]))))
                .orElse(OptionalDouble.empty());
    }

    double hundredths(Lambda lambda) {
        return surface.priors().mixture().map(prior -> prior.hundredths(lambda)).orElse(0.0);
    }

    /** Mean of the best lambda; empty where the mixture is no part of the surface. */
    public Optional<Lambda> meanBestLambda() {
        return surface.priors()
                .mixture()
                .flatMap(prior -> columns.mixture.map(first -> prior.lambda(mean(cell -> cell.common[first + 1]))));
    }

    NormalMixture mixture(ToDoubleFunction<SolvedCell> mean, ToDoubleFunction<SolvedCell> sd) {
        return new NormalMixture(
                cells.stream().mapToDouble(cell -> cell.weight).toArray(),
                cells.stream().mapToDouble(mean).toArray(),
                cells.stream().mapToDouble(sd).toArray());
    }

    /** Mean over the nodes. */
    double mean(ToDoubleFunction<SolvedCell> value) {
        return cells.stream()
                .mapToDouble(cell -> cell.weight * value.applyAsDouble(cell))
                .sum();
    }

    /** Mean curvature over the rows, percent per degree squared. */
    public double curvaturePercent() {
        return mean(cell -> Arrays.stream(cell.curvature).average().orElseThrow());
    }

    /** Mean scatter from pull to pull, percent. */
    public double scatterPercent() {
        return mean(cell -> cell.node.scatter());
    }

    /** What a row of a sweep of speed is off by beside its pull, percent. */
    public double rowErrorPercent() {
        return rowError.sweep();
    }

    /** Mean drift of a day, percent of the torque a pull; days count from 0. */
    public double driftPercent(int day) {
        return mean(cell -> cell.common[columns.drift(day)]);
    }

    /** Days that the pulls are of. */
    public int days() {
        return surface.days();
    }

    /** Mean level of a day against the first, percent of the torque. */
    public double dayLevelPercent(int day) {
        return day == 0 ? 0 : mean(cell -> cell.common[columns.level(day)]);
    }

    /** What these pulls teach of another day, or of another fuel. */
    public SurfaceKnowledge knowledge() {
        return SurfaceKnowledge.of(this);
    }

    /** How much a pull counts: 1.25 where it agrees; below 0.4 the pull as a whole looks like an outlier. */
    public double weightOf(int pull) {
        return mean(cell -> cell.levelWeight[pull]);
    }
}
