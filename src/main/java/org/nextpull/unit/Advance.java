package org.nextpull.unit;

/**
 * Spark advance.
 *
 * @param deg crank degrees before top dead centre; negative after it
 */
public record Advance(double deg) implements Comparable<Advance> {
    /**
     * Accepts any finite number.
     *
     * @throws IllegalArgumentException for NaN or an infinite advance
     */
    public Advance {
        Finite.require("advance", deg);
    }

    /**
     * Crank degrees before top dead centre.
     *
     * @param deg any finite number; negative for after top dead centre
     * @throws IllegalArgumentException for NaN or an infinite advance
     */
    public static Advance ofDeg(double deg) {
        return new Advance(deg);
    }

    @Override
    public int compareTo(Advance other) {
        return Double.compare(deg, other.deg);
    }
}
