package org.nextpull.advice.bench;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.IntStream;

/** Figures of many sweeps. */
record BenchResult(List<SweepOutcome> outcomes) {

    static BenchResult of(
            EngineClass engines, BenchEngine.Kind kind, Sample sample, Function<BenchEngine, SweepOutcome> method) {
        return new BenchResult(IntStream.range(0, sample.engines())
                .parallel()
                .mapToObj(i -> {
                    RandomGenerator random =
                            RandomGeneratorFactory.of("L64X128MixRandom").create(sample.seed() * 1_000_003 + i);
                    return method.apply(BenchEngine.draw(engines, kind, random));
                })
                .toList());
    }

    /** How many engines, and the seed that draws them. */
    record Sample(int engines, long seed) {}

    BenchResult only(Predicate<SweepOutcome> wanted) {
        return new BenchResult(outcomes.stream().filter(wanted).toList());
    }

    double mean(ToDoubleFunction<SweepOutcome> figure) {
        return outcomes.stream().mapToDouble(figure).average().orElse(0);
    }

    double percent(Predicate<SweepOutcome> wanted) {
        return 100 * mean(outcome -> wanted.test(outcome) ? 1 : 0);
    }

    double rms(ToDoubleFunction<SweepOutcome> figure) {
        return Math.sqrt(mean(outcome -> figure.applyAsDouble(outcome) * figure.applyAsDouble(outcome)));
    }

    double quantile(double probability, ToDoubleFunction<SweepOutcome> figure) {
        double[] sorted = outcomes.stream().mapToDouble(figure).sorted().toArray();
        return sorted[(int) Math.min(sorted.length - 1, Math.floor(probability * sorted.length))];
    }

    String row(String name) {
        BenchResult printed = only(SweepOutcome::printed);
        BenchResult hard = only(SweepOutcome::hard);
        return String.format(
                Locale.ROOT,
                "| %s | %.2f / %.0f | %.2f | %.2f | %.3f / %.2f / %.2f | %.2f | %.1f / %.1f / %.1f | %.1f (%.1f) | %.1f of %.0f | %.2f |",
                name,
                mean(SweepOutcome::pulls),
                quantile(0.95, SweepOutcome::pulls),
                percent(SweepOutcome::isFalseStop),
                hard.outcomes.isEmpty() ? 0 : hard.percent(SweepOutcome::isFalseStop),
                quantile(0.5, SweepOutcome::leftAtPeakPercent),
                quantile(0.95, SweepOutcome::leftAtPeakPercent),
                quantile(0.99, SweepOutcome::leftAtPeakPercent),
                rms(SweepOutcome::errorOfPeak),
                quantile(0.5, SweepOutcome::past),
                quantile(0.95, SweepOutcome::past),
                quantile(1, SweepOutcome::past),
                percent(SweepOutcome::covers),
                mean(outcome -> outcome.interval().width()),
                printed.outcomes.isEmpty() ? 0 : printed.percent(SweepOutcome::covers),
                percent(SweepOutcome::printed),
                mean(SweepOutcome::excursions));
    }

    static String heading() {
        return "| method | pulls mean / p95 | false stops % | of hard corner % | left at stated peak med / p95 / p99 % "
                + "| rms peak deg | past peak med / p95 / max deg | interval holds % (width) | printed holds % of share % | excursions |\n"
                + "|---|---|---|---|---|---|---|---|---|---|";
    }
}
