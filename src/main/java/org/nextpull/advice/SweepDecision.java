package org.nextpull.advice;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.fit.SettingLoss;
import org.nextpull.unit.Span;

/** What the planner decided for one sweep, with the numbers behind it, in degrees or hundredths of lambda. */
public sealed interface SweepDecision {

    /** The numbers behind the decision. */
    Numbers numbers();

    /**
     * One more pull.
     *
     * @param candidate where
     * @param repeat whether the setting was run before
     * @param doubtful number of a pull that alone carries the verdict that the sweep is settled
     */
    record Pull(Candidate candidate, boolean repeat, OptionalInt doubtful, Numbers numbers) implements SweepDecision {}

    /** No more pulls. */
    record Stop(Why why, Numbers numbers) implements SweepDecision {}

    /** Why a sweep is over. */
    enum Why {
        /** The answer is good enough. */
        SETTLED,
        /** No pull is worth its price at this scatter. */
        SCATTER_LIMITED,
        /** Knock, or another limit that was met, lies below the peak. */
        KNOCK_LIMITED,
        /** The response still rises at the plan's limit. */
        PLAN_LIMIT,
        /** The pulls are used up; the answer is not settled. */
        BUDGET,
        /** No setting is left that may be pulled. */
        NO_ROOM;

        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * The numbers behind a decision.
     *
     * @param pulls pulls that gave a response
     * @param leave the setting to leave in the engine, not beyond the most daring clean one; empty when nothing clean was run
     * @param wanted the setting that would be left if everything permitted were proven
     * @param peakMean mean of the peak
     * @param peak where the peak may lie, 5 to 95 %
     * @param least where the least setting that is as good may lie, 5 to 95 %
     * @param chances what is likely
     * @param scatterPercent scatter from pull to pull that the fit works with
     */
    record Numbers(
            int pulls,
            Optional<SettingLoss> leave,
            SettingLoss wanted,
            double peakMean,
            Span peak,
            Span least,
            Chances chances,
            double scatterPercent) {}

    /**
     * Probabilities, 0 to 1.
     *
     * @param bracketed that the peak lies below the most daring clean setting
     * @param limited that the peak lies above the highest permitted setting
     */
    record Chances(double bracketed, double limited) {}
}
