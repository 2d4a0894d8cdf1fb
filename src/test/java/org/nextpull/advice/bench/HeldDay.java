package org.nextpull.advice.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.nextpull.advice.DayEvidence;
import org.nextpull.advice.DayPlanner;
import org.nextpull.advice.HoldPlanner;
import org.nextpull.advice.PlannerDecision;
import org.nextpull.advice.PlannerRules;
import org.nextpull.advice.TriedPull;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.PeakMap;
import org.nextpull.fit.Surface;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.fit.SurfacePriors;
import org.nextpull.fit.SurfacePull;
import org.nextpull.math.NormalMixture;
import org.nextpull.unit.Advance;
import org.nextpull.unit.SpeedBand;

/** Three held speeds of an invented engine whose spark is stepped while it runs and warms, and the map that comes of them. */
final class HeldDay {
    /** Rows of the engine at 3,625, 4,875 and 5,875 rpm. */
    private static final int[] HELD = {2, 7, 11};

    private static final double PLATEAU_S = 4;
    private static final double SETTLE_S = 6;
    private static final double WARM_S = 20;
    private static final double WITHIN_RPM = 1;
    private static final int MOST_TRIED = 60;

    private final MapEngine engine;
    private final Random random;
    private final double warmsPercent;
    private final double noisePercent;
    private final double startDeg;
    private final PlannerRules.Spark rules;
    private final List<SurfacePull> surface = new ArrayList<>();
    private final List<TriedPull> tried = new ArrayList<>();
    private double seconds;

    /**
     * What came of it.
     *
     * @param plateaus held in all
     * @param seconds at load
     * @param found percent of the band left by the map that the held speeds tell of
     * @param held share of the held speeds whose 90 % interval holds the truth
     * @param between the same of the rows between two held speeds
     * @param pulls over the band until that map was climbed to and proven
     * @param left percent of the band left by the peak that is stated then
     */
    record Outcome(int plateaus, double seconds, double found, double held, double between, int pulls, double left) {}

    private HeldDay(MapClass kind, double stepDeg, long seed) {
        engine = new MapEngine(kind, false, seed);
        random = engine.random();
        warmsPercent = 0.4 * random.nextDouble();
        noisePercent = 0.08 + 0.07 * random.nextDouble();
        startDeg = Math.floor((MapEngine.GUESS_DEG - 6 - 4 * random.nextDouble()) * 2) / 2;
        rules = new PlannerRules.Spark(-5, 50, stepDeg, 0.5, 2);
    }

    static Outcome run(MapClass kind, double stepDeg, long seed) {
        HeldDay day = new HeldDay(kind, stepDeg, seed);
        for (int row : HELD) {
            day.hold(row);
        }
        return day.outcome();
    }

    private void hold(int row) {
        HoldPlanner planner = new HoldPlanner(rules);
        List<HoldPlanner.Plateau> plateaus = new ArrayList<>();
        List<SurfacePull.Reading> readings = new ArrayList<>();
        double level = engine.level(row, surface.size());
        double deg = startDeg;
        while (true) {
            double heldS = PLATEAU_S * plateaus.size();
            double noise = noisePercent * random.nextGaussian() * (random.nextDouble() < 0.01 ? 4 : 1);
            double cold = Math.exp(-(SETTLE_S + PLATEAU_S / 2 + heldS) / WARM_S);
            double percent = level - warmsPercent * (1 - cold) + noise - engine.sparkFall(row, deg, 0);
            plateaus.add(new HoldPlanner.Plateau(deg, percent));
            readings.add(new SurfacePull.Reading(row, Advance.ofDeg(deg), Optional.empty(), percent, heldS));
            double rpm = engine.rows.rpm(row);
            tried.add(new TriedPull(
                    SparkMap.flat(Advance.ofDeg(deg)),
                    Optional.empty(),
                    new SpeedBand(rpm - WITHIN_RPM, rpm + WITHIN_RPM),
                    List.of(),
                    false));
            if (!(planner.next(plateaus, Double.POSITIVE_INFINITY, false) instanceof HoldPlanner.HoldStep.Set next)) {
                break;
            }
            deg = next.advanceDeg();
        }
        seconds += SETTLE_S + PLATEAU_S * plateaus.size();
        surface.add(new SurfacePull(0, surface.size(), true, readings));
    }

    private Outcome outcome() {
        int plateaus = tried.size();
        SurfacePosterior held = posterior();
        PeakMap peaks = held.peaks();
        double found = engine.left(peaks.means(), 0, 0);
        int pulls = 0;
        SparkMap map = MapDay.cells(startDeg);
        PlannerDecision decision = decide(held, map);
        while (decision instanceof PlannerDecision.Pull next) {
            map = next.setting().spark().orElseThrow();
            surface.add(engine.pull(surface.size(), map.degAt(engine.rows.rpm()), 0));
            tried.add(new TriedPull(map, Optional.empty(), MapDay.BAND, List.of(), false));
            pulls++;
            decision = decide(posterior(), map);
        }
        SparkMap peak = decision.answer().peak().spark().orElseThrow();
        return new Outcome(
                plateaus,
                seconds,
                found,
                covered(peaks, IntStream.of(HELD)),
                covered(
                        peaks,
                        IntStream.range(HELD[0], HELD[HELD.length - 1])
                                .filter(row -> IntStream.of(HELD).noneMatch(there -> there == row))),
                pulls,
                engine.left(peak.degAt(engine.rows.rpm()), 0, 0));
    }

    private SurfacePosterior posterior() {
        SurfacePriors priors = SurfacePriors.usual(SparkMap.flat(Advance.ofDeg(MapEngine.GUESS_DEG)));
        return SurfacePosterior.of(new Surface(engine.rows, surface, priors));
    }

    private PlannerDecision decide(SurfacePosterior posterior, SparkMap map) {
        PlannerRules day = new PlannerRules(rules, Optional.empty(), PlannerRules.Ending.usual(0.2, MOST_TRIED), false);
        return new DayPlanner(day).decide(new DayEvidence(posterior, tried, Optional.empty(), map));
    }

    private double covered(PeakMap peaks, IntStream rows) {
        return rows.mapToDouble(row -> {
                    NormalMixture reported = peaks.reported(row);
                    double truth = engine.peak(row, 0);
                    return reported.quantile(0.05) <= truth && truth <= reported.quantile(0.95) ? 1 : 0;
                })
                .average()
                .orElseThrow();
    }
}
