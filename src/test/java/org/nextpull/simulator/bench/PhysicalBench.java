package org.nextpull.simulator.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.IntStream;

/** The planner beside the trade's rule on physical engines. Arguments of {@code main}: seed, engines, file for the table. */
public final class PhysicalBench {
    private PhysicalBench() {}

    static List<PhysicalSweep> run(long seed, int engines, Function<PhysicalEngine, PhysicalSweep> method) {
        return IntStream.range(0, engines)
                .parallel()
                .mapToObj(i -> method.apply(new PhysicalEngine(
                        RandomGeneratorFactory.of("L64X128MixRandom").create(seed * 1_000_003 + i))))
                .toList();
    }

    static double mean(List<PhysicalSweep> sweeps, ToDoubleFunction<PhysicalSweep> figure) {
        return sweeps.stream().mapToDouble(figure).average().orElse(0);
    }

    static double percent(List<PhysicalSweep> sweeps, Predicate<PhysicalSweep> wanted) {
        return mean(sweeps, sweep -> wanted.test(sweep) ? 100 : 0);
    }

    static double quantile(List<PhysicalSweep> sweeps, double share, ToDoubleFunction<PhysicalSweep> figure) {
        double[] sorted = sweeps.stream().mapToDouble(figure).sorted().toArray();
        return sorted.length == 0 ? 0 : sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }

    static List<PhysicalSweep> only(List<PhysicalSweep> sweeps, Predicate<PhysicalSweep> wanted) {
        return sweeps.stream().filter(wanted).toList();
    }

    private static String row(String name, List<PhysicalSweep> sweeps) {
        List<PhysicalSweep> printed = only(sweeps, PhysicalSweep::printed);
        return String.format(
                Locale.ROOT,
                "| %s | %d | %.2f / %.0f | %.3f / %.2f / %.2f | %.2f | %.2f | %.2f | %.2f | %.1f | %.1f of %.0f |",
                name,
                sweeps.size(),
                mean(sweeps, PhysicalSweep::pulls),
                quantile(sweeps, 0.95, PhysicalSweep::pulls),
                quantile(sweeps, 0.5, PhysicalSweep::leftPercent),
                quantile(sweeps, 0.95, PhysicalSweep::leftPercent),
                quantile(sweeps, 0.99, PhysicalSweep::leftPercent),
                percent(sweeps, PhysicalSweep::isFalseStop),
                percent(sweeps, PhysicalSweep::isFalseStopWithMargin),
                mean(sweeps, PhysicalSweep::excursions),
                percent(sweeps, PhysicalSweep::beyondOnset),
                percent(sweeps, PhysicalSweep::covers),
                percent(printed, PhysicalSweep::covers),
                percent(sweeps, PhysicalSweep::printed));
    }

    public static void main(String[] args) throws IOException {
        long seed = Long.parseLong(args[0]);
        int engines = Integer.parseInt(args[1]);
        List<String> lines = new ArrayList<>();
        lines.add("| method | engines | pulls mean / p95 | torque left med / p95 / p99 % | false stops % "
                + "| with the margin kept % | excursions an engine "
                + "| left beyond onset % | interval holds % | printed holds % of share % |");
        lines.add("|---|---|---|---|---|---|---|---|---|---|");
        add(lines, "trade", run(seed, engines, PhysicalSweep::traded));
        add(lines, "planner", run(seed, engines, PhysicalSweep::planned));
        add(lines, "planner, margin and steps of a plan", run(seed, engines, PhysicalSweep::plannedAsUsual));
        Files.write(Path.of(args[2]), lines);
    }

    private static void add(List<String> lines, String name, List<PhysicalSweep> sweeps) {
        lines.add(row(name + "; all", sweeps));
        lines.add(row(name + "; peak free of knock", only(sweeps, sweep -> !sweep.limited())));
        lines.add(row(name + "; knock below the peak", only(sweeps, PhysicalSweep::limited)));
    }
}
