package org.nextpull.advice.bench;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.unit.Span;

/** The trade's rule (common practice, no source): 2 deg more until the torque has fallen twice, then the best reading. */
record TradeRule(double step) {
    SweepOutcome run(BenchEngine engine) {
        double setting = engine.start;
        double best = setting;
        double bestReading = 0;
        double last = 0;
        double highest = setting;
        int falls = 0;
        int excursions = 0;
        int knocked = 0;
        List<Double> readings = new ArrayList<>();
        while (setting <= engine.allowed.high() && falls < 2) {
            if (engine.knocks(setting)) {
                excursions += readings.isEmpty() ? 0 : 1;
                knocked = 1;
                break;
            }
            double reading = engine.pull(setting, readings.size());
            readings.add(reading);
            highest = setting;
            falls = reading < last ? falls + 1 : 0;
            last = reading;
            if (reading > bestReading) {
                bestReading = reading;
                best = setting;
            }
            setting += step;
        }
        return new SweepOutcome(
                readings.size() + knocked,
                100 * engine.loss(best),
                100 * engine.loss(best),
                best - engine.peak,
                highest - engine.peak,
                Span.of(best, best),
                false,
                engine.peak,
                excursions,
                best > engine.knockAt,
                engine.curvature < 6e-4 && engine.scatterPercent > 0.35);
    }
}
