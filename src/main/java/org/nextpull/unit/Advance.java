package org.nextpull.unit;

/**
 * Spark advance.
 *
 * @param deg crank degrees before top dead centre; negative after it
 */
public record Advance(double deg) implements Comparable<Advance> {
    public Advance {
        Finite.require("advance", deg);
    }

    public static Advance ofDeg(double deg) {
        return new Advance(deg);
    }

    @Override
    public int compareTo(Advance other) {
        return Double.compare(deg, other.deg);
    }
}
