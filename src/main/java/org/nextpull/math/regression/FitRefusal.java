package org.nextpull.math.regression;

/** Why there is no fit. */
public enum FitRefusal {
    /** Fewer readings than coefficients. */
    TOO_FEW_READINGS,
    /** As many readings as coefficients: the curve goes through all of them and says nothing of the scatter. */
    NO_DEGREES_OF_FREEDOM,
    /** A column holds one value only, or a polynomial has fewer distinct places than coefficients. */
    TOO_FEW_LEVELS,
    /** Columns can be made of one another, so that their coefficients cannot be told apart. */
    COLUMNS_DEPEND
}
