package org.nextpull.api;

import java.util.List;
import java.util.Optional;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.Chosen;
import org.nextpull.channel.EngineSetting;
import org.nextpull.finding.Finding;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Torque;

/**
 * What a day says.
 *
 * @param next what to do next; empty where the plan sweeps nothing or the pulls give no answer, and then the findings say why
 * @param pulls all pulls in the order of the day
 * @param findings everything that is wrong or worth saying
 */
public record DayAnswer(Optional<Next> next, List<Pull> pulls, List<Finding> findings) {
    /** Keeps its own lists. */
    public DayAnswer {
        pulls = List.copyOf(pulls);
        findings = List.copyOf(findings);
    }

    /**
     * What to do next.
     *
     * @param action what to do
     * @param code why, in one word; the handbook page "Advice" lists them
     * @param set what to set for the next pull; empty where the day ends. It says a map, which for a flat ignition is one number at every
     *     speed, or degrees to add to the map that stands in the engine, or neither, which leaves that
     * @param leave what to leave in the engine where the day ends, or while it waits
     */
    public record Next(Action action, AdviceCode code, Optional<EngineSetting> set, Optional<EngineSetting> leave) {}

    /**
     * One pull.
     *
     * @param number number over the day, from 1
     * @param source log that it came from
     * @param isUsed whether it counts
     * @param torque average corrected torque over the band
     * @param findings what is wrong or worth saying of it
     */
    public record Pull(int number, String source, boolean isUsed, Optional<Torque> torque, List<Finding> findings) {
        /** Keeps its own list. */
        public Pull {
            findings = List.copyOf(findings);
        }
    }

    static DayAnswer of(SessionResult result) {
        return new DayAnswer(
                result.verdict().map(verdict -> next(verdict.advice())),
                result.pulls().stream().map(DayAnswer::pull).toList(),
                result.found());
    }

    private static Next next(Advice advice) {
        return new Next(
                advice.action(), advice.code(), advice.setting(), advice.leave().map(Chosen::setting));
    }

    private static Pull pull(MeasuredPull pull) {
        return new Pull(
                pull.number(),
                pull.origin().source(),
                pull.isUsed(),
                pull.figures().flatMap(figures -> figures.meanTorque()),
                pull.findings());
    }
}
