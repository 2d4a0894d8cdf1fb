package org.nextpull.advice;

import java.util.Optional;
import org.nextpull.fit.KnockLevels;
import org.nextpull.fit.RowCaps;
import org.nextpull.unit.Lambda;

/**
 * How far each speed may go in the next pull at one mixture: what knock, the level of knock and the plan leave, and no more than a step
 * beyond the furthest clean advance there.
 */
final class StepLimit {
    private final Exclusions exclusions;
    private final PlannerRules.Spark rules;
    private final RowLevels levels;
    private final Optional<Lambda> lambda;

    /** What a graded knock level allows at a speed, degrees; infinite where it says nothing. */
    interface RowLevels {
        double ceilingDeg(double rpm);
    }

    StepLimit(Exclusions exclusions, PlannerRules.Spark rules, RowLevels levels, Optional<Lambda> lambda) {
        this.exclusions = exclusions;
        this.rules = rules;
        this.levels = levels;
        this.lambda = lambda;
    }

    /** What knock, its level and the plan leave at a speed, degrees. */
    double capDeg(double rpm) {
        return Math.min(rules.mostDeg(), Math.min(exclusions.banDeg(rpm, lambda), levels.ceilingDeg(rpm)));
    }

    /** The cap at each row. */
    RowCaps caps(double[] rows) {
        double[] caps = new double[rows.length];
        for (int r = 0; r < rows.length; r++) {
            caps[r] = capDeg(rows[r]);
        }
        return RowCaps.ofDeg(caps);
    }

    /** Whether the plan is what limits a speed, not knock. */
    boolean isPlanLimited(double rpm) {
        return capDeg(rpm) >= rules.mostDeg();
    }

    double mostAdvancedClean(double rpm) {
        return exclusions.mostAdvancedClean(rpm, lambda);
    }

    /** The most that the next pull may have at a speed, degrees. */
    double deg(double rpm) {
        return Math.min(capDeg(rpm), mostAdvancedClean(rpm) + rules.largestStepDeg());
    }

    /** The most advance at which the level of knock is likely to stay under its limit, by speed: that of the lower of the two rows around. */
    static final class LevelCeiling implements StepLimit.RowLevels {
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
}
