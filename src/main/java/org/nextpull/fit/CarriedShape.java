package org.nextpull.fit;

import java.util.Arrays;

/**
 * Doubt about the shape of a learned map: a covariance over the speeds that it was learned at, its level taken out, laid onto other
 * rows along straight lines. Immutable.
 */
public final class CarriedShape {
    private final SpeedRows learned;
    private final double[] covariance;

    /**
     * @param learned speeds of the covariance
     * @param covariance square, row by row, degrees squared; its level is taken out here
     * @throws IllegalArgumentException where the sizes differ
     */
    public CarriedShape(SpeedRows learned, double[] covariance) {
        if (covariance.length != learned.size() * learned.size()) {
            throw new IllegalArgumentException(
                    "covariance of " + covariance.length + " numbers over " + learned.size() + " speeds");
        }
        this.learned = learned;
        this.covariance = withoutLevel(covariance, learned.size());
    }

    private CarriedShape(double[] centred, SpeedRows learned) {
        this.learned = learned;
        covariance = centred;
    }

    /** A shape as {@link #covariance()} gave it, to the last digit. */
    public static CarriedShape asKept(SpeedRows learned, double[] covariance) {
        return new CarriedShape(covariance.clone(), learned);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CarriedShape shape
                && learned.equals(shape.learned)
                && Arrays.equals(covariance, shape.covariance);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(covariance);
    }

    private static double[] withoutLevel(double[] full, int size) {
        double[] rowMeans = new double[size];
        for (int i = 0; i < full.length; i++) {
            rowMeans[i / size] += full[i] / size;
        }
        double grand = Arrays.stream(rowMeans).average().orElse(0);
        double[] centred = new double[full.length];
        for (int i = 0; i < full.length; i++) {
            centred[i] = full[i] - rowMeans[i / size] - rowMeans[i % size] + grand;
        }
        return centred;
    }

    public SpeedRows learned() {
        return learned;
    }

    /** The covariance at the learned speeds, row by row. */
    public double[] covariance() {
        return covariance.clone();
    }

    double[] covariance(SpeedRows rows) {
        int size = rows.size();
        double[] laid = new double[size * size];
        for (int r = 0; r < size; r++) {
            for (int s = 0; s < size; s++) {
                laid[r * size + s] = between(rows.rpm(r), rows.rpm(s));
            }
        }
        return laid;
    }

    private double between(double rpm, double otherRpm) {
        int i = before(rpm);
        int j = before(otherRpm);
        double u = share(rpm, i);
        double v = share(otherRpm, j);
        return (1 - u) * (1 - v) * at(i, j)
                + u * (1 - v) * at(i + 1, j)
                + (1 - u) * v * at(i, j + 1)
                + u * v * at(i + 1, j + 1);
    }

    private double at(int i, int j) {
        int last = learned.size() - 1;
        return covariance[Math.min(i, last) * learned.size() + Math.min(j, last)];
    }

    private int before(double rpm) {
        int i = 0;
        while (i + 2 < learned.size() && learned.rpm(i + 1) <= rpm) {
            i++;
        }
        return i;
    }

    private double share(double rpm, int i) {
        if (i + 1 >= learned.size()) {
            return 0;
        }
        double share = (rpm - learned.rpm(i)) / (learned.rpm(i + 1) - learned.rpm(i));
        return Math.max(0, Math.min(1, share));
    }
}
