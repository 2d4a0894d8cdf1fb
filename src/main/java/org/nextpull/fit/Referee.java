package org.nextpull.fit;

import java.util.List;
import org.nextpull.math.Series;
import org.nextpull.math.regression.ConfidenceSet;
import org.nextpull.math.regression.Fieller;
import org.nextpull.math.regression.PolynomialFit;
import org.nextpull.math.regression.QuadraticVertex;
import org.nextpull.unit.Span;

/**
 * A second opinion on the peak that shares no prior with the first: a weighted quadratic, and the 90 % interval of its vertex by the
 * test of the first derivative (Fieller 1954; Hirschberg and Lye 2005).
 */
public sealed interface Referee {

    /** The vertex lies in an interval. */
    record Bounded(double vertex, Span ninety) implements Referee {}

    /** The readings do not bound the vertex, or it would be a minimum: no interval. */
    record Unbounded() implements Referee {}

    /** Too few pulls, or settings, for a quadratic with an error. */
    record Silent() implements Referee {}

    double CONFIDENCE = 0.90;

    /** Judges by the pulls of a sweep with the weights that its posterior gave them. */
    static Referee of(SweepPosterior posterior) {
        List<SweepPoint> points = posterior.sweep().points();
        double[] settings = points.stream().mapToDouble(SweepPoint::setting).toArray();
        double[] readings =
                points.stream().mapToDouble(posterior.sweep()::percent).toArray();
        double[] weights = new double[points.size()];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = posterior.weightOf(i);
        }
        return PolynomialFit.fit(Series.of(settings), Series.of(readings), Series.of(weights), 2)
                .found()
                .map(Referee::judge)
                .orElseGet(Silent::new);
    }

    private static Referee judge(PolynomialFit fit) {
        if (fit.degreesOfFreedom() < 1 || !(fit.residualSd() > 0)) {
            return new Silent();
        }
        return QuadraticVertex.of(fit)
                .filter(QuadraticVertex::isMaximum)
                .map(vertex -> Fieller.vertex(fit, CONFIDENCE) instanceof ConfidenceSet.Between between
                        ? new Bounded(
                                vertex.place().value(),
                                Span.of(
                                        between.interval().low(),
                                        between.interval().high()))
                        : new Unbounded())
                .orElseGet(Unbounded::new);
    }
}
