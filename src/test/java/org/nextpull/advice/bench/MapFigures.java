package org.nextpull.advice.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.nextpull.fit.TorqueLeft;

/** Figures of many days. */
public record MapFigures(List<MapOutcome> days) {
    public static MapFigures of(MapClass kind, MapDay.Rules rules, int engines, long seed) {
        return new MapFigures(IntStream.range(0, engines)
                .mapToObj(i -> MapDay.run(kind, rules, seed * 1_000_003L + i))
                .toList());
    }

    public double mean(ToDoubleFunction<MapOutcome> figure) {
        return days.stream().mapToDouble(figure).average().orElseThrow();
    }

    public double quantile(double share, ToDoubleFunction<MapOutcome> figure) {
        double[] sorted = days.stream().mapToDouble(figure).sorted().toArray();
        return sorted[(int) Math.min(sorted.length - 1.0, Math.floor(share * sorted.length))];
    }

    /** Share of days that leave over half a percent. */
    public double much() {
        return much(MapOutcome::left);
    }

    private double much(ToDoubleFunction<MapOutcome> left) {
        return mean(day -> left.applyAsDouble(day) > TorqueLeft.MUCH_PERCENT ? 1 : 0);
    }

    @Override
    public String toString() {
        long settled = Arrays.stream(days.toArray(MapOutcome[]::new))
                .filter(day -> day.reason() == org.nextpull.advice.PlannerDecision.StopReason.SETTLED)
                .count();
        return String.format(
                Locale.ROOT,
                "%.2f / %.0f pulls; left %.3f mean %.3f median %.3f 95th; %.1f %% over 0.5; of margin %.3f 95th, %.1f %% over; stays %.3f / %.3f; "
                        + "rows %.1f %%, lambda %.1f %%; past peak %.1f; knocking %.2f, depth %.1f; settled %d of %d; flat %.1f %%, gain %.1f %%",
                mean(MapOutcome::pulls),
                quantile(0.95, MapOutcome::pulls),
                mean(MapOutcome::left),
                quantile(0.5, MapOutcome::left),
                quantile(0.95, MapOutcome::left),
                100 * much(),
                quantile(0.95, MapOutcome::leftOfMargin),
                100 * much(MapOutcome::leftOfMargin),
                mean(MapOutcome::leftByLeave),
                quantile(0.95, MapOutcome::leftByLeave),
                100 * mean(MapOutcome::rowsCovered),
                100 * mean(day -> day.lambdaCovered() ? 1 : 0),
                quantile(0.95, MapOutcome::pastPeak),
                mean(MapOutcome::knocking),
                quantile(0.95, MapOutcome::deepest),
                settled,
                days.size(),
                100 * mean(day -> day.flat().number() ? 1 : 0),
                100 * mean(day -> day.flat().gain() ? 1 : 0));
    }
}
