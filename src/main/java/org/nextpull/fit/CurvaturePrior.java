package org.nextpull.fit;

import org.nextpull.unit.Span;

/**
 * What is believed of the natural log of the curvature: the same anywhere within a span, and falling off like a normal density beyond
 * both of its ends. A normal belief is one whose span is a point.
 *
 * @param level where the log of the curvature is equally likely
 * @param tailSd standard deviation of the fall beyond the span; positive
 */
public record CurvaturePrior(Span level, double tailSd) {
    public CurvaturePrior {
        if (!(tailSd > 0) || Double.isInfinite(tailSd)) {
            throw new IllegalArgumentException("curvature falls off over " + tailSd);
        }
    }

    /** A normal belief in the log of the curvature. */
    public static CurvaturePrior normal(Belief lnCurvature) {
        return new CurvaturePrior(Span.of(lnCurvature.centre(), lnCurvature.centre()), lnCurvature.sd());
    }

    /** Equally likely from one curvature to another, in the log. */
    public static CurvaturePrior between(Span curvature, double tailSd) {
        return new CurvaturePrior(Span.of(Math.log(curvature.low()), Math.log(curvature.high())), tailSd);
    }

    /** The same belief in curvatures that are all so many times greater. */
    public CurvaturePrior times(double factor) {
        double shift = Math.log(factor);
        return new CurvaturePrior(Span.of(level.low() + shift, level.high() + shift), tailSd);
    }

    /** The normal belief with the same middle and spread. */
    public Belief asNormal() {
        return new Belief((level.low() + level.high()) / 2, sd());
    }

    /** Log density at a log of the curvature, zero where it is highest. */
    double logDensity(double lnCurvature) {
        double away = Math.max(0, Math.max(level.low() - lnCurvature, lnCurvature - level.high()));
        return -away * away / (2 * tailSd * tailSd);
    }

    /** From so many standard deviations below the span to as many above it. */
    Span reach(double tailSds) {
        return Span.of(level.low() - tailSds * tailSd, level.high() + tailSds * tailSd);
    }

    /** Standard deviation of the whole, that of an even spread and that of its ends taken together. */
    double sd() {
        return Math.sqrt(level.width() * level.width() / 12 + tailSd * tailSd);
    }
}
