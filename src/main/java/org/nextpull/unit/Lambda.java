package org.nextpull.unit;

/**
 * Air-fuel equivalence ratio: actual air-fuel ratio over the stoichiometric one.
 *
 * @param value positive and finite; below 1 is rich
 */
public record Lambda(double value) implements Comparable<Lambda> {
    /**
     * Accepts any positive finite number.
     *
     * @throws IllegalArgumentException for NaN, an infinite number, 0 and what is below 0
     */
    public Lambda {
        Finite.requirePositive("lambda", value);
    }

    /**
     * A mixture by its dimensionless ratio.
     *
     * @param value positive and finite; below 1 is rich
     * @throws IllegalArgumentException for NaN, an infinite number, 0 and what is below 0
     */
    public static Lambda of(double value) {
        return new Lambda(value);
    }

    @Override
    public int compareTo(Lambda other) {
        return Double.compare(value, other.value);
    }
}
