package org.nextpull.math.regression;

import java.util.Optional;
import org.nextpull.math.Estimate;
import org.nextpull.math.Interval;
import org.nextpull.math.Series;

/**
 * Where a fitted quadratic turns over.
 *
 * @param place x of the vertex with its standard error by the delta method, which is too bold where the curvature is poorly known;
 *     {@link Fieller} gives the honest set
 * @param height the curve at the vertex, with the error of the curve there
 * @param curvature coefficient of x squared
 */
public record QuadraticVertex(Estimate place, Estimate height, Estimate curvature) {

    /**
     * The vertex of a fit of degree 2; empty when the curve has no curvature at all.
     *
     * @throws IllegalArgumentException for another degree
     */
    public static Optional<QuadraticVertex> of(PolynomialFit fit) {
        if (fit.degree() != 2) {
            throw new IllegalArgumentException("a vertex needs a fit of degree 2, not " + fit.degree());
        }
        LinearFit standard = fit.standardised();
        double slope = standard.coefficient(1);
        double bend = standard.coefficient(2);
        double z = -slope / (2 * bend);
        if (!Double.isFinite(z)) {
            return Optional.empty();
        }
        double half = fit.range().width() / 2;
        // dz = -(db1 + 2 z db2) / (2 b2), first order
        Series gradient = Series.of(0, -1 / (2 * bend), -z / bend);
        double error = Math.sqrt(standard.covariance().variance(gradient)) * half;
        return Optional.of(new QuadraticVertex(
                new Estimate(fit.fromStandard(z), error, fit.degreesOfFreedom()),
                standard.estimate(Series.of(1, z, z * z)),
                standard.estimate(2).rescaled(1 / (half * half), 0)));
    }

    public boolean isMaximum() {
        return curvature.value() < 0;
    }

    /** Whether the vertex lies where readings were taken; one outside is not an optimum that was found. */
    public boolean isWithin(Interval range) {
        return range.contains(place.value());
    }
}
