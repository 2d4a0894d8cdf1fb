package org.nextpull.scatter;

/**
 * Standard deviation of the response from pull to pull, with what it rests on.
 *
 * @param percent one standard deviation, in percent of the level; not negative
 * @param degreesOfFreedom dimensionless, positive; need not be whole
 */
public record Scatter(double percent, double degreesOfFreedom) {
    /**
     * Accepts a scatter of 0, as of figures rounded alike.
     *
     * @throws IllegalArgumentException when the scatter is negative or NaN, or the degrees of freedom are 0, negative or NaN
     */
    public Scatter {
        if (!(percent >= 0) || !(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "scatter " + percent + " % on " + degreesOfFreedom + " degrees of freedom");
        }
    }
}
