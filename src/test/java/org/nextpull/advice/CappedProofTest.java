package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.SpeedRows;
import org.nextpull.fit.Surface;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.fit.SurfacePriors;
import org.nextpull.fit.SurfacePull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.SpeedBand;

/** A map at what knock leaves is proven by the pull that ran it, though the log reads a little more beside a bend of the map. */
class CappedProofTest {
    private static final double[] RPM = {3500, 4000, 4500, 5000, 5500};
    private static final SparkMap PRESENT = SparkMap.of(RPM, new double[] {18, 18, 18, 18, 18});
    private static final int MOST_PULLS = 14;

    private final Random random = new Random(3);
    private final List<TriedPull> tried = new ArrayList<>();
    private final List<SurfacePull> pulls = new ArrayList<>();

    private void run(SparkMap set, double readMoreDeg) {
        double[] deg = set.degAt(RPM);
        List<TriedPull.KnockFlag> flags = deg[0] > 19.5 ? List.of(TriedPull.KnockFlag.atRpm(RPM[0])) : List.of();
        deg[0] += readMoreDeg;
        List<SurfacePull.Reading> readings = new ArrayList<>();
        double whole = 0.2 * random.nextGaussian();
        for (int row = 0; row < RPM.length; row++) {
            double off = deg[row] - 24;
            double torque = 500 - 0.05 * off * off + whole + 0.1 * random.nextGaussian();
            readings.add(new SurfacePull.Reading(row, Advance.ofDeg(deg[row]), Optional.empty(), torque, 0));
        }
        pulls.add(new SurfacePull(0, pulls.size(), false, readings));
        tried.add(new TriedPull(
                SparkMap.of(RPM, deg), Optional.empty(), new SpeedBand(RPM[0], RPM[RPM.length - 1]), flags, false));
    }

    private PlannerDecision decide() {
        PlannerRules rules = new PlannerRules(
                new PlannerRules.Spark(10, 40, 2, 0.5, 2),
                Optional.empty(),
                PlannerRules.Ending.usual(0.2, MOST_PULLS),
                false);
        SurfacePriors priors = SurfacePriors.usual(SparkMap.flat(Advance.ofDeg(24)));
        return new DayPlanner(rules)
                .decide(new DayEvidence(
                        SurfacePosterior.of(new Surface(SpeedRows.ofRpm(RPM), pulls, priors)),
                        tried,
                        Optional.empty(),
                        PRESENT));
    }

    @Test
    void theDayEndsWithItAndNotWithItsBudget() {
        run(PRESENT, 0);
        PlannerDecision decision = decide();
        while (decision instanceof PlannerDecision.Pull next && pulls.size() < 2 * MOST_PULLS) {
            run(
                    next.setting().spark().orElseThrow(),
                    tried.stream().allMatch(pull -> pull.flags().isEmpty()) ? 0 : 0.2);
            decision = decide();
        }
        assertThat(tried).anyMatch(pull -> !pull.flags().isEmpty());
        assertThat(decision).isInstanceOf(PlannerDecision.Stop.class);
        assertThat(((PlannerDecision.Stop) decision).reason()).isNotEqualTo(PlannerDecision.StopReason.BUDGET);
        assertThat(decision.answer().leave()).isPresent();
    }
}
