package org.nextpull.advice;

/**
 * How far a plan lets the spark go, degrees.
 *
 * @param leastDeg least advance in any cell
 * @param mostDeg most advance in any cell
 * @param largestStepDeg largest step toward advance beyond the most daring clean advance at a speed
 * @param resolutionDeg smallest step that can be set
 * @param knockMarginDeg distance that is kept from knock
 */
public record SparkRules(
        double leastDeg, double mostDeg, double largestStepDeg, double resolutionDeg, double knockMarginDeg) {
    public SparkRules {
        if (!(leastDeg <= mostDeg) || !(largestStepDeg > 0) || !(resolutionDeg > 0) || !(knockMarginDeg >= 0)) {
            throw new IllegalArgumentException(
                    "spark from " + leastDeg + " to " + mostDeg + " deg by " + largestStepDeg);
        }
    }
}
