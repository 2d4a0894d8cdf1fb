package org.nextpull.advice;

import java.util.List;
import java.util.OptionalDouble;
import org.nextpull.fit.SweepPriors;

/**
 * What the planner is asked: the next setting of one sweep.
 *
 * @param tried pulls of the sweep so far
 * @param priors what is believed of the engine
 * @param room where the sweep may go
 * @param rules when it is over
 * @param knockGauge the graded knock channel, where there is one
 */
public record SweepQuestion(
        List<TriedSetting> tried,
        SweepPriors priors,
        SweepRoom room,
        PlannerRules rules,
        java.util.Optional<KnockGauge> knockGauge) {
    public SweepQuestion {
        tried = List.copyOf(tried);
    }

    /**
     * A graded knock channel.
     *
     * @param lnFloor natural log of the level that it shows without knock
     * @param lnLimit natural log of the level that is too much
     */
    public record KnockGauge(double lnFloor, double lnLimit) {}

    /** Lowest setting at which knock was heard or a limit was met. */
    OptionalDouble lowestUnclean() {
        return tried.stream()
                .filter(pull -> !pull.clean())
                .mapToDouble(TriedSetting::setting)
                .min();
    }

    /** Most daring clean setting; one that lies above a setting with knock is not believed. */
    OptionalDouble mostDaring() {
        double below = lowestUnclean().orElse(Double.POSITIVE_INFINITY);
        return tried.stream()
                .filter(pull -> pull.clean() && pull.setting() < below)
                .mapToDouble(TriedSetting::setting)
                .max();
    }
}
