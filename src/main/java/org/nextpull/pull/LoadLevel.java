package org.nextpull.pull;

/**
 * The torque that a whole log reaches at its best, single rows aside.
 *
 * @param newtonMetres torque in N.m, positive
 */
record LoadLevel(double newtonMetres) {
    /**
     * Accepts any positive finite torque.
     *
     * @throws IllegalArgumentException when it is NaN, infinite, 0 or negative
     */
    public LoadLevel {
        if (!(newtonMetres > 0 && newtonMetres < Double.MAX_VALUE)) {
            throw new IllegalArgumentException("a load level is positive: " + newtonMetres);
        }
    }
}
