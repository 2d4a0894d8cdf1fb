package org.nextpull.unit;

/**
 * Air-fuel equivalence ratio: actual air-fuel ratio over the stoichiometric one.
 *
 * @param value positive and finite; below 1 is rich
 */
public record Lambda(double value) implements Comparable<Lambda> {
    public Lambda {
        Finite.require("lambda", value);
        if (value <= 0) {
            throw new IllegalArgumentException("lambda must be positive: " + value);
        }
    }

    public static Lambda of(double value) {
        return new Lambda(value);
    }

    @Override
    public int compareTo(Lambda other) {
        return Double.compare(value, other.value);
    }
}
