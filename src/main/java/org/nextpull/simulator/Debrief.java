package org.nextpull.simulator;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was found, beside what is true: what no operator of a real engine ever sees.
 *
 * @param seed that the engine was made from
 * @param pulls pulls that were run
 * @param knockingPulls pulls in which the knock sensor counted knock within the band
 * @param left the setting that the advice leaves in the engine; empty when nothing clean was run
 * @param truth what is best
 * @param torqueLeftPercent torque over the band that the setting left gives away against the best one that the plan allows and that does
 *     not knock, in percent of it; of a map against the best map, knock aside
 * @param scatterPercent true scatter from pull to pull, one standard deviation
 */
public record Debrief(
        long seed,
        int pulls,
        int knockingPulls,
        Optional<Left> left,
        TrueBest truth,
        OptionalDouble torqueLeftPercent,
        double scatterPercent) {
    /**
     * The setting that is left.
     *
     * @param advanceDeg the same at every speed, of a map its mean over the band; an offset counts from the present map
     * @param lambda mixture
     */
    public record Left(double advanceDeg, double lambda) {}

    /**
     * What is best over the band in the air of that morning, with a warm engine.
     *
     * @param timing advances
     * @param lambda best mixture that the plan allows; where the plan leaves the mixture alone, the one that the engine ran at
     * @param torqueNm torque of the best allowed setting in reference air; at the spark of the present map where the plan leaves that alone
     */
    public record TrueBest(Timing timing, double lambda, double torqueNm) {}

    /**
     * Advances, the same at every speed.
     *
     * @param peakDeg of the highest torque
     * @param goodDeg least advance within 0.2 % of it, or the plan's margin below knock where that is less
     * @param onsetDeg knock is to be expected once a pull; empty when it is not within ten degrees beyond the peak
     */
    public record Timing(double peakDeg, double goodDeg, OptionalDouble onsetDeg) {}

    /** How far the advance that is left lies above the least good one, in degrees; negative on the retarded side. */
    public OptionalDouble degreesOff() {
        return left.map(found ->
                        OptionalDouble.of(found.advanceDeg() - truth.timing().goodDeg()))
                .orElse(OptionalDouble.empty());
    }

    /** How far the mixture that is left lies above the best one, in lambda; negative on the rich side. */
    public OptionalDouble lambdaOff() {
        return left.map(found -> OptionalDouble.of(found.lambda() - truth.lambda()))
                .orElse(OptionalDouble.empty());
    }
}
