package org.nextpull.response;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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

    /**
     * Where a pull's advance falls below that of the others: of those for which the same advance was asked, else of at least two whose
     * maps have one shape.
     *
     * @param pull the pull
     * @param day pulls of its day so far, itself among them or not
     */
    public static List<SparkTakenOut> in(MeasuredPull pull, List<MeasuredPull> day) {
        List<RowFigure> rows = rows(pull);
        List<MeasuredPull> others = day.stream()
                .filter(other -> other.number() != pull.number() && !rows(other).isEmpty())
                .filter(other -> other.setting().isSameConfiguration(pull.setting()))
                .toList();
        List<MeasuredPull> alike =
                others.stream().filter(other -> isAskedAlike(pull, other)).toList();
        List<SparkTakenOut> found = new ArrayList<>();
        for (RowFigure row : rows) {
            OptionalDouble expected = alike.isEmpty()
                    ? agreed(others.stream()
                            .flatMap(other ->
                                    moved(pull, other, row.rpm()).stream().boxed())
                            .toList())
                    : median(alike.stream()
                            .flatMap(other ->
                                    advanceAt(other, row.rpm()).stream().boxed())
                            .toList());
            double deg = expected.orElse(0) - row.advance().orElseThrow().deg();
            if (expected.isPresent() && deg > LEAST_DEG) {
                found.add(new SparkTakenOut(row.rpm(), deg));
            }
        }
        return found;
    }

    private static boolean isAskedAlike(MeasuredPull one, MeasuredPull other) {
        Optional<Advance> asked = one.setting().askedAdvance();
        return asked.isPresent()
                && other.setting()
                        .askedAdvance()
                        .filter(advance -> Math.abs(advance.deg() - asked.get().deg()) <= SAME_DEG)
                        .isPresent();
    }

    /** The advance of another pull at a speed, moved by the middle of what lies between the two pulls. */
    private static OptionalDouble moved(MeasuredPull pull, MeasuredPull other, double rpm) {
        List<Double> apart = new ArrayList<>();
        for (RowFigure row : rows(pull)) {
            advanceAt(other, row.rpm())
                    .ifPresent(deg -> apart.add(row.advance().orElseThrow().deg() - deg));
        }
        OptionalDouble by = median(apart);
        OptionalDouble deg = advanceAt(other, rpm);
        return by.isPresent() && deg.isPresent()
                ? OptionalDouble.of(deg.getAsDouble() + by.getAsDouble())
                : OptionalDouble.empty();
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
        List<Double> sorted = values.stream().sorted(Comparator.naturalOrder()).toList();
        int half = sorted.size() / 2;
        return sorted.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2);
    }

    private static OptionalDouble advanceAt(MeasuredPull pull, double rpm) {
        return rows(pull).stream()
                .filter(row -> row.rpm() == rpm)
                .mapToDouble(row -> row.advance().orElseThrow().deg())
                .findFirst();
    }

    private static List<RowFigure> rows(MeasuredPull pull) {
        return pull.figures().map(Figures::rows).orElse(List.of()).stream()
                .filter(row -> row.advance().isPresent())
                .toList();
    }
}
