package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.fit.SurfaceKnowledge;

/**
 * What the day says so far, and the next step.
 *
 * @param timing the timing sweep, as soon as any advance was run
 * @param mixture the mixture bracket, as soon as one began
 * @param map the map of a day whose ignition holds one, as soon as a pull gave torque; such a day has no sweeps
 * @param chosen what would be left in the engine if the day ended now; empty before a clean pull
 * @param advice the next step
 * @param teaches what the pulls teach other days of the engine; empty where they are too few
 * @param findings what is worth saying about the day as a whole
 */
public record Verdict(
        Optional<SweepAnswer> timing,
        Optional<SweepAnswer> mixture,
        Optional<MapState> map,
        Optional<Chosen> chosen,
        Advice advice,
        Optional<SurfaceKnowledge> teaches,
        List<Finding> findings) {
    public Verdict {
        findings = List.copyOf(findings);
    }

    /** The same with another next step, and what that leaves. */
    public Verdict withAdvice(Advice newAdvice) {
        return new Verdict(timing, mixture, map, newAdvice.leave(), newAdvice, teaches, findings);
    }

    /** The same with a stop named that was said earlier. */
    public Verdict withEarlier(EarlierStop stop) {
        return new Verdict(timing, mixture, map, chosen, advice.withEarlier(stop), teaches, findings);
    }
}
