package org.nextpull.advice;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.RowCaps;
import org.nextpull.fit.SurfaceAim;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.unit.Lambda;

/** A day seen at one mixture: what is wanted, what is forbidden, and the maps between the two. */
final class PlannerView {
    /** A cap counts against what may be had where it holds a row this far below its best, degrees. */
    private static final double CAP_BITES_DEG = 0.75;

    private static final double LITTLE_DEG = 1e-9;

    final double[] rows;
    final StepLimit limit;
    /** Best advance at each row, caps or not. */
    final double[] best;
    /** What knock, its level and the plan leave of each row. */
    final RowCaps caps;
    /** What the cells can hold of that, where it is less than the best. */
    final RowCaps lossCaps;

    final SurfaceAim aim;
    private final SettingGrid grid;
    private final double least;

    /** What does not depend on the mixture. */
    record Day(
            SurfacePosterior posterior,
            List<TriedPull> pulls,
            Exclusions exclusions,
            StepLimit.RowLevels levels,
            SettingGrid grid,
            PlannerRules.Spark rules) {}

    private final double stepDeg;

    PlannerView(Day day, Optional<Lambda> lambda) {
        stepDeg = day.rules.largestStepDeg();
        rows = day.posterior.rows().rpm();
        grid = day.grid;
        least = day.rules.leastDeg();
        limit = new StepLimit(day.exclusions, day.rules, day.levels, lambda);
        caps = limit.caps(rows);
        RowCaps none = RowCaps.none(rows.length);
        SurfaceAim free = aim(day, lambda, none);
        best = free.wantedDeg();
        lossCaps = lossCaps(none);
        aim = lossCaps == none ? free : aim(day, lambda, lossCaps);
    }

    private static SurfaceAim aim(Day day, Optional<Lambda> lambda, RowCaps caps) {
        return day.grid.isFlat()
                ? SurfaceAim.flat(day.posterior, lambda, caps)
                : SurfaceAim.map(day.posterior, lambda, caps);
    }

    /** Those given where no cap bites. */
    private RowCaps lossCaps(RowCaps none) {
        double[] wanted = best.clone();
        boolean bites = false;
        for (int r = 0; r < rows.length; r++) {
            bites |= caps.deg(r) < best[r];
            wanted[r] = Math.min(best[r], caps.deg(r));
        }
        if (!bites) {
            return none;
        }
        double[] held = grid.map(wanted, limit::capDeg).degAt(rows);
        for (int r = 0; r < rows.length; r++) {
            held[r] = held[r] < best[r] - CAP_BITES_DEG ? held[r] : Double.POSITIVE_INFINITY;
        }
        return RowCaps.ofDeg(held);
    }

    /** The map nearest to what is wanted that the next pull may have; the plan's least advance is kept. */
    SparkMap allowed(double[] wanted) {
        return made(wanted, limit::deg);
    }

    /** The same under another limit. */
    SparkMap made(double[] wanted, DoubleUnaryOperator allowed) {
        return grid.map(Arrays.stream(wanted).map(deg -> Math.max(deg, least)).toArray(), allowed);
    }

    /** How many pulls it takes until every cell may have what is wanted, where each stays clean: 1 where the next may have it. */
    int pullsTo(double[] wanted) {
        SparkMap next = allowed(wanted);
        double far = made(wanted, limit::capDeg).cells().stream()
                .mapToDouble(cell -> cell.advance().deg() - next.degAt(cell.rpm()))
                .max()
                .orElse(0);
        return 1 + (int) Math.ceil(Math.max(0, far - LITTLE_DEG) / stepDeg);
    }

    /** The best map, moved by some degrees everywhere. */
    SparkMap shifted(double deg) {
        return allowed(Arrays.stream(best).map(at -> at + deg).toArray());
    }

    /** Mean way that the rows have still to go to the best that caps leave, degrees. */
    double gapDeg() {
        double sum = 0;
        for (int r = 0; r < rows.length; r++) {
            sum += Math.min(best[r], caps.deg(r)) - limit.mostAdvancedClean(rows[r]);
        }
        return sum / rows.length;
    }

    /**
     * Whether no row of a map that was run stands above its cap: of the map that was set, since a log averages over speed, and a row
     * beside a bend of the map reads a little more than what was set there.
     */
    boolean isUnderCaps(SparkMap run) {
        double[] set = grid.set(run).degAt(rows);
        for (int r = 0; r < rows.length; r++) {
            if (set[r] > caps.deg(r) + 1e-9) {
                return false;
            }
        }
        return true;
    }

    /** Whether no cell of a map that feeds a row lies below the plan's least advance. */
    boolean isWithinPlan(SparkMap map) {
        return Arrays.stream(map.degAt(rows)).allMatch(deg -> deg >= least - 1e-9);
    }

    /** What decides a row of a map that was made at this mixture; knock or the plan also where they hold a cell that the row shares. */
    ChosenBy decidedBy(SparkMap map, int row) {
        double near = 0.75;
        double deg = map.degAt(rows[row]);
        if (deg >= best[row] - near) {
            return ChosenBy.PEAK;
        }
        if (deg >= caps.deg(row) - near) {
            return limit.isPlanLimited(rows[row]) ? ChosenBy.PLAN_LIMIT : ChosenBy.KNOCK_LIMIT;
        }
        if (lossCaps.isCapped(row) && deg >= lossCaps.deg(row) - near) {
            return Arrays.stream(rows).allMatch(limit::isPlanLimited) ? ChosenBy.PLAN_LIMIT : ChosenBy.KNOCK_LIMIT;
        }
        return ChosenBy.HIGHEST_TRIED;
    }
}
