package org.nextpull.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.nextpull.unit.Span;

/** Seeded sweeps of invented engines whose best advance rises smoothly with speed. */
class RowFitsTest {
    private static final double[] SETTINGS = {20, 24, 28, 32, 30, 26};
    private static final int ROWS = 13;

    /** So many engines are also fitted row by row, for comparison. */
    private static final int ALONE = 8;

    private static final double PULL_SCATTER = 0.003;
    private static final double ROW_SCATTER = 0.002;

    private static double peak(int row, double bend) {
        double u = (row - 6) / 6.0;
        return 27.5 + 3 * u + bend * u * u;
    }

    /** Share of row intervals that hold, and root mean square errors pooled and each row on its own. */
    private record Score(double held, double pooled, double alone, double printed) {}

    private static Score score(int engines) {
        Random random = new Random(20_240);
        double held = 0;
        double pooled = 0;
        double alone = 0;
        int printed = 0;
        for (int engine = 0; engine < engines; engine++) {
            double bend = random.nextGaussian();
            double curvature = Math.exp(Math.log(4e-4) + 0.4 * random.nextGaussian());
            List<List<SweepPoint>> rows = new ArrayList<>();
            for (int row = 0; row < ROWS; row++) {
                rows.add(new ArrayList<>());
            }
            List<SweepPoint> band = new ArrayList<>();
            for (int i = 0; i < SETTINGS.length; i++) {
                double off = PULL_SCATTER * random.nextGaussian();
                double mean = 0;
                for (int row = 0; row < ROWS; row++) {
                    double x = SETTINGS[i] - peak(row, bend);
                    double level = 180 + 2 * row;
                    double value = level * (1 - curvature * x * x) * (1 + off + ROW_SCATTER * random.nextGaussian());
                    rows.get(row).add(new SweepPoint(SETTINGS[i], value, i + 1, i));
                    mean += value / ROWS;
                }
                band.add(new SweepPoint(SETTINGS[i], mean, i + 1, i));
            }
            SweepPriors priors = SweepPriors.timing(28);
            Permitted permitted = new Permitted(38, 0.002);
            SweepPosterior posterior = SweepPosterior.of(Sweep.of(band, priors, Span.of(14, 38), permitted));
            List<RowSweep> sweeps = new ArrayList<>();
            for (int row = 0; row < ROWS; row++) {
                sweeps.add(new RowSweep(3000 + 250 * row, rows.get(row)));
            }
            List<RowFit> fits = RowFits.of(posterior, sweeps);
            for (int row = 0; row < ROWS; row++) {
                RowFit fit = fits.get(row);
                double truth = peak(row, bend);
                double error = fit.peak().centre() - truth;
                pooled += error * error;
                if (engine < ALONE) {
                    SweepPosterior own = SweepPosterior.of(Sweep.of(rows.get(row), priors, Span.of(14, 38), permitted));
                    double ownError = own.peak().centre() - truth;
                    alone += ownError * ownError;
                }
                if (fit.isBracketed()) {
                    printed++;
                    held += fit.ninety().contains(truth - Math.sqrt(0.002 / curvature)) ? 1 : 0;
                }
            }
        }
        double all = (double) engines * ROWS;
        return new Score(
                held / printed, Math.sqrt(pooled / all), Math.sqrt(alone / ((double) ALONE * ROWS)), printed / all);
    }

    @Test
    void rowIntervalsHoldAndRowsTogetherBeatRowsAlone() {
        Score score = score(60);
        assertThat(score.held()).isBetween(0.86, 0.99);
        assertThat(score.pooled()).isLessThan(0.9 * score.alone());
        assertThat(score.printed()).isGreaterThan(0.5);
    }

    @Test
    void aRowWithTooFewPullsIsLeftOut() {
        List<SweepPoint> band = List.of(
                new SweepPoint(22, 195, 1, 0),
                new SweepPoint(26, 199, 2, 1),
                new SweepPoint(30, 199.5, 3, 2),
                new SweepPoint(34, 197, 4, 3));
        SweepPosterior posterior =
                SweepPosterior.of(Sweep.of(band, SweepPriors.timing(28), Span.of(14, 38), new Permitted(38, 0.002)));
        List<RowFit> fits =
                RowFits.of(posterior, List.of(new RowSweep(3000, band.subList(0, 2)), new RowSweep(3250, band)));
        assertThat(fits).hasSize(1);
        assertThat(fits.get(0).rpm()).isEqualTo(3250);
    }
}
