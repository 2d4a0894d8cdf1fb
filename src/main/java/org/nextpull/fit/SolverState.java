package org.nextpull.fit;

import java.util.Arrays;

/** Where the linearisation stands, and how much each pull and reading counts. */
final class SolverState {
    /** Best advance of each row from its prior mean, degrees. */
    final double[] rho;
    /** Common columns. */
    final double[] common;

    final double[] levelWeight;
    final double[] shapeWeight;
    final double[] readingWeight;

    SolverState(ReadingTable table, CommonColumns columns) {
        rho = new double[table.rowCount];
        common = columns.mean.clone();
        levelWeight = new double[table.pullCount];
        shapeWeight = new double[table.pullCount];
        readingWeight = new double[table.count];
        Arrays.fill(levelWeight, 1);
        Arrays.fill(shapeWeight, 1);
        Arrays.fill(readingWeight, 1);
    }

    void set(SolverState other) {
        copy(other.rho, rho);
        copy(other.common, common);
        copy(other.levelWeight, levelWeight);
        copy(other.shapeWeight, shapeWeight);
        copy(other.readingWeight, readingWeight);
    }

    private static void copy(double[] from, double[] to) {
        System.arraycopy(from, 0, to, 0, from.length);
    }
}
