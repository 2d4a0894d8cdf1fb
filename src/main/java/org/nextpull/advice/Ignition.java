package org.nextpull.advice;

import java.util.Arrays;
import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** What an ignition takes, and so in what the spark of a day is counted. */
public enum Ignition {
    /** An advance in each cell of a map. */
    MAP,
    /** One advance. */
    FLAT,
    /** Degrees added everywhere to a map that no log shows. */
    OFFSET,
    /** The plan sets no spark: it stands as it is, and counts from there. */
    STANDING;

    /** A pull whose rows stay within this of one number was run flat, degrees. */
    private static final double FLAT_DEG = 1;
    /** But for this share of them: an ignition that takes out advance where it hears knock does so at a few speeds. */
    private static final double FEW_ROWS = 0.25;
    /** Knock forbids the margin below it as well: what is left lies below that, by the least that a setting can, degrees. */
    private static final double BELOW_MARGIN_DEG = 1e-3;

    /** That of a day: the plan says so, or says nothing else and the log shows a map. */
    static Ignition of(Day day) {
        return of(day, new MapShown());
    }

    /** The same of a day that is gone through pull by pull. */
    static Ignition of(Day day, MapShown shown) {
        SweepPlan plan = day.plan();
        if (plan.timing().isEmpty()) {
            return STANDING;
        }
        return switch (plan.timing().get().sets()) {
            case MAP -> MAP;
            case OFFSET -> OFFSET;
            case FLAT -> shown.by(day.pulls()) ? MAP : FLAT;
        };
    }

    /** Whether a pull was run with advances that differ over speed. */
    static boolean isMapped(MeasuredPull pull) {
        if (pull.advanceSpreadDeg() <= FLAT_DEG) {
            return false;
        }
        double[] deg = pull.figures().map(Figures::advancesDeg).orElse(new double[0]);
        Arrays.sort(deg);
        double middle = deg[deg.length / 2];
        long off = Arrays.stream(deg)
                .filter(value -> Math.abs(value - middle) > FLAT_DEG)
                .count();
        return off > FEW_ROWS * deg.length;
    }

    /** Whether it takes a number for each speed. */
    public boolean isMap() {
        return this == MAP;
    }

    /** The one number that a pull was run with, where it is known; of a map its mean. */
    Optional<Advance> number(MeasuredPull pull) {
        return switch (this) {
            case MAP, FLAT -> pull.setting().advance();
            case OFFSET -> pull.setting().offset();
            case STANDING -> Optional.of(Advance.ofDeg(0));
        };
    }

    /** A setting of this ignition to ask for. */
    EngineSetting setting(SparkMap map, Optional<Lambda> lambda) {
        Optional<Advance> number = Optional.of(map.cells().get(0).advance());
        return switch (this) {
            case MAP -> EngineSetting.of(map, lambda);
            case FLAT -> EngineSetting.ofNumbers(number, Optional.empty(), lambda);
            case OFFSET -> EngineSetting.ofNumbers(Optional.empty(), number, lambda);
            case STANDING -> EngineSetting.ofNumbers(Optional.empty(), Optional.empty(), lambda);
        };
    }

    /** What a plan lets the spark do, without what the day forbids. */
    PlannerRules.Spark rules(SweepPlan plan) {
        double margin = plan.limits().knockMarginDeg() + BELOW_MARGIN_DEG;
        if (this == STANDING) {
            return new PlannerRules.Spark(0, 0, 1, 1, margin);
        }
        TimingPlan timing = plan.timing().orElseThrow();
        SparkGrid grid = grid(plan);
        return new PlannerRules.Spark(
                this == MAP
                        ? timing.least().deg()
                        : Math.min(timing.start().deg(), grid.up(timing.least().deg())),
                this == MAP
                        ? timing.most().deg()
                        : Math.max(timing.start().deg(), grid.down(timing.most().deg())),
                timing.step().largest(),
                timing.step().resolution(),
                margin);
    }

    /** The values that can be set: one number lies whole steps from the plan's start, a cell of a map from none. */
    SparkGrid grid(SweepPlan plan) {
        return plan.timing()
                .map(timing -> new SparkGrid(
                        this == MAP ? 0 : timing.start().deg(), timing.step().resolution()))
                .orElse(new SparkGrid(0, 1));
    }
}
