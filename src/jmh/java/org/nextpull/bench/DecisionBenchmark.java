package org.nextpull.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.nextpull.advice.DayEvidence;
import org.nextpull.advice.DayPlanner;
import org.nextpull.advice.PlannerDecision;
import org.nextpull.advice.PlannerRules;
import org.nextpull.advice.TriedPull;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.SpeedRows;
import org.nextpull.fit.Surface;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.fit.SurfacePriors;
import org.nextpull.fit.SurfacePull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.SpeedBand;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What a decision alone costs, the surface solved and the next map chosen, by speeds and pulls: maps of an invented engine around its best. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class DecisionBenchmark {
    private static final double FROM_RPM = 3000;
    private static final double TO_RPM = 6500;
    private static final double PERCENT = 100;

    /** Speeds and pulls. */
    @Param({"14 x 10", "30 x 25"})
    private String size = "14 x 10";

    private Surface surface = new Surface(SpeedRows.ofRpm(FROM_RPM), List.of(), SurfacePriors.usual(flat(20)));
    private final List<TriedPull> tried = new ArrayList<>();
    private final DayPlanner planner = new DayPlanner(new PlannerRules(
            new PlannerRules.Spark(-5, 50, 2, 0.5, 2), Optional.empty(), PlannerRules.Ending.usual(0.2, 30), false));

    private static SparkMap flat(double deg) {
        return SparkMap.flat(Advance.ofDeg(deg));
    }

    @Setup
    public void run() {
        String[] sizes = size.split(" x ");
        double[] rpm = new double[Integer.parseInt(sizes[0])];
        for (int row = 0; row < rpm.length; row++) {
            rpm[row] = FROM_RPM + row * (TO_RPM - FROM_RPM) / (rpm.length - 1);
        }
        Random random = new Random(13);
        List<SurfacePull> pulls = new ArrayList<>();
        for (int pull = 0; pull < Integer.parseInt(sizes[1]); pull++) {
            double[] deg = new double[rpm.length];
            double level = 0.2 * random.nextGaussian();
            double shift = pull < 5 ? 2 * pull - 8 : 2 * random.nextInt(4) - 4;
            List<SurfacePull.Reading> readings = new ArrayList<>();
            for (int row = 0; row < rpm.length; row++) {
                double best = 22 + 8 * (rpm[row] - FROM_RPM) / (TO_RPM - FROM_RPM);
                deg[row] = best + shift;
                double lost = 0.06 * shift * shift;
                readings.add(new SurfacePull.Reading(
                        row,
                        Advance.ofDeg(deg[row]),
                        Optional.empty(),
                        PERCENT * Math.log(200) + level - lost + 0.1 * random.nextGaussian(),
                        0));
            }
            pulls.add(new SurfacePull(0, pull, false, readings));
            tried.add(new TriedPull(
                    SparkMap.of(rpm, deg), Optional.empty(), new SpeedBand(FROM_RPM, TO_RPM), List.of(), false, false));
        }
        surface = new Surface(SpeedRows.ofRpm(rpm), pulls, SurfacePriors.usual(flat(26)));
    }

    @Benchmark
    public PlannerDecision decide() {
        return planner.decide(new DayEvidence(
                SurfacePosterior.of(surface),
                tried,
                Optional.empty(),
                tried.get(0).spark()));
    }
}
