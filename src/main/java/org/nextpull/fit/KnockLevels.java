package org.nextpull.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.nextpull.math.SymmetricFactor;

/**
 * How a graded knock level grows with advance, over all rows at once: {@code ln(level/limit) = b_r + k a}, one slope, levels that change
 * smoothly over speed. Immutable.
 */
public final class KnockLevels {
    private static final double AT_DEG = 25;
    private static final double LEVEL_AT = -4;
    private static final MapPrior.Spread SPREAD = new MapPrior.Spread(4, 0.6, 1, 1, 0.1);
    private static final Belief SLOPE = new Belief(0.35, 0.12);
    private static final double SCATTER = 0.3;
    /** Below this a level is the engine's noise. */
    private static final double NOISE = -3;

    private static final double SDS = 1.28;
    private static final double FARTHEST_DEG = 80;
    private static final double STEP_DEG = 0.1;

    private final int rows;
    private final double[] mean;
    private final double[] covariance;

    /**
     * One reading of the channel.
     *
     * @param row which of the rows
     * @param advanceDeg advance that stood there
     * @param lnOfLimit natural log of the level over its limit
     */
    public record Level(int row, double advanceDeg, double lnOfLimit) {}

    /** Fits levels at the rows; there may be none. */
    public KnockLevels(SpeedRows speedRows, List<Level> levels) {
        rows = speedRows.size();
        MapPrecision prior = new MapPrecision(SPREAD.covariance(speedRows, 1), rows);
        int size = rows + 1;
        SymmetricFactor normal = new SymmetricFactor(size);
        double[] h = normal.rows();
        double[] right = new double[size];
        double precision = 1 / (SCATTER * SCATTER);
        for (Level level : telling(levels)) {
            double a = level.advanceDeg() - AT_DEG;
            double y = level.lnOfLimit() - LEVEL_AT - SLOPE.centre() * a;
            h[level.row() * size + level.row()] += precision;
            h[level.row() * size + rows] += precision * a;
            h[rows * size + rows] += precision * a * a;
            right[level.row()] += precision * y;
            right[rows] += precision * a * y;
        }
        for (int r = 0; r < rows; r++) {
            for (int s = r; s < rows; s++) {
                h[r * size + s] += prior.at(r, s);
            }
        }
        h[rows * size + rows] += 1 / (SLOPE.sd() * SLOPE.sd());
        if (!normal.factor()) {
            throw new IllegalStateException("the levels of knock cannot be solved");
        }
        normal.solve(right);
        mean = right;
        covariance = normal.inverseFrom(0);
    }

    /** Readings above the noise; of a row without any, its most advanced, which was at the noise or below it. */
    private List<Level> telling(List<Level> levels) {
        List<Level> telling = new ArrayList<>();
        for (int r = 0; r < rows; r++) {
            int row = r;
            List<Level> own =
                    levels.stream().filter(level -> level.row() == row).toList();
            List<Level> above =
                    own.stream().filter(level -> level.lnOfLimit() > NOISE).toList();
            telling.addAll(above);
            if (above.isEmpty()) {
                own.stream()
                        .max(Comparator.comparingDouble(Level::advanceDeg))
                        .ifPresent(level -> telling.add(new Level(row, level.advanceDeg(), NOISE)));
            }
        }
        return telling;
    }

    /** Highest advance of each row at which the level stays under its limit with a chance of nine in ten, degrees. */
    public double[] ceilingsDeg() {
        double[] ceilings = new double[rows];
        for (int r = 0; r < rows; r++) {
            double deg = 0;
            while (deg < FARTHEST_DEG && upper(r, deg) <= 0) {
                deg += STEP_DEG;
            }
            ceilings[r] = deg - STEP_DEG;
        }
        return ceilings;
    }

    private double upper(int row, double deg) {
        double a = deg - AT_DEG;
        int size = rows + 1;
        double level = LEVEL_AT + mean[row] + (SLOPE.centre() + mean[rows]) * a;
        double variance = covariance[row * size + row]
                + 2 * a * covariance[row * size + rows]
                + a * a * covariance[rows * size + rows];
        return level + SDS * Math.sqrt(variance);
    }
}
