package org.nextpull.advice.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.nextpull.advice.DayEvidence;
import org.nextpull.advice.DayPlanner;
import org.nextpull.advice.PlannerDecision;
import org.nextpull.advice.PlannerRules;
import org.nextpull.advice.TriedPull;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.KnockLevels;
import org.nextpull.fit.MixturePrior;
import org.nextpull.fit.PeakMap;
import org.nextpull.fit.Surface;
import org.nextpull.fit.SurfaceKnowledge;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.fit.SurfacePriors;
import org.nextpull.fit.SurfacePull;
import org.nextpull.math.NormalMixture;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.SpeedBand;

/** One day with an invented engine, from its start to the planner's stop. */
public final class MapDay {
    /** What is listened to. */
    public enum Ear {
        FLAG,
        LEVEL
    }

    /** Which candidate of a day is followed: the first, or the second, with what the first taught and without. */
    public enum Candidate {
        FIRST,
        SECOND_ALONE,
        SECOND_TAUGHT
    }

    /**
     * How days are run.
     *
     * @param stepDeg largest step
     * @param isFlat whether the ignition holds one number
     * @param sweepsMixture whether the mixture is swept too
     * @param ear how knock is heard
     * @param nearBestPercent what the map that stays may give away
     * @param straysCount whether nodes that fit beside their curvature count
     * @param candidate which sweep of the day is looked at
     */
    public record Rules(
            double stepDeg,
            boolean isFlat,
            boolean sweepsMixture,
            Ear ear,
            double nearBestPercent,
            boolean straysCount,
            Candidate candidate) {
        public static Rules of(double stepDeg) {
            return new Rules(stepDeg, false, false, Ear.FLAG, 0.2, true, Candidate.FIRST);
        }

        public Rules flat() {
            return new Rules(stepDeg, true, sweepsMixture, ear, nearBestPercent, straysCount, candidate);
        }

        public Rules both() {
            return new Rules(stepDeg, isFlat, true, ear, nearBestPercent, straysCount, candidate);
        }

        public Rules graded() {
            return new Rules(stepDeg, isFlat, sweepsMixture, Ear.LEVEL, nearBestPercent, straysCount, candidate);
        }

        public Rules near(double percent) {
            return new Rules(stepDeg, isFlat, sweepsMixture, ear, percent, straysCount, candidate);
        }

        public Rules of(Candidate which) {
            return new Rules(stepDeg, isFlat, sweepsMixture, ear, nearBestPercent, straysCount, which);
        }

        public Rules withoutStrays() {
            return new Rules(stepDeg, isFlat, sweepsMixture, ear, nearBestPercent, false, candidate);
        }
    }

    static final SpeedBand BAND = new SpeedBand(3000, 6500);
    private static final double MOST_DEG = 50;

    private final MapEngine engine;
    private final Rules rules;
    private final List<SurfacePull> pulls = new ArrayList<>();
    private final List<TriedPull> tried = new ArrayList<>();
    private final List<KnockLevels.Level> levels = new ArrayList<>();
    private double pastPeak = Double.NEGATIVE_INFINITY;
    private int knocking;
    private double deepest;
    private final Optional<SurfaceKnowledge> taught;
    private Optional<PlannerDecision.Stop> stop = Optional.empty();

    private MapDay(MapEngine engine, Rules rules, Optional<SurfaceKnowledge> taught) {
        this.engine = engine;
        this.rules = rules;
        this.taught = taught;
    }

    public static MapOutcome run(MapClass kind, Rules rules, long seed) {
        MapEngine engine = new MapEngine(kind, rules.sweepsMixture(), seed);
        MapDay day = new MapDay(engine, rules, Optional.empty());
        if (rules.candidate() == Candidate.FIRST) {
            return day.outcome(day.run());
        }
        Optional<SurfaceKnowledge> taught = rules.candidate() == Candidate.SECOND_TAUGHT
                ? Optional.of(day.run().knowledge())
                : Optional.empty();
        MapDay second = new MapDay(new MapEngine(engine, ~seed), rules, taught);
        return second.outcome(second.run());
    }

