package org.nextpull.response;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.SparkMap;
import org.nextpull.math.Series;
import org.nextpull.unit.Advance;

/**
 * Advance that an ignition took out by itself at one speed of a pull, which it does when it hears knock.
 *
 * @param rpm speed of the row
 * @param deg how far the measured advance lies below what the other pulls let expect; above {@value #LEAST_DEG}
 */
public record SparkTakenOut(double rpm, double deg) {
    /** Less is the usual jitter and rounding of a logged advance. Common practice, no source. */
    static final double LEAST_DEG = 2;

    /** Other pulls agree where their advance at a speed, moved by one amount for the whole pull, differs by no more. */
    private static final double AGREE_DEG = 1;

    /** Pulls for which the same advance was asked, to the finest step of usual ignitions. */
    private static final double SAME_DEG = 0.25;

    /** A pull is judged by so many pulls before it and as many behind it, so that the cost of a decision is bounded however long the day. */
    public static final int REACH = 30;

    /**
     * Where a pull's advance falls below that of the others: of those for which the same advance was asked, else of at least two whose
     * maps have one shape.
     *
     * @param pull the pull
     * @param day pulls of its day so far that are within {@link #REACH} of it, itself among them or not
     */
    public static List<SparkTakenOut> in(MeasuredPull pull, List<MeasuredPull> day) {
        List<Figures.AtSpeed> rows = rows(pull);
        List<MeasuredPull> others = new ArrayList<>();
        for (MeasuredPull other : day) {
            if (!rows.isEmpty()
                    && other.number() != pull.number()
                    && other.setting().isSameConfiguration(pull.setting())) {
                others.add(other);
            }
        }
        List<MeasuredPull> alike = others.stream()
                .filter(other -> isAskedAlike(pull, other) && !rows(other).isEmpty())
                .toList();
        if (alike.isEmpty() && areFlat(pull, others)) {
            return List.of();
        }
        List<List<Double>> expected =
                rows.stream().<List<Double>>map(row -> new ArrayList<>()).toList();
        for (MeasuredPull other : alike.isEmpty() ? others : alike) {
            expect(rows, other, alike.isEmpty(), expected);
        }
        List<SparkTakenOut> found = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            OptionalDouble middle = alike.isEmpty() ? agreed(expected.get(row)) : median(expected.get(row));
            double deg = middle.orElse(0) - deg(rows.get(row));
            if (middle.isPresent() && deg > LEAST_DEG) {
                found.add(new SparkTakenOut(rows.get(row).rpm(), deg));
            }
        }
        return found;
    }

    /** Whether no other pull, moved by whatever it is apart from this one, can lie above it by what would be told. */
    private static boolean areFlat(MeasuredPull pull, List<MeasuredPull> others) {
        double own = pull.advanceSpreadDeg();
        return others.stream().allMatch(other -> own + other.advanceSpreadDeg() <= LEAST_DEG);
    }

    /**
     * Where a pull's advance falls below a map that was asked for, while it follows that map at half of its speeds or more. A pull that
     * does not follow was run with another map, and nothing is told by this one.
     */
    public static List<SparkTakenOut> in(MeasuredPull pull, SparkMap asked) {
        List<SparkTakenOut> found = new ArrayList<>();
        int followed = 0;
        List<Figures.AtSpeed> rows = rows(pull);
        for (Figures.AtSpeed row : rows) {
            double deg = asked.degAt(row.rpm()) - deg(row);
            followed += Math.abs(deg) <= AGREE_DEG ? 1 : 0;
            if (deg > LEAST_DEG) {
                found.add(new SparkTakenOut(row.rpm(), deg));
            }
        }
        return 2 * followed >= rows.size() ? found : List.of();
    }

    /**
     * Whether it is worth asking what map was wanted: where one speed lies lower against the pull before than most speeds do. Of a first
     * pull only the plan says what stood there, and that may be written down roughly.
     */
    public static boolean mayBeIn(MeasuredPull pull, List<MeasuredPull> before) {
        if (before.isEmpty()) {
            return false;
        }
        List<Figures.AtSpeed> last = rows(before.get(before.size() - 1));
        List<Double> moved = new ArrayList<>();
        for (Figures.AtSpeed row : rows(pull)) {
            advanceAt(last, row.rpm()).ifPresent(deg -> moved.add(deg(row) - deg));
        }
        double middle = median(moved).orElse(0);
        return moved.isEmpty() || moved.stream().anyMatch(deg -> deg < middle - AGREE_DEG);
    }

    /** Adds what another pull lets expect in each row: its advance there, moved by the middle of what lies between the two pulls if wanted. */
    private static void expect(
            List<Figures.AtSpeed> rows, MeasuredPull other, boolean isMoved, List<List<Double>> expected) {
        List<Figures.AtSpeed> theirs = rows(other);
        List<OptionalDouble> there =
                rows.stream().map(row -> advanceAt(theirs, row.rpm())).toList();
        List<Double> apart = new ArrayList<>();
        for (int row = 0; row < rows.size() && isMoved; row++) {
            if (there.get(row).isPresent()) {
                apart.add(deg(rows.get(row)) - there.get(row).getAsDouble());
            }
        }
        double by = median(apart).orElse(0);
        for (int row = 0; row < rows.size(); row++) {
            if (there.get(row).isPresent()) {
                expected.get(row).add(there.get(row).getAsDouble() + by);
            }
        }
    }

    private static boolean isAskedAlike(MeasuredPull one, MeasuredPull other) {
        Optional<Advance> asked = one.asked().advance();
        return asked.isPresent()
                && other.asked()
                        .advance()
                        .filter(advance -> Math.abs(advance.deg() - asked.get().deg()) <= SAME_DEG)
                        .isPresent();
    }

    /** The middle of what most of the other pulls let expect; empty where they are fewer than two or do not agree. */
    private static OptionalDouble agreed(List<Double> expected) {
        OptionalDouble middle = median(expected);
        long near = expected.stream()
                .filter(deg -> Math.abs(deg - middle.orElse(0)) <= AGREE_DEG)
                .count();
        return near >= 2 && 2 * near > expected.size() ? middle : OptionalDouble.empty();
    }

    private static OptionalDouble median(List<Double> values) {
        return values.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Series.of(values).median());
    }

    private static OptionalDouble advanceAt(List<Figures.AtSpeed> rows, double rpm) {
        for (Figures.AtSpeed row : rows) {
            if (row.rpm() == rpm) {
                return OptionalDouble.of(deg(row));
            }
        }
        return OptionalDouble.empty();
    }

    private static double deg(Figures.AtSpeed row) {
        return row.advance().orElseThrow().deg();
    }

    /** The rows that have an advance. */
    private static List<Figures.AtSpeed> rows(MeasuredPull pull) {
        List<Figures.AtSpeed> rows = new ArrayList<>();
        for (Figures.AtSpeed row : pull.figures().map(Figures::rows).orElse(List.of())) {
            if (row.advance().isPresent()) {
                rows.add(row);
            }
        }
        return rows;
    }
}
