package org.nextpull.advice;

import org.nextpull.fit.KnockLevels;

/** The most advance at which the level of knock is likely to stay under its limit, by speed: that of the lower of the two rows around. */
final class LevelCeiling implements StepLimit.RowLevels {
    private final double[] rows;
    private final double[] ceiling;

    LevelCeiling(KnockLevels levels, double[] rows) {
        this.rows = rows.clone();
        ceiling = levels.ceilingsDeg();
    }

    @Override
    public double ceilingDeg(double rpm) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int r = 0; r < rows.length; r++) {
            boolean isBelow = rows[r] <= rpm && (r + 1 == rows.length || rows[r + 1] > rpm);
            boolean isAbove = rows[r] >= rpm && (r == 0 || rows[r - 1] < rpm);
            lowest = isBelow || isAbove ? Math.min(lowest, ceiling[r]) : lowest;
        }
        return lowest;
    }
}
