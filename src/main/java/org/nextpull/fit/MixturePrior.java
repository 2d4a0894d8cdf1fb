package org.nextpull.fit;

import org.nextpull.unit.Lambda;

/**
 * What is thought of the mixture; lambda counts in hundredths from the guess.
 *
 * @param guess expected best lambda
 * @param sparkShift best advance gained per hundredth of lambda leaner, degrees
 * @param best best lambda from the guess, hundredths
 * @param lnFall ln of the fall, percent per hundredth squared
 * @param asymmetry share by which the fall changes in ten hundredths
 * @param widening factor of the standard deviation of the best lambda that is reported
 */
public record MixturePrior(
        Lambda guess, Belief sparkShift, Belief best, Belief lnFall, Belief asymmetry, double widening) {
    /** Hundredths of lambda in one. */
    static final double HUNDREDTHS = 100;

    /** A guess good to 0.03. */
    public static MixturePrior ofGuess(Lambda guess) {
        return new MixturePrior(
                guess,
                new Belief(0, 0.30),
                new Belief(0, 3),
                new Belief(Math.log(100 * 2e-4), 0.5),
                new Belief(0, 0.25),
                1.25);
    }

    /** Where the spark stands: its best does not move with the mixture, and the guess is good to 0.05. */
    public MixturePrior withSparkStanding() {
        return new MixturePrior(guess, new Belief(0, 1e-6), new Belief(0, 5), lnFall, asymmetry, widening);
    }

    /** Hundredths of lambda from the guess, positive for leaner. */
    public double hundredths(Lambda lambda) {
        return (lambda.value() - guess.value()) * HUNDREDTHS;
    }

    /** The lambda that many hundredths from the guess. */
    public Lambda lambda(double hundredths) {
        return Lambda.of(guess.value() + hundredths / HUNDREDTHS);
    }
}
