package org.nextpull.fit;

/** exp(-x) for x from 0 to 30 by a table and a cubic, to 2e-9 of the value; 0 beyond. Posterior weights need no more. */
final class FastExp {
    private static final int PER_UNIT = 64;
    private static final int REACH = 30;
    private static final double[] TABLE = new double[PER_UNIT * REACH + 1];

    static {
        for (int i = 0; i < TABLE.length; i++) {
            TABLE[i] = Math.exp(-(double) i / PER_UNIT);
        }
    }

    private FastExp() {}

    static double ofMinus(double x) {
        if (!(x < REACH)) {
            return 0;
        }
        int node = (int) (x * PER_UNIT);
        double rest = x - (double) node / PER_UNIT;
        return TABLE[node] * (1 - rest * (1 - rest * (0.5 - rest / 6)));
    }
}
