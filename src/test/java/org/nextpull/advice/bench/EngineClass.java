package org.nextpull.advice.bench;

import java.util.random.RandomGenerator;
import org.nextpull.unit.Span;

/**
 * What engines a bench draws from. Settings are degrees, or hundredths of lambda.
 *
 * @param name for the report
 * @param curvature relative loss per setting squared, uniform
 * @param asymmetry cubic share, uniform
 * @param scatterPercent pull-to-pull scatter, log-uniform
 * @param driftPercentPerPull uniform
 * @param outliers how many pulls go wrong and how far
 * @param guessSd error of the guess at the peak
 * @param startBelowGuess how far below the guess the sweep starts, uniform
 * @param knockFromPeak where knock begins, relative to the peak, uniform; empty span far above for none
 */
record EngineClass(
        String name,
        Span curvature,
        Span asymmetry,
        Span scatterPercent,
        Span driftPercentPerPull,
        Outliers outliers,
        double guessSd,
        Span startBelowGuess,
        Span knockFromPeak) {

    /** Share of pulls that go wrong, and by how many times the scatter. */
    record Outliers(double share, double times) {}

    private static final Span NO_KNOCK = Span.of(1000, 1000);

    /** The engines that the planner was designed on. */
    static EngineClass steep() {
        return new EngineClass(
                "k 4e-4 to 1.2e-3",
                Span.of(4e-4, 1.2e-3),
                Span.of(-0.35, 0.35),
                Span.of(0.15, 0.6),
                Span.of(-0.03, 0),
                new Outliers(0.05, 5),
                3,
                Span.of(6, 10),
                NO_KNOCK);
    }

    EngineClass named(String newName) {
        return new EngineClass(
                newName,
                curvature,
                asymmetry,
                scatterPercent,
                driftPercentPerPull,
                outliers,
                guessSd,
                startBelowGuess,
                knockFromPeak);
    }

    EngineClass withCurvature(Span newCurvature) {
        return new EngineClass(
                name,
                newCurvature,
                asymmetry,
                scatterPercent,
                driftPercentPerPull,
                outliers,
                guessSd,
                startBelowGuess,
                knockFromPeak);
    }

    EngineClass withKnock(Span newKnock) {
        return new EngineClass(
                name,
                curvature,
                asymmetry,
                scatterPercent,
                driftPercentPerPull,
                outliers,
                guessSd,
                startBelowGuess,
                newKnock);
    }

    EngineClass withStart(Span newStart) {
        return new EngineClass(
                name,
                curvature,
                asymmetry,
                scatterPercent,
                driftPercentPerPull,
                outliers,
                guessSd,
                newStart,
                knockFromPeak);
    }

    static double uniform(RandomGenerator random, Span span) {
        return span.low() + random.nextDouble() * span.width();
    }
}