    private SurfacePosterior run() {
        double start = Math.floor((MapEngine.GUESS_DEG - 6 - 4 * engine.random().nextDouble()) * 2) / 2;
        SparkMap map = rules.isFlat() ? SparkMap.flat(Advance.ofDeg(start)) : cells(start);
        Optional<Lambda> lambda = rules.sweepsMixture()
                ? Optional.of(Lambda.of(MapEngine.GUESS_LAMBDA.value() - 0.02))
                : Optional.empty();
        DayPlanner planner = new DayPlanner(new PlannerRules(
                new PlannerRules.Spark(-5, MOST_DEG, rules.stepDeg(), 0.5, 2),
                rules.sweepsMixture()
                        ? Optional.of(new PlannerRules.Mixture(Lambda.of(0.79), Lambda.of(0.95), 0.034, 0.005))
                        : Optional.empty(),
                PlannerRules.Ending.usual(rules.nearBestPercent(), 16),
                false));
        while (true) {
            pull(map, lambda);
            SurfacePosterior posterior = posterior(taught);
            PlannerDecision decision = planner.decide(evidence(posterior, map));
            if (taught.isPresent() && decision instanceof PlannerDecision.Pull learned) {
                PlannerDecision usual = planner.decide(evidence(posterior(Optional.empty()), map));
                decision = isBeyond(learned.setting(), setting(usual)) ? usual : learned;
            }
            if (decision instanceof PlannerDecision.Pull next) {
                map = next.setting().spark().orElseThrow();
                lambda = next.setting().lambda();
            } else {
                stop = Optional.of((PlannerDecision.Stop) decision);
                return posterior;
            }
        }
    }

    private static EngineSetting setting(PlannerDecision decision) {
        return decision instanceof PlannerDecision.Pull pull
                ? pull.setting()
                : stays(((PlannerDecision.Stop) decision).answer());
    }

    private static EngineSetting stays(PlannerDecision.Answer answer) {
        return answer.leave().orElse(answer.peak());
    }

    /** What was taught never lengthens a step. */
    private boolean isBeyond(EngineSetting learned, EngineSetting usual) {
        double[] further = learned.spark().orElseThrow().degAt(engine.rows.rpm());
        double[] plain = usual.spark().orElseThrow().degAt(engine.rows.rpm());
        return IntStream.range(0, MapEngine.ROWS).anyMatch(row -> further[row] > plain[row] + 1e-9)
                || engine.hundredths(learned.lambda()) > engine.hundredths(usual.lambda()) + 1e-9;
    }

    private SurfacePosterior posterior(Optional<SurfaceKnowledge> known) {
        SurfacePriors usual = priors();
        return SurfacePosterior.of(new Surface(
                engine.rows, pulls, known.map(one -> one.priors(usual)).orElse(usual)));
    }

    private DayEvidence evidence(SurfacePosterior posterior, SparkMap map) {
        Optional<KnockLevels> heard =
                rules.ear() == Ear.LEVEL ? Optional.of(new KnockLevels(engine.rows, levels)) : Optional.empty();
        return new DayEvidence(posterior, tried, heard, map);
    }

    static SparkMap cells(double start) {
        double[] rpm = new double[8];
        double[] deg = new double[8];
        for (int c = 0; c < rpm.length; c++) {
            rpm[c] = 3000 + 500.0 * c;
            deg[c] = start;
        }
        return SparkMap.of(rpm, deg);
    }

    private SurfacePriors priors() {
        SurfacePriors usual = SurfacePriors.usual(SparkMap.flat(Advance.ofDeg(MapEngine.GUESS_DEG)))
                .withMixture(
                        rules.sweepsMixture()
                                ? Optional.of(MixturePrior.ofGuess(MapEngine.GUESS_LAMBDA))
                                : Optional.empty());
        return rules.straysCount() ? usual : usual.withStrayPulls(0);
    }

