package org.nextpull.scatter;

/**
 * Standard deviation of the response from pull to pull, with what it rests on.
 *
 * @param percent one standard deviation, in percent of the level; not negative
 * @param degreesOfFreedom degrees of freedom, positive
 */
public record Scatter(double percent, double degreesOfFreedom) {
    public Scatter {
        if (!(percent >= 0) || !(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "scatter " + percent + " % on " + degreesOfFreedom + " degrees of freedom");
        }
    }
}
