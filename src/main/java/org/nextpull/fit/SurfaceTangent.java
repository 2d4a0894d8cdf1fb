package org.nextpull.fit;

/** The fall of torque below its best at each reading, and its derivatives, at a point of linearisation. */
final class SurfaceTangent {
    /** Beyond this the asymmetry does not grow further, degrees. */
    static final double FARTHEST_DEG = 14;
    /** Beyond this the asymmetry of the mixture does not, hundredths of lambda. */
    private static final double FARTHEST_HUNDREDTHS = 8;

    /** Of the fall that the asymmetry leaves at least. */
    static final double LEAST_SHARE = 0.3;
    /** Share of the fall that the curve may be wrong by. */
    private static final double MISFIT = 0.05;

    /** Asymmetry counts by ten degrees, or hundredths of lambda. */
    static final double PER_TEN = 0.1;

    private final ReadingTable table;
    private final CommonColumns columns;
    private final double[] priorMean;
    private final double[] rowCurvature;
    private final double[] rowAsymmetry;
    private final double[] rowWaves;
    /** Percent below the best torque of the row. */
    final double[] fall;
    /** Derivative of the torque by the best advance of the row. */
    final double[] byPeak;
    /** Derivatives of the torque by the common columns, reading by reading. */
    final double[] byCommon;
    /** Percent that the form of the curve may be off by. */
    final double[] misfit;
    /** Variance of the reading beside its pull, percent squared; set by the solver. */
    final double[] variance;

    SurfaceTangent(ReadingTable table, CommonColumns columns, double[] priorMean) {
        this.table = table;
        this.columns = columns;
        this.priorMean = priorMean;
        rowCurvature = new double[table.rowCount];
        rowAsymmetry = new double[table.rowCount];
        rowWaves = waves(table.rows);
        fall = new double[table.count];
        byPeak = new double[table.count];
        byCommon = new double[table.count * columns.count];
        misfit = new double[table.count];
        variance = new double[table.count];
        for (int i = 0; i < table.pullCount; i++) {
            for (int k = table.start[i]; k < table.start[i + 1]; k++) {
                byCommon[k * columns.count + columns.drift(table.day[i])] = table.order[i];
                if (table.day[i] > 0) {
                    byCommon[k * columns.count + columns.level(table.day[i])] = 1;
                }
            }
        }
    }

    /** Level, slope and two waves of ln curvature at each row. */
    static double[] waves(SpeedRows rows) {
        double[] waves = new double[rows.size() * CommonColumns.CURVATURES];
        for (int r = 0; r < rows.size(); r++) {
            int at = r * CommonColumns.CURVATURES;
            waves[at] = 1;
            if (rows.hasShapes()) {
                waves[at + 1] = rows.krpmFromMean(r) / rows.halfBandKrpm();
                waves[at + 2] = rows.wave(2, r);
                waves[at + 3] = rows.wave(3, r);
            }
        }
        return waves;
    }

    void at(SolverState state, double curvature) {
        double[] c = state.common;
        for (int r = 0; r < table.rowCount; r++) {
            double ln = 0;
            for (int j = 0; j < CommonColumns.CURVATURES; j++) {
                ln += c[CommonColumns.CURVATURE + j] * rowWaves[r * CommonColumns.CURVATURES + j];
            }
            rowCurvature[r] = curvature * Math.exp(ln);
            rowAsymmetry[r] =
                    c[CommonColumns.ASYMMETRY] + c[CommonColumns.ASYMMETRY_SLOPE] * table.rows.krpmFromMean(r);
        }
        for (int k = 0; k < table.count; k++) {
            sparkAt(k, state, curvature);
        }
        if (columns.mixture.isPresent()) {
            int first = columns.mixture.get();
            Mixture mixture = new Mixture(Math.exp(c[first + 2]), c[first + 1], c[first + 3]);
            for (int k = 0; k < table.count; k++) {
                mixtureAt(k, first, mixture);
            }
        }
    }

    private void sparkAt(int k, SolverState state, double curvature) {
        int row = table.row[k];
        double shift = columns.mixture.isPresent() ? state.common[columns.mixture.get()] * table.hundredths[k] : 0;
        double x = table.advance[k] - priorMean[row] - state.rho[row] - shift;
        double near = Math.max(-FARTHEST_DEG, Math.min(FARTHEST_DEG, x));
        double g = rowAsymmetry[row];
        double bent = 1 - g * near * PER_TEN;
        double share = Math.max(LEAST_SHARE, bent);
        double kr = rowCurvature[row];
        fall[k] = kr * x * x * share;
        byPeak[k] = kr * (2 * x * share - (near == x && bent == share ? x * x * g * PER_TEN : 0));
        misfit[k] = MISFIT * curvature * near * near;
        int at = k * columns.count;
        double cubic = kr * x * x * near * PER_TEN;
        byCommon[at + CommonColumns.ASYMMETRY] = cubic;
        byCommon[at + CommonColumns.ASYMMETRY_SLOPE] = cubic * table.rows.krpmFromMean(row);
        for (int j = 0; j < CommonColumns.CURVATURES; j++) {
            byCommon[at + CommonColumns.CURVATURE + j] = -fall[k] * rowWaves[row * CommonColumns.CURVATURES + j];
        }
    }

    private record Mixture(double fall, double best, double asymmetry) {}

    private void mixtureAt(int k, int first, Mixture mixture) {
        double w = table.hundredths[k] - mixture.best;
        double near = Math.max(-FARTHEST_HUNDREDTHS, Math.min(FARTHEST_HUNDREDTHS, w));
        double g = mixture.asymmetry;
        double bent = 1 - g * near * PER_TEN;
        double share = Math.max(LEAST_SHARE, bent);
        double lost = mixture.fall * w * w * share;
        int at = k * columns.count + first;
        byCommon[at] = byPeak[k] * table.hundredths[k];
        byCommon[at + 1] = mixture.fall * (2 * w * share - (near == w && bent == share ? w * w * g * PER_TEN : 0));
        byCommon[at + 2] = -lost;
        byCommon[at + 3] = mixture.fall * w * w * near * PER_TEN;
        fall[k] += lost;
    }
}
