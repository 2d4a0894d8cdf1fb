package org.nextpull.api;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.PeakMap;
import org.nextpull.fit.RowCaps;
import org.nextpull.fit.SpeedRows;
import org.nextpull.fit.Surface;
import org.nextpull.fit.SurfaceAim;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.fit.SurfacePriors;
import org.nextpull.fit.SurfacePull;
import org.nextpull.math.NormalMixture;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Span;

/**
 * Torque against spark, fitted to the pulls of one sweep that each ran one advance, in the order in which they were run: the fit that
 * advice rests on, without a plan. It knows of no knock and of no limit. Immutable.
 */
public final class SparkFit {
    /** Speed of a row that stands for a whole band: any one will do. */
    private static final double BAND_RPM = 1000;

    private static final double PERCENT = 100;
    private static final double BRACKETED = 0.95;

    private final SurfacePosterior posterior;
    private final SurfaceAim flat;
    private final Span tried;

    private SparkFit(SpeedRows rows, List<SurfacePull> pulls, SparkMap expected, Span tried) {
        this.posterior = SurfacePosterior.of(new Surface(rows, pulls, SurfacePriors.usual(expected)));
        this.flat = SurfaceAim.flat(posterior, Optional.empty(), RowCaps.none(rows.size()));
        this.tried = tried;
    }

    /**
     * Best advance at one speed or over one band.
     *
     * @param deg advance of most torque, degrees before top dead centre: the mean of what the pulls allow
     * @param ninety 90 % interval of it, degrees
     * @param isBracketed whether it lies between settings that were run, with 95 % probability on either side; an advance that is not
     *     bracketed is where the fit points, and no optimum
     */
    public record Peak(double deg, Span ninety, boolean isBracketed) {}

    /**
     * Fits average torques.
     *
     * @param advanceDeg advance of each pull, degrees before top dead centre
     * @param torqueNm torque of each pull, N.m, above 0, averaged over the same band: as many as there are advances
     * @param expected the best advance as it was thought to be before the pulls, good to about 3 degrees
     * @throws IllegalArgumentException where there is no pull, the arrays differ in length, or a number is not in its range
     */
    public static SparkFit of(double[] advanceDeg, double[] torqueNm, Advance expected) {
        double[][] rows = Arrays.stream(torqueNm)
                .mapToObj(torque -> new double[] {torque})
                .toArray(double[][]::new);
        return of(new double[] {BAND_RPM}, advanceDeg, rows, expected);
    }

    /**
     * Fits torque at several speeds.
     *
     * @param rpm the speeds, rising, above 0
     * @param advanceDeg advance of each pull, degrees before top dead centre
     * @param torqueNm for each pull its torque at each speed, N.m, above 0
     * @param expected the best advance as it was thought to be before the pulls, good to about 3 degrees
     * @throws IllegalArgumentException where there is no pull or no speed, arrays differ in length, or a number is not in its range
     */
    public static SparkFit of(double[] rpm, double[] advanceDeg, double[][] torqueNm, Advance expected) {
        if (advanceDeg.length == 0 || advanceDeg.length != torqueNm.length) {
            throw new IllegalArgumentException(
                    advanceDeg.length + " advances and the torque of " + torqueNm.length + " pulls");
        }
        List<SurfacePull> pulls = IntStream.range(0, advanceDeg.length)
                .mapToObj(
                        pull -> new SurfacePull(0, pull, false, readings(rpm.length, advanceDeg[pull], torqueNm[pull])))
                .toList();
        return new SparkFit(
                SpeedRows.ofRpm(rpm),
                pulls,
                SparkMap.flat(expected),
                Span.of(
                        DoubleStream.of(advanceDeg).min().orElseThrow(),
                        DoubleStream.of(advanceDeg).max().orElseThrow()));
    }

    private static List<SurfacePull.Reading> readings(int rows, double advanceDeg, double[] torqueNm) {
        if (torqueNm.length != rows) {
            throw new IllegalArgumentException(rows + " speeds and " + torqueNm.length + " torques of a pull");
        }
        List<SurfacePull.Reading> readings = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            if (!(torqueNm[row] > 0)) {
                throw new IllegalArgumentException("torque of " + torqueNm[row] + " N.m");
            }
            readings.add(SurfacePull.Reading.of(row, advanceDeg, PERCENT * Math.log(torqueNm[row])));
        }
        return readings;
    }

    /** The best single advance for all speeds together. */
    public Peak best() {
        NormalMixture best = posterior.bestFlat();
        boolean bracketed = best.below(tried.low()) < 1 - BRACKETED && best.below(tried.high()) > BRACKETED;
        return new Peak(best.mean(), Span.of(best.quantile(0.05), best.quantile(0.95)), bracketed);
    }

    /** The best advance at each speed, in the order in which they were given. */
    public List<Peak> bySpeed() {
        PeakMap peaks = posterior.peaks();
        return IntStream.range(0, posterior.rows().size())
                .mapToObj(row -> new Peak(
                        peaks.mean(row),
                        peaks.ninety(row),
                        peaks.chanceBelow(row, tried.low()) < 1 - BRACKETED
                                && peaks.chanceBelow(row, tried.high()) > BRACKETED))
                .toList();
    }

    /**
     * The least single advance that gives up no more than a share of the torque.
     *
     * @param percent share, in percent, 0 or above; 0 gives the best advance itself
     * @return degrees before top dead centre
     */
    public double leastDeg(double percent) {
        return flat.leastWithin(percent)[0];
    }

    /**
     * What one advance at all speeds is expected to leave of the torque that the best single one makes, percent; it grows with the doubt
     * about where that lies.
     *
     * @param deg degrees before top dead centre
     */
    public double leftPercent(double deg) {
        double[] everywhere = new double[posterior.rows().size()];
        Arrays.fill(everywhere, deg);
        return flat.left(everywhere).expectedPercent();
    }

    /** Standard deviation from pull to pull beside the curve, percent of the torque. */
    public double scatterPercent() {
        return posterior.scatterPercent();
    }

    /** Drift from pull to pull, percent of the torque; negative where torque falls over the day. */
    public double driftPercent() {
        return posterior.driftPercent(0);
    }
}
