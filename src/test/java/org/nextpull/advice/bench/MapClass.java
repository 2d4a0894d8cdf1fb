package org.nextpull.advice.bench;

import org.nextpull.unit.Span;

/**
 * Distribution of invented engines whose best advance changes over speed. Spans are uniform, of curvature and scatter uniform in the
 * logarithm.
 *
 * @param curvature relative loss per degree squared
 * @param guessSd how far the guess is off as a whole, degrees
 * @param rise of best advance over the band, degrees
 * @param waveSd of best advance about that, degrees
 * @param asymmetry most, either way, per ten degrees
 * @param scatter from pull to pull, percent
 * @param drift percent a pull
 * @param knocking share of engines that knock below their best somewhere
 */
public record MapClass(
        Span curvature,
        double guessSd,
        Span rise,
        double waveSd,
        double asymmetry,
        Span scatter,
        Span drift,
        double knocking) {
    public static MapClass usual() {
        return new MapClass(
                Span.of(1.5e-4, 9e-4), 3, Span.of(0, 12), 1.2, 0.35, Span.of(0.15, 0.6), Span.of(-0.03, 0), 0);
    }

    public MapClass flatCurves() {
        return new MapClass(Span.of(1.5e-4, 3e-4), guessSd, rise, waveSd, asymmetry, scatter, drift, knocking);
    }

    public MapClass steepCurves() {
        return new MapClass(Span.of(5e-4, 1.8e-3), guessSd, rise, waveSd, asymmetry, scatter, drift, knocking);
    }

    public MapClass lopsided() {
        return new MapClass(curvature, guessSd, rise, waveSd, 0.6, scatter, drift, knocking);
    }

    public MapClass badlyGuessed() {
        return new MapClass(curvature, 6, rise, waveSd, asymmetry, scatter, drift, knocking);
    }

    public MapClass wandering() {
        return new MapClass(curvature, guessSd, Span.of(-6, 18), 2.4, asymmetry, scatter, drift, knocking);
    }

    public MapClass scattered() {
        return new MapClass(curvature, guessSd, rise, waveSd, asymmetry, Span.of(0.3, 1.2), drift, knocking);
    }

    public MapClass drifting() {
        return new MapClass(curvature, guessSd, rise, waveSd, asymmetry, scatter, Span.of(-0.15, 0.15), knocking);
    }

    public MapClass withKnock() {
        return new MapClass(curvature, guessSd, rise, waveSd, asymmetry, scatter, drift, 0.5);
    }
}
