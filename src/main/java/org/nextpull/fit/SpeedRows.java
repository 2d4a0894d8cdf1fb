package org.nextpull.fit;

import java.util.Arrays;

/**
 * The speeds that a surface is answered at, rising, and the smooth shapes over them: any spacing, one speed or many. Immutable.
 */
public final class SpeedRows {
    private static final double SQRT_2 = Math.sqrt(2);
    /** From this many rows on a shape over speed can be told from a level. */
    private static final int LEAST_FOR_SHAPES = 3;

    private final double[] rpm;
    private final double meanRpm;
    private final double fromRpm;
    private final double widthRpm;

    private SpeedRows(double[] rpm) {
        this.rpm = rpm;
        int rows = rpm.length;
        meanRpm = Arrays.stream(rpm).average().orElseThrow();
        double step = rows > 1 ? (rpm[rows - 1] - rpm[0]) / (rows - 1) : 1;
        fromRpm = rpm[0] - step / 2;
        widthRpm = rows * step;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SpeedRows rows && Arrays.equals(rpm, rows.rpm);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(rpm);
    }

    /**
     * Rows at those speeds.
     *
     * @param rpm rising, positive and finite
     * @throws IllegalArgumentException where they are not, or where there is none
     */
    public static SpeedRows ofRpm(double... rpm) {
        if (rpm.length == 0 || !(rpm[0] > 0)) {
            throw new IllegalArgumentException("rows need positive speeds: " + Arrays.toString(rpm));
        }
        for (int r = 0; r < rpm.length; r++) {
            if (!Double.isFinite(rpm[r]) || (r > 0 && rpm[r] <= rpm[r - 1])) {
                throw new IllegalArgumentException("speeds of rows must rise: " + Arrays.toString(rpm));
            }
        }
        return new SpeedRows(rpm.clone());
    }

    public int size() {
        return rpm.length;
    }

    public double rpm(int row) {
        return rpm[row];
    }

    public double[] rpm() {
        return rpm.clone();
    }

    /** The row that stands nearest to a speed. */
    public int nearest(double speedRpm) {
        int best = 0;
        for (int r = 1; r < rpm.length; r++) {
            if (Math.abs(rpm[r] - speedRpm) < Math.abs(rpm[best] - speedRpm)) {
                best = r;
            }
        }
        return best;
    }

    boolean hasShapes() {
        return rpm.length >= LEAST_FOR_SHAPES;
    }

    /** Distance from the mean of the rows, thousands of rpm. */
    double krpmFromMean(int row) {
        return (rpm[row] - meanRpm) / 1000;
    }

    /** Half of the way from the first row to the last, thousands of rpm. */
    double halfBandKrpm() {
        return (rpm[rpm.length - 1] - rpm[0]) / 2000;
    }

    /** The j-th cosine over the rows, of mean square 1; a wave is half a period longer with each j. */
    double wave(int j, int row) {
        return SQRT_2 * Math.cos(Math.PI * j * (rpm[row] - fromRpm) / widthRpm);
    }
}
