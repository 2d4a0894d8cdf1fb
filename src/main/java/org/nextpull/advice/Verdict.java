package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.finding.Finding;
import org.nextpull.fit.PosteriorValue;
import org.nextpull.fit.SurfaceKnowledge;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.unit.Advance;

/**
 * What the day says so far, and the next step.
 *
 * @param timing the timing sweep, as soon as any advance was run
 * @param mixture the mixture bracket, as soon as one began
 * @param map the map of a day whose ignition holds one, as soon as a pull gave torque; such a day has no sweeps
 * @param chosen what would be left in the engine if the day ended now; empty before a clean pull
 * @param advice the next step
 * @param surface what the pulls say of torque; empty where they are too few to say more than was thought before
 * @param findings what is worth saying about the day as a whole
 */
public record Verdict(
        Optional<SweepAnswer> timing,
        Optional<SweepAnswer> mixture,
        Optional<MapState> map,
        Optional<Chosen> chosen,
        Advice advice,
        Optional<SurfacePosterior> surface,
        List<Finding> findings) {
    /** What a log reads beside what was set. */
    private static final double SAME_DEG = 0.25;

    public Verdict {
        findings = List.copyOf(findings);
    }

    /** A verdict that says no more than the next step, and what that leaves. */
    static Verdict of(Advice advice) {
        return new Verdict(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                advice.leave(),
                advice,
                Optional.empty(),
                List.of());
    }

    /** What the pulls teach other days of the engine, and other fuels. */
    public Optional<SurfaceKnowledge> teaches() {
        return surface.map(SurfacePosterior::knowledge);
    }

    /** What the chosen setting makes over another on this engine and fuel, percent of torque; empty where no pull ran as far as that. */
    public Optional<PosteriorValue> gainOver(EngineSetting other) {
        return surface.flatMap(shown -> chosen.flatMap(own -> shown.gain(run(other), run(own.setting()))));
    }

    private static EngineSetting run(EngineSetting setting) {
        return EngineSetting.of(setting.counted().orElse(SparkMap.flat(Advance.ofDeg(0))), setting.lambda());
    }

    /** Whether knock that was heard forbids a setting, be it one that was run without: above what it leaves at any speed. */
    public boolean isAboveKnockLimit(EngineSetting setting) {
        return setting.counted()
                .filter(run -> timing.stream()
                                .flatMapToDouble(sweep -> sweep.limit().stream())
                                .anyMatch(limit -> setting.map().isEmpty() && run.degAt(0) > limit + SAME_DEG)
                        || map.stream()
                                .flatMap(state -> state.knockLimits().stream())
                                .anyMatch(row -> run.degAt(row.rpm()) > row.deg() + SAME_DEG))
                .isPresent();
    }

    /** The same with another next step, and what that leaves. */
    public Verdict withAdvice(Advice newAdvice) {
        return new Verdict(timing, mixture, map, newAdvice.leave(), newAdvice, surface, findings);
    }

    /** The same with a stop named that was said earlier. */
    public Verdict withEarlier(EarlierStop stop) {
        return new Verdict(timing, mixture, map, chosen, advice.withEarlier(stop), surface, findings);
    }
}
