package org.nextpull.pull;

/**
 * The torque that a whole log reaches at its best, single rows aside.
 *
 * @param newtonMetres torque in N.m, positive
 */
public record LoadLevel(double newtonMetres) {
    public LoadLevel {
        if (!(newtonMetres > 0 && newtonMetres < Double.MAX_VALUE)) {
            throw new IllegalArgumentException("a load level is positive: " + newtonMetres);
        }
    }
}