    private void pull(SparkMap map, Optional<Lambda> lambda) {
        double[] deg = map.degAt(engine.rows.rpm());
        double z = engine.hundredths(lambda);
        pulls.add(engine.pull(pulls.size(), deg, z));
        List<TriedPull.KnockFlag> flags = new ArrayList<>();
        if (rules.ear() == Ear.FLAG) {
            engine.heard(deg, z).forEach(row -> flags.add(TriedPull.KnockFlag.atRpm(engine.rows.rpm(row))));
        } else {
            for (int r = 0; r < MapEngine.ROWS; r++) {
                double level = engine.lnLevel(r, deg[r], z);
                levels.add(new KnockLevels.Level(r, deg[r], level));
                if (level > 0.5) {
                    flags.add(TriedPull.KnockFlag.ofLevelAtRpm(engine.rows.rpm(r)));
                }
            }
        }
        tried.add(new TriedPull(map, lambda, BAND, flags, false));
        double depth = engine.depth(deg, z);
        if (depth > 0) {
            knocking++;
            deepest = Math.max(deepest, depth);
        }
        for (int r = 0; r < MapEngine.ROWS; r++) {
            pastPeak = Math.max(pastPeak, deg[r] - engine.peak(r, z));
        }
    }

    private MapOutcome outcome(SurfacePosterior posterior) {
        PlannerDecision.Stop end = stop.orElseThrow();
        PlannerDecision.Answer answer = end.answer();
        EngineSetting judged = rules.nearBestPercent() > 0 ? answer.peak() : stays(answer);
        double[] deg = judged.spark().orElseThrow().degAt(engine.rows.rpm());
        double z = engine.hundredths(judged.lambda());
        EngineSetting left = stays(answer);
        double[] stays = left.spark().orElseThrow().degAt(engine.rows.rpm());
        PeakMap peaks = judged.lambda().map(posterior::peaks).orElseGet(posterior::peaks);
        int covered = 0;
        for (int r = 0; r < MapEngine.ROWS; r++) {
            NormalMixture row = peaks.reported(r);
            double truth = engine.peak(r, z);
            covered += row.quantile(0.05) <= truth && truth <= row.quantile(0.95) ? 1 : 0;
        }
        boolean lambdaCovered = posterior
                .bestLambda()
                .map(best -> {
                    double truth = MapEngine.GUESS_LAMBDA.value() + engine.bestHundredths / 100;
                    return best.quantile(0.05) <= truth && truth <= best.quantile(0.95);
                })
                .orElse(true);
        double bestFlat = rules.isFlat() ? engine.bestFlat() : 0;
        double leftPercent =
                rules.isFlat() ? engine.flatLoss(deg[0]) - engine.flatLoss(bestFlat) : engine.left(deg, z, 0);
        return new MapOutcome(
                tried.size(),
                leftPercent,
                rules.isFlat() ? leftPercent : engine.left(deg, z, 2),
                engine.left(stays, engine.hundredths(left.lambda()), 0),
                (double) covered / MapEngine.ROWS,
                lambdaCovered,
                pastPeak,
                knocking,
                deepest,
                end.reason(),
                flatCoverage(posterior, bestFlat),
                Arrays.stream(stays).max().orElse(0));
    }

    private MapOutcome.Flat flatCoverage(SurfacePosterior posterior, double bestFlat) {
        if (!rules.isFlat()) {
            return new MapOutcome.Flat(true, true);
        }
        NormalMixture number = posterior.bestFlat();
        double ran = tried.get(tried.size() - 1).spark().degAt(0);
        double gain = engine.flatLoss(ran);
        org.nextpull.unit.Span said = posterior.gainOfMap(ran);
        return new MapOutcome.Flat(
                number.quantile(0.05) <= bestFlat && bestFlat <= number.quantile(0.95),
                said.low() <= gain && gain <= said.high());
    }
}
