package org.nextpull.math;

import java.util.Arrays;
import java.util.Collection;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * An immutable row of finite numbers, equal by value. What is absent is left out, never written as NaN: every way of making one
 * refuses NaN and infinity with an {@link IllegalArgumentException}.
 */
public final class Series {
    private static final Series EMPTY = new Series(new double[0]);

    private final double[] values;

    private Series(double[] own) {
        for (int index = 0; index < own.length; index++) {
            if (!Double.isFinite(own[index])) {
                throw new IllegalArgumentException("value " + index + " is not a finite number: " + own[index]);
            }
        }
        this.values = own;
    }

    public static Series empty() {
        return EMPTY;
    }

    /** Copies the numbers. */
    public static Series of(double... values) {
        return new Series(values.clone());
    }

    /** Copies the part from {@code first} (inclusive) to {@code end} (exclusive). */
    public static Series copyOf(double[] values, int first, int end) {
        return new Series(Arrays.copyOfRange(values, first, end));
    }

    public static Series of(Collection<Double> values) {
        return of(values.stream().mapToDouble(Double::doubleValue));
    }

    public static Series of(DoubleStream values) {
        return new Series(values.toArray());
    }

    /** The values of a function of the index, from 0. */
    public static Series generate(int size, IntToDoubleFunction function) {
        double[] values = new double[size];
        Arrays.setAll(values, function);
        return new Series(values);
    }

    /** The same number {@code size} times. */
    public static Series constant(int size, double value) {
        return generate(size, index -> value);
    }

    public int size() {
        return values.length;
    }

    public boolean isEmpty() {
        return values.length == 0;
    }

    /**
     * The number at an index from 0.
     *
     * @throws ArrayIndexOutOfBoundsException outside
     */
    public double get(int index) {
        return values[index];
    }

    public double first() {
        return values[0];
    }

    public double last() {
        return values[values.length - 1];
    }

    public DoubleStream stream() {
        return Arrays.stream(values);
    }

    /** A fresh array of the numbers. */
    public double[] toArray() {
        return values.clone();
    }

    public Series map(DoubleUnaryOperator change) {
        return generate(values.length, index -> change.applyAsDouble(values[index]));
    }

    /**
     * Both rows, place by place.
     *
     * @throws IllegalArgumentException when the sizes differ, or the operator gives what is no finite number
     */
    public Series combine(Series other, DoubleBinaryOperator operator) {
        requireSameSize(other);
        return generate(values.length, index -> operator.applyAsDouble(values[index], other.values[index]));
    }

    /**
     * Sum, place by place.
     *
     * @throws IllegalArgumentException when the sizes differ
     */
    public Series plus(Series other) {
        return combine(other, Double::sum);
    }

    /**
     * Difference, place by place.
     *
     * @throws IllegalArgumentException when the sizes differ
     */
    public Series minus(Series other) {
        return combine(other, (left, right) -> left - right);
    }

    public Series times(double factor) {
        return map(value -> value * factor);
    }

    /** The numbers from {@code first} (inclusive) to {@code end} (exclusive). */
    public Series slice(int first, int end) {
        return copyOf(values, first, end);
    }

    /** The numbers at those indices, in that order. */
    public Series pick(IntStream indices) {
        return of(indices.mapToDouble(index -> values[index]));
    }

    public Series filter(DoublePredicate keep) {
        return of(stream().filter(keep));
    }

    public Series append(Series other) {
        return of(DoubleStream.concat(stream(), other.stream()));
    }

    /** Ascending. */
    public Series sorted() {
        return of(stream().sorted());
    }

    /** How many different numbers there are. */
    public int distinct() {
        return (int) stream().distinct().count();
    }

    public double sum() {
        return stream().sum();
    }

    /**
     * Arithmetic mean; the second pass takes up the rounding of the first.
     *
     * @throws IllegalStateException when empty
     */
    public double mean() {
        requireAtLeast(1);
        double rough = sum() / values.length;
        double correction = 0;
        for (double value : values) {
            correction += value - rough;
        }
        return rough + correction / values.length;
    }

    /**
     * The least number.
     *
     * @throws IllegalStateException when empty
     */
    public double min() {
        requireAtLeast(1);
        return stream().min().orElseThrow();
    }

    /**
     * The largest number.
     *
     * @throws IllegalStateException when empty
     */
    public double max() {
        requireAtLeast(1);
        return stream().max().orElseThrow();
    }

    /**
     * Sum of squared deviations from the mean, two passes.
     *
     * @throws IllegalStateException when empty
     */
    public double sumOfSquaredDeviations() {
        double mean = mean();
        double sum = 0;
        double rest = 0;
        for (double value : values) {
            double deviation = value - mean;
            sum += deviation * deviation;
            rest += deviation;
        }
        return sum - rest * rest / values.length;
    }

    /**
     * Sample variance, divided by n - 1.
     *
     * @throws IllegalStateException with fewer than two numbers
     */
    public double variance() {
        requireAtLeast(2);
        return sumOfSquaredDeviations() / (values.length - 1);
    }

    /**
     * Sample standard deviation, divided by n - 1; as {@link #variance()}.
     *
     * @throws IllegalStateException with fewer than two numbers
     */
    public double standardDeviation() {
        return Math.sqrt(variance());
    }

    /**
     * Middle number, or the mean of the two in the middle.
     *
     * @throws IllegalStateException when empty
     */
    public double median() {
        requireAtLeast(1);
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : sorted[half - 1] + (sorted[half] - sorted[half - 1]) / 2;
    }

    private void requireAtLeast(int least) {
        if (values.length < least) {
            throw new IllegalStateException("needs at least " + least + " numbers and has " + values.length);
        }
    }

    private void requireSameSize(Series other) {
        if (other.values.length != values.length) {
            throw new IllegalArgumentException("sizes differ: " + values.length + " and " + other.values.length);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Series series && Arrays.equals(values, series.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return Arrays.toString(values);
    }
}
