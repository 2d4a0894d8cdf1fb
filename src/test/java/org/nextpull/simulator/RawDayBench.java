package org.nextpull.simulator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.LongFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;

/**
 * What the program makes of days that it knows nothing of: raw logs at ten rows a second, the shipped plans with their own defaults, the
 * trade's rules beside it. {@code main} takes the number of days of each kind and the first seed, and prints a row a kind.
 */
final class RawDayBench {
    private static final String MAP = "hillclimb-e10-map";
    private static final String FLAT = "hillclimb-e10-timing";
    private static final String MIXTURE = "hillclimb-e10-mixture";
    private static final String BRACKET =
            "[mixture]\nstart_lambda = 0.84\nrichest_lambda = 0.80\nleanest_lambda = 0.94\n";
    private static final String LOG = "\n[log]\nsample_hz = 10\n";

    private RawDayBench() {}

    /** Spark of a map that begins well below its best, from an engine that hardly knocks. */
    static SweepPlan spark() {
        return plan(MAP, "");
    }

    /** Spark and mixture of one day. */
    static SweepPlan both() {
        return plan(MAP, BRACKET);
    }

    /** An engine with so much compression that half of its speeds knock below their best. */
    static SweepPlan knocking() {
        return squeezed("");
    }

    /** The same with a level of knock that the logger grades. */
    static SweepPlan graded() {
        return squeezed("knock_level = 4.0\n");
    }

    static SweepPlan flat() {
        return plan(FLAT, "");
    }

    /** One number on an engine with so little compression that it hardly knocks below its best. */
    static SweepPlan flatWithoutKnock() {
        return read(text(FLAT).replace("compression_ratio = 10.8", "compression_ratio = 9.8") + LOG);
    }

    static SweepPlan mixture() {
        return plan(MIXTURE, "");
    }

    private static SweepPlan squeezed(String limit) {
        return read(text(MAP)
                        .replace("compression_ratio = 10.8", "compression_ratio = 11.8")
                        .replace("[limits]", "[limits]\n" + limit + "#")
                + LOG);
    }

    private static SweepPlan plan(String name, String more) {
        String text = text(name) + "\n" + more;
        return read(text.contains("[log]") ? text : text + LOG);
    }

    private static String text(String name) {
        try {
            return Files.readString(Path.of("sweep-plans", name + ".toml"));
        } catch (IOException missing) {
            throw new IllegalStateException(missing);
        }
    }

    private static SweepPlan read(String text) {
        return PlanText.read(text, "bench.toml").value().orElseThrow();
    }

    static List<RawDay> days(int count, long seed, LongFunction<RawDay> day) {
        return LongStream.range(seed, seed + count).parallel().mapToObj(day).toList();
    }

    static double quantile(List<RawDay> days, double share, ToDoubleFunction<RawDay> figure) {
        double[] sorted = days.stream().mapToDouble(figure).sorted().toArray();
        return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }

    static double mean(List<RawDay> days, ToDoubleFunction<RawDay> figure) {
        return days.stream().mapToDouble(figure).average().orElse(0);
    }

    /** Share of all printed row intervals that hold the truth. */
    static double held(List<RawDay> days) {
        double printed = days.stream().mapToDouble(RawDay::rowsPrinted).sum();
        return days.stream()
                        .mapToDouble(day -> day.rowsHeld() * day.rowsPrinted())
                        .sum()
                / Math.max(1, printed);
    }

    private static String row(String name, List<RawDay> days) {
        return String.format(
                Locale.ROOT,
                "| %s | %d | %.2f / %.0f | %.2f / %.2f | %.2f / %.2f | %.0f %% | %.2f | %.0f %% |",
                name,
                days.size(),
                mean(days, RawDay::pulls),
                quantile(days, 0.95, RawDay::pulls),
                quantile(days, 0.5, RawDay::leftAtPeakPercent),
                quantile(days, 0.95, RawDay::leftAtPeakPercent),
                quantile(days, 0.5, RawDay::leftPercent),
                quantile(days, 0.95, RawDay::leftPercent),
                mean(days, day -> day.leftAtPeakPercent() > 0.5 ? 100 : 0),
                mean(days, RawDay::knocking),
                100 * held(days));
    }

    public static void main(String[] args) {
        int count = Integer.parseInt(args[0]);
        long seed = Long.parseLong(args[1]);
        System.out.println("| days | N | pulls mean / 95th | left at the peak stated, median / 95th % "
                + "| left by what stays, median / 95th % | over 0.5 % left | knocking pulls | row interval holds |");
        System.out.println("|---|---|---|---|---|---|---|---|");
        System.out.println(row("spark", days(count, seed, one -> RawDay.led(spark(), one))));
        System.out.println(row("spark, a good tuner", days(count, seed, one -> RawDay.byAGoodTuner(spark(), one))));
        System.out.println(row("spark and mixture", days(count, seed, one -> RawDay.led(both(), one))));
        System.out.println(row("knock flagged", days(count, seed, one -> RawDay.led(knocking(), one))));
        System.out.println(
                row("knock flagged, a good tuner", days(count, seed, one -> RawDay.byAGoodTuner(knocking(), one))));
        System.out.println(row("knock graded", days(count, seed, one -> RawDay.led(graded(), one))));
        System.out.println(row("flat ignition", days(count, seed, one -> RawDay.led(flat(), one))));
        System.out.println(row("flat ignition, the rule", days(count, seed, one -> RawDay.byTheRule(flat(), one))));
        System.out.println(
                row("flat, hardly any knock", days(count, seed, one -> RawDay.led(flatWithoutKnock(), one))));
        System.out.println(row(
                "flat, hardly any knock, the rule",
                days(count, seed, one -> RawDay.byTheRule(flatWithoutKnock(), one))));
        System.out.println(row("mixture alone", days(count, seed, one -> RawDay.led(mixture(), one))));
    }
}
