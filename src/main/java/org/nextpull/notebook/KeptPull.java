package org.nextpull.notebook;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A pull with the figures that were made of it when it was last kept.
 *
 * @param number number over the day
 * @param at when it was first kept
 * @param source name of its source
 * @param standing whether it counted, as JSON writes it
 * @param setting what it was run with
 * @param figures what came out
 * @param knock what was known of knock: heard, none or not-measured
 */
public record KeptPull(
        int number,
        Instant at,
        String source,
        String standing,
        KeptSetting setting,
        KeptFigures figures,
        String knock) {

    /**
     * What a pull was run with.
     *
     * @param advanceDeg flat advance
     * @param offsetDeg degrees added to the present map
     * @param lambda measured mixture
     */
    public record KeptSetting(
            OptionalDouble advanceDeg,
            OptionalDouble offsetDeg,
            OptionalDouble lambda,
            Optional<String> fuel,
            Optional<String> label,
            Optional<String> note) {}

    /**
     * What came out, corrected.
     *
     * @param order place in the day, from 0
     * @param meanTorqueNm band average, N.m
     * @param meanPowerW band average, W
     * @param factor correction factor
     */
    public record KeptFigures(
            double order, OptionalDouble meanTorqueNm, OptionalDouble meanPowerW, OptionalDouble factor) {}
}
