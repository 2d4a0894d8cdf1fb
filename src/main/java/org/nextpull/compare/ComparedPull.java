package org.nextpull.compare;

import java.util.List;
import org.nextpull.unit.Finite;

/**
 * One pull as the comparison sees it.
 *
 * @param number number of the pull over the day, from 1
 * @param day day that it was run on, from 0
 * @param order place in the day that drift is counted in, from 0; counted on over several days
 * @param label configuration
 * @param value band average of the response, above 0, in any unit that all pulls share
 * @param rows response at each row's speed, ascending; may be empty
 */
public record ComparedPull(int number, int day, double order, String label, double value, List<RowValue> rows) {
    /**
     * Response at one speed.
     *
     * @param rpm speed in 1/min
     * @param value response there, in the unit of the band average
     */
    public record RowValue(double rpm, double value) {}

    /**
     * Checks what is given.
     *
     * @throws IllegalArgumentException when the value is not above 0 and finite, or the order is not finite
     */
    public ComparedPull {
        rows = List.copyOf(rows);
        Finite.requirePositive("the response of a compared pull", value);
        Finite.require("the place of a compared pull", order);
    }

    /** Of a day alone. */
    public ComparedPull(int number, double order, String label, double value, List<RowValue> rows) {
        this(number, 0, order, label, value, rows);
    }
}
