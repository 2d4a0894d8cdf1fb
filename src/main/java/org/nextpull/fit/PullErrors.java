package org.nextpull.fit;

import java.util.Arrays;

/**
 * What a whole pull is off by: a level and three waves over speed, with heavy tails; and warming while a speed is held. Eliminated pull
 * by pull through a factor of four or five rows.
 */
final class PullErrors {
    private static final int EFFECTS = ReadingTable.EFFECTS;
    private static final int WARMING = EFFECTS - 1;
    private static final double SMOOTH = 0.35;
    private static final double[] SHARE = {
        1, SMOOTH * Math.sqrt(0.6), SMOOTH * Math.sqrt(0.25), SMOOTH * Math.sqrt(0.15)
    };
    /** Scale of the Student t in one standard deviation of its middle. */
    static final double SCALE = 0.95;

    private static final double PULL_DOF = 4;
    private static final double READING_DOF = 8;
    private static final double WARMING_SD = 0.15;
    private static final double WARMING_MEAN = -0.10;

    private final ReadingTable table;
    /** Factors {@code L} of all pulls, each lower and square. */
    private final double[] factors;

    private final double[] effects;
    private final double[] errors;
    private final double[] levelSquare;
    private final double[] shapeSquare;
    private final double[] errorSquare;
    private final double[] solved = new double[EFFECTS];

    PullErrors(ReadingTable table) {
        this.table = table;
        factors = new double[table.pullCount * EFFECTS * EFFECTS];
        effects = new double[table.pullCount * EFFECTS];
        errors = new double[table.count];
        levelSquare = new double[table.pullCount];
        shapeSquare = new double[table.pullCount];
        errorSquare = new double[table.count];
    }

    /** What warming is expected to do to a reading, percent. */
    double expected(int k) {
        return WARMING_MEAN * table.basis[k * EFFECTS + WARMING];
    }

    double error(int k) {
        return errors[k];
    }

    /** Factors {@code S = prior + B'WB} of a pull; half the log of its determinant. */
    double factor(int pull, double scatter, SolverState state, double[] weight) {
        int n = table.effects(pull);
        int at = pull * EFFECTS * EFFECTS;
        Arrays.fill(factors, at, at + EFFECTS * EFFECTS, 0);
        for (int q = 0; q < n; q++) {
            factors[at + q * EFFECTS + q] = precision(pull, q, scatter, state);
        }
        for (int k = table.start[pull]; k < table.start[pull + 1]; k++) {
            for (int q = 0; q < n; q++) {
                double bw = table.basis[k * EFFECTS + q] * weight[k];
                for (int l = 0; l <= q; l++) {
                    factors[at + q * EFFECTS + l] += bw * table.basis[k * EFFECTS + l];
                }
            }
        }
        double product = 1;
        for (int q = 0; q < n; q++) {
            for (int l = 0; l <= q; l++) {
                double sum = factors[at + q * EFFECTS + l];
                for (int j = 0; j < l; j++) {
                    sum -= factors[at + q * EFFECTS + j] * factors[at + l * EFFECTS + j];
                }
                factors[at + q * EFFECTS + l] = l == q ? Math.sqrt(sum) : sum / factors[at + l * EFFECTS + l];
            }
            product *= factors[at + q * EFFECTS + q];
        }
        return Math.log(product);
    }

    private double precision(int pull, int effect, double scatter, SolverState state) {
        if (effect == WARMING) {
            return 1 / (WARMING_SD * WARMING_SD);
        }
        double sd = SCALE * scatter * SHARE[effect];
        return (effect == 0 ? state.levelWeight[pull] : state.shapeWeight[pull]) / (sd * sd);
    }

    /** Multiplies columns by {@code L^-1} of a pull, in place; effects run {@code stride} apart. */
    void divideByFactor(int pull, double[] columns, int stride, int n) {
        int at = pull * EFFECTS * EFFECTS;
        for (int q = 0; q < n; q++) {
            for (int l = 0; l < q; l++) {
                double share = factors[at + q * EFFECTS + l];
                for (int i = 0; i < stride; i++) {
                    columns[q * stride + i] -= share * columns[l * stride + i];
                }
            }
            double inverse = 1 / factors[at + q * EFFECTS + q];
            for (int i = 0; i < stride; i++) {
                columns[q * stride + i] *= inverse;
            }
        }
    }

    /** What rows and common columns leave of the readings, their weights and variances. */
    static final class Fitted {
        private final double[] left;
        private final double[] weight;
        private final double[] variance;

        /** The arrays are read, not kept. */
        Fitted(double[] left, double[] weight, double[] variance) {
            this.left = left;
            this.weight = weight;
            this.variance = variance;
        }
    }

    /** Splits what is left of the readings of a pull into its effects and their own errors; what their tails cost in log weight. */
    double judge(int pull, double scatter, Fitted fitted) {
        int n = table.effects(pull);
        Arrays.fill(solved, 0);
        for (int k = table.start[pull]; k < table.start[pull + 1]; k++) {
            for (int q = 0; q < n; q++) {
                solved[q] += table.basis[k * EFFECTS + q] * fitted.weight[k] * fitted.left[k];
            }
        }
        divideByFactor(pull, solved, 1, n);
        int at = pull * EFFECTS * EFFECTS;
        for (int q = n - 1; q >= 0; q--) {
            double sum = solved[q];
            for (int l = q + 1; l < n; l++) {
                sum -= factors[at + l * EFFECTS + q] * solved[l];
            }
            solved[q] = sum / factors[at + q * EFFECTS + q];
        }
        double scale = SCALE * scatter;
        shapeSquare[pull] = 0;
        for (int q = 0; q < ReadingTable.SWEEP_EFFECTS; q++) {
            double size = solved[q] / (scale * SHARE[q]);
            if (q == 0) {
                levelSquare[pull] = size * size;
            } else {
                shapeSquare[pull] += size * size;
            }
        }
        System.arraycopy(solved, 0, effects, pull * EFFECTS, EFFECTS);
        double cost = (PULL_DOF + 1) / 2 * Math.log1p(levelSquare[pull] / PULL_DOF)
                + (PULL_DOF + 3) / 2 * Math.log1p(shapeSquare[pull] / PULL_DOF)
                + ReadingTable.SWEEP_EFFECTS * Math.log(scale);
        if (n == EFFECTS) {
            double warming = solved[WARMING] / WARMING_SD;
            cost += warming * warming / 2;
        }
        for (int k = table.start[pull]; k < table.start[pull + 1]; k++) {
            double error = fitted.left[k];
            for (int q = 0; q < n; q++) {
                error -= table.basis[k * EFFECTS + q] * solved[q];
            }
            errors[k] = error;
            errorSquare[k] = error * error / fitted.variance[k];
            cost += Math.log(fitted.variance[k]) / 2 + (READING_DOF + 1) / 2 * Math.log1p(errorSquare[k] / READING_DOF);
        }
        return cost;
    }

    /** Weights of a pull and its readings from what was judged. */
    void reweigh(int pull, SolverState state) {
        state.levelWeight[pull] = (PULL_DOF + 1) / (PULL_DOF + levelSquare[pull]);
        state.shapeWeight[pull] = (PULL_DOF + 3) / (PULL_DOF + shapeSquare[pull]);
        for (int k = table.start[pull]; k < table.start[pull + 1]; k++) {
            state.readingWeight[k] = (READING_DOF + 1) / (READING_DOF + errorSquare[k]);
        }
    }
}
