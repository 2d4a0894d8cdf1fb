package org.nextpull.fuel;

import org.nextpull.unit.Span;

/**
 * A figure with where it comes from.
 *
 * @param value the value that is used, in the unit of its quantity
 * @param spread the range that sources print or fuels of that name are sold in
 * @param source the source, with its standing: seen, from memory, common practice
 */
public record SourcedFigure(double value, Span spread, String source) {
    /**
     * Accepts a value within its spread.
     *
     * @throws IllegalArgumentException when the value lies outside the spread
     */
    public SourcedFigure {
        if (!spread.contains(value)) {
            throw new IllegalArgumentException("the value lies outside its own spread: " + value);
        }
    }

    /**
     * A value that is the whole of its spread, such as one off a data sheet.
     *
     * @param value in the unit of its quantity, finite
     * @throws IllegalArgumentException for NaN or an infinite value
     */
    public static SourcedFigure exactly(double value, String source) {
        return new SourcedFigure(value, Span.of(value, value), source);
    }
}
