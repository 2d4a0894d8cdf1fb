package org.nextpull.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.advice.Advice;
import org.nextpull.advice.AnswerRow;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.MapState;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;

/** Turns the map of a result into the data of its chart. */
public final class MapPlots {
    private MapPlots() {}

    /** The chart; empty where the ignition holds no map, or no pull gave torque yet. */
    public static Optional<MapPlot> of(SessionResult result) {
        return result.verdict().flatMap(verdict -> verdict.map().map(state -> plot(result, verdict, state)));
    }

    private static MapPlot plot(SessionResult result, Verdict verdict, MapState state) {
        List<Point> low = new ArrayList<>();
        List<Point> high = new ArrayList<>();
        for (AnswerRow row : state.rows()) {
            row.answer().flatMap(AnswerRow.Best::interval).ifPresent(span -> {
                low.add(new Point(row.rpm(), span.low()));
                high.add(new Point(row.rpm(), span.high()));
            });
        }
        return new MapPlot(
                result.pulls().stream()
                        .filter(MeasuredPull::isUsed)
                        .map(MapPlots::run)
                        .filter(run -> run.size() > 1)
                        .toList(),
                points(verdict.chosen().map(Chosen::setting)),
                points(Optional.of(verdict.advice()).flatMap(Advice::setting)),
                band(low, high),
                band(over(state, state.least()), over(state, state.peak())),
                result.plan().goal().nearBestPercent(),
                state.knockLimits().stream()
                        .map(limit -> new Point(limit.rpm(), limit.deg()))
                        .toList(),
                result.plan().timing().map(timing -> timing.most().deg()).orElseThrow());
    }

    private static Optional<DrawnBand> band(List<Point> low, List<Point> high) {
        return low.size() < 2 ? Optional.empty() : Optional.of(new DrawnBand(low, high));
    }

    private static List<Point> over(MapState state, SparkMap map) {
        return state.rows().stream()
                .map(row -> new Point(row.rpm(), map.degAt(row.rpm())))
                .toList();
    }

    private static List<Point> points(Optional<EngineSetting> setting) {
        return setting.flatMap(EngineSetting::map).stream()
                .flatMap(map -> map.cells().stream())
                .map(cell -> new Point(cell.rpm(), cell.advance().deg()))
                .toList();
    }

    private static List<Point> run(MeasuredPull pull) {
        return pull.figures().map(Figures::rows).orElse(List.of()).stream()
                .flatMap(row -> row.advance().map(deg -> new Point(row.rpm(), deg.deg())).stream())
                .toList();
    }
}
