package org.nextpull.math.regression;

import org.nextpull.math.Series;

/** Covariance of fitted coefficients, already scaled by the residual variance, or of readings: immutable, symmetric. */
public final class Covariance {
    private final Series cells;
    private final int size;

    private Covariance(Series cells, int size) {
        this.cells = cells;
        this.size = size;
    }

    /** Copies a square matrix and takes the mean of each cell and its mirror. */
    public static Covariance of(double[][] matrix) {
        int size = matrix.length;
        return new Covariance(
                Series.generate(
                        size * size, cell -> (matrix[cell / size][cell % size] + matrix[cell % size][cell / size]) / 2),
                size);
    }

    /** Of figures that have nothing in common, nor any scatter. */
    public static Covariance none(int size) {
        return new Covariance(Series.constant(size * size, 0), size);
    }

    /** How many figures there are. */
    public int size() {
        return size;
    }

    public double get(int row, int column) {
        return cells.get(row * size + column);
    }

    /** Standard error of one coefficient. */
    public double standardError(int index) {
        return Math.sqrt(get(index, index));
    }

    /** Covariance of two weighted sums of the coefficients; one weight a coefficient. */
    public double between(Series left, Series right) {
        double sum = 0;
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < size; column++) {
                sum += left.get(row) * get(row, column) * right.get(column);
            }
        }
        return sum;
    }

    /** Variance of a weighted sum of the coefficients; never below 0, whatever the rounding. */
    public double variance(Series weights) {
        return Math.max(0, between(weights, weights));
    }

    double[][] toMatrix() {
        double[][] matrix = new double[size][size];
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < size; column++) {
                matrix[row][column] = get(row, column);
            }
        }
        return matrix;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Covariance covariance && size == covariance.size && cells.equals(covariance.cells);
    }

    @Override
    public int hashCode() {
        return cells.hashCode();
    }

    @Override
    public String toString() {
        return size + " x " + size + " " + cells;
    }
}
