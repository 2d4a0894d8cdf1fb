package org.nextpull.advice.bench;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.StatUtils;

/** Figures of many days of held speeds. */
record HeldFigures(List<HeldDay.Outcome> days) {
    static HeldFigures of(MapClass kind, double stepDeg, int engines, long seed) {
        return new HeldFigures(IntStream.range(0, engines)
                .mapToObj(i -> HeldDay.run(kind, stepDeg, seed * 1_000_003L + i))
                .toList());
    }

    private double[] all(ToDoubleFunction<HeldDay.Outcome> figure) {
        return days.stream().mapToDouble(figure).toArray();
    }

    double mean(ToDoubleFunction<HeldDay.Outcome> figure) {
        return StatUtils.mean(all(figure));
    }

    /** What 95 in a hundred days stay below. */
    double most(ToDoubleFunction<HeldDay.Outcome> figure) {
        return StatUtils.percentile(all(figure), 95);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.1f plateaus, %.0f s at load; found leaves %.3f mean %.3f 95th; held speeds %.1f %%, between them"
                        + " %.1f %%; then %.2f / %.0f pulls, left %.3f mean %.3f 95th",
                mean(HeldDay.Outcome::plateaus),
                mean(HeldDay.Outcome::seconds),
                mean(HeldDay.Outcome::found),
                most(HeldDay.Outcome::found),
                100 * mean(HeldDay.Outcome::held),
                100 * mean(HeldDay.Outcome::between),
                mean(HeldDay.Outcome::pulls),
                most(HeldDay.Outcome::pulls),
                mean(HeldDay.Outcome::left),
                most(HeldDay.Outcome::left));
    }
}
