package org.nextpull.response;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.RandomAccess;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Torque;

/** Rows of a pull as bare numbers, made when they are asked for: a day of ten thousand pulls keeps those of each. */
final class RowColumns extends AbstractList<Figures.AtSpeed> implements RandomAccess {
    private static final int SWEPT = 4;
    private static final int HELD = SWEPT + 1;

    private final int columns;

    /** Row by row: speed, torque, advance, lambda and, where a row was held, its time. What a row has not is NaN, which no unit allows. */
    private final double[] numbers;

    private final double advanceSpreadDeg;

    private RowColumns(List<Figures.AtSpeed> rows) {
        this.columns = rows.stream().anyMatch(row -> row.heldAtS().isPresent()) ? HELD : SWEPT;
        this.numbers = new double[rows.size() * columns];
        int at = 0;
        for (Figures.AtSpeed row : rows) {
            numbers[at] = row.rpm();
            numbers[at + 1] = row.torque().newtonMetres();
            numbers[at + 2] = row.advance().map(Advance::deg).orElse(Double.NaN);
            numbers[at + 3] = row.lambda().map(Lambda::value).orElse(Double.NaN);
            if (columns == HELD) {
                numbers[at + SWEPT] = row.heldAtS().orElse(Double.NaN);
            }
            at += columns;
        }
        double[] deg = advancesDeg();
        this.advanceSpreadDeg = deg.length == 0
                ? 0
                : Arrays.stream(deg).max().orElseThrow()
                        - Arrays.stream(deg).min().orElseThrow();
    }

    /** The same rows. */
    static List<Figures.AtSpeed> of(List<Figures.AtSpeed> rows) {
        return rows instanceof RowColumns ? rows : new RowColumns(rows);
    }

    boolean isHeld() {
        return columns == HELD;
    }

    /** How far apart the least and the most advance lie, worked out once: each decision asks it of all pulls of a day. */
    double advanceSpreadDeg() {
        return advanceSpreadDeg;
    }

    /** The advances that are known, in degrees. */
    double[] advancesDeg() {
        double[] deg = new double[size()];
        int count = 0;
        for (int at = 2; at < numbers.length; at += columns) {
            if (!Double.isNaN(numbers[at])) {
                deg[count++] = numbers[at];
            }
        }
        return Arrays.copyOf(deg, count);
    }

    @Override
    public Figures.AtSpeed get(int row) {
        int at = row * columns;
        double deg = numbers[at + 2];
        double lambda = numbers[at + 3];
        return new Figures.AtSpeed(
                numbers[at],
                Torque.ofNewtonMetres(numbers[at + 1]),
                Double.isNaN(deg) ? Optional.empty() : Optional.of(Advance.ofDeg(deg)),
                Double.isNaN(lambda) ? Optional.empty() : Optional.of(Lambda.of(lambda)),
                columns == SWEPT || Double.isNaN(numbers[at + SWEPT])
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(numbers[at + SWEPT]));
    }

    @Override
    public int size() {
        return numbers.length / columns;
    }
}
