package org.nextpull.intake;

/**
 * How a source writes numbers.
 *
 * @param decimal decimal mark, a point or a comma
 */
public record NumberStyle(char decimal) {
    /**
     * Accepts a point or a comma.
     *
     * @throws IllegalArgumentException for any other mark
     */
    public NumberStyle {
        if (decimal != '.' && decimal != ',') {
            throw new IllegalArgumentException("a decimal mark is a point or a comma: " + decimal);
        }
    }

    public static NumberStyle point() {
        return new NumberStyle('.');
    }

    public static NumberStyle comma() {
        return new NumberStyle(',');
    }

    /** The other mark, which may then only stand between thousands. */
    char grouping() {
        return decimal == '.' ? ',' : '.';
    }
}
