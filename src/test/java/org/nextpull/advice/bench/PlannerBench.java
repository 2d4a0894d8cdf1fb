package org.nextpull.advice.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.nextpull.advice.PlannerRules;
import org.nextpull.fit.Belief;
import org.nextpull.fit.SweepPriors;
import org.nextpull.unit.Span;

/**
 * The planner beside the trade's rule on seeded, invented engines. Arguments of {@code main}: seed, engines, file for the table.
 */
public final class PlannerBench {
    private static final BenchEngine.KnockSensor SENSOR = new BenchEngine.KnockSensor(0.35, -2.5, 0.28);
    private static final Span KNOCK = Span.of(-6, 6);

    /** Curvature of the engines that the method was first designed for; a prior twice as steep as the usual one. */
    private static final Belief STEEP_PRIOR = new Belief(Math.log(7.5e-4), 0.45);

    private PlannerBench() {}

    /** Engines as flat as published torque curves, up to steep ones. */
    static EngineClass flat() {
        return EngineClass.steep().named("k 1.5e-4 to 9e-4").withCurvature(Span.of(1.5e-4, 9e-4));
    }

    /** Flat and steep engines on days that drift by up to 0.1 % a pull either way. */
    static EngineClass drifting() {
        EngineClass flat = flat();
        return new EngineClass(
                "drifting",
                flat.curvature(),
                flat.asymmetry(),
                Span.of(0.1, 0.6),
                Span.of(-0.1, 0.1),
                flat.outliers(),
                flat.guessSd(),
                flat.startBelowGuess(),
                flat.knockFromPeak());
    }

    /** As {@link #usual}, with no earlier repeats that tell the scatter. */
    static PlannerRun unknownScatter() {
        return new PlannerRun(PlannerRules.timing(), 4, SweepPriors.timing(0), false, Optional.empty());
    }

    static EngineClass mixtures() {
        return EngineClass.steep()
                .named("mixture, k 0.9e-4 to 4.5e-4")
                .withCurvature(Span.of(0.9e-4, 4.5e-4))
                .withStart(Span.of(5, 8));
    }

    static PlannerRun usual() {
        return new PlannerRun(PlannerRules.timing(), 4, SweepPriors.timing(0), true, Optional.empty());
    }

    static PlannerRun mixture() {
        return new PlannerRun(PlannerRules.mixture(), 3, SweepPriors.mixture(0), true, Optional.empty());
    }

    static PlannerRun flagged() {
        return new PlannerRun(PlannerRules.flaggedTiming(), 2.5, SweepPriors.timing(0), true, Optional.empty());
    }

    static PlannerRun graded() {
        return new PlannerRun(PlannerRules.timing(), 4, SweepPriors.timing(0), true, Optional.of(SENSOR));
    }

    public static void main(String[] args) throws IOException {
        BenchResult.Sample sample = new BenchResult.Sample(Integer.parseInt(args[1]), Long.parseLong(args[0]));
        EngineClass steep = EngineClass.steep();
        PlannerRun usual = usual();
        PlannerRun steepPrior =
                new PlannerRun(usual.rules(), 4, usual.priors().withLnCurvature(STEEP_PRIOR), true, Optional.empty());
        PlannerRun small = new PlannerRun(usual.rules(), 2, usual.priors(), true, Optional.empty());
        List<String> lines = new ArrayList<>(List.of(BenchResult.heading().split("\n", -1)));
        Table table = new Table(sample, lines);
        table.add("trade", steep, BenchEngine.Kind.TIMING, new TradeRule(2)::run);
        table.add("planner", steep, BenchEngine.Kind.TIMING, usual::run);
        table.add("planner, steep prior", steep, BenchEngine.Kind.TIMING, steepPrior::run);
        table.add("planner, step 2 deg", steep, BenchEngine.Kind.TIMING, small::run);
        table.add("trade", flat(), BenchEngine.Kind.TIMING, new TradeRule(2)::run);
        table.add("planner", flat(), BenchEngine.Kind.TIMING, usual::run);
        table.add("trade", mixtures(), BenchEngine.Kind.MIXTURE, new TradeRule(2)::run);
        table.add("planner", mixtures(), BenchEngine.Kind.MIXTURE, mixture()::run);
        EngineClass knocking = steep.named("knock within 6 deg of the peak").withKnock(KNOCK);
        table.add("trade", knocking, BenchEngine.Kind.TIMING, new TradeRule(2)::run);
        table.add("planner, knock flag only", knocking, BenchEngine.Kind.TIMING, flagged()::run);
        table.add("planner, graded knock", knocking, BenchEngine.Kind.TIMING, graded()::run);
        BenchResult.Sample sweeps = new BenchResult.Sample(2 * sample.engines(), sample.seed());
        lines.add("");
        lines.add("| prior on curvature | sweeps at fixed settings | interval printed % | printed interval holds % |");
        lines.add("|---|---|---|---|");
        for (double factor : new double[] {1, 2, 0.5}) {
            CoverageBench.Coverage coverage = CoverageBench.of(sweeps, factor);
            lines.add(String.format(
                    Locale.ROOT,
                    "| times %.1f | %d | %.1f | %.1f |",
                    factor,
                    sweeps.engines(),
                    coverage.printedPercent(),
                    coverage.heldPercent()));
        }
        Files.write(Path.of(args[2]), lines);
    }

    private record Table(BenchResult.Sample sample, List<String> lines) {
        void add(String name, EngineClass engines, BenchEngine.Kind kind, Function<BenchEngine, SweepOutcome> method) {
            lines.add(BenchResult.of(engines, kind, sample, method).row(name + "; " + engines.name()));
        }
    }
}
