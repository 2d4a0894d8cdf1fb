package org.nextpull.report;

/**
 * One start condition in words.
 *
 * @param name what is measured
 * @param value its present value with unit, or that it is not known
 * @param window what the plan asks for, or that it asks for nothing
 * @param place where the value lies
 * @param words in the window or how far off it is
 */
public record ConditionLine(String name, String value, String window, Place place, String words) {
    /** Where a value lies. */
    public enum Place {
        INSIDE,
        BELOW,
        ABOVE,
        /** The plan asks for nothing. */
        UNASKED,
        /** There is no value. */
        UNKNOWN
    }
}
