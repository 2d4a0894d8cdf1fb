package org.nextpull.report.text;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.advice.Action;
import org.nextpull.advice.AnswerRow;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.MapState;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.report.MapText;
import org.nextpull.report.Shown;
import org.nextpull.unit.Span;

/** Maps as tables: what to set, and what each speed says. */
final class MapTables {
    private MapTables() {}

    /** The map to set for the next pull, or to leave in the engine, with what changes; empty where the setting is no map. */
    static String toSet(Verdict verdict) {
        boolean stops = verdict.advice().action() == Action.STOP;
        Optional<EngineSetting> setting = stops
                ? verdict.advice().leave().map(Chosen::setting)
                : verdict.advice().setting();
        return setting.flatMap(EngineSetting::map)
                .map(map -> toSet(map, verdict.map().map(MapState::last), stops))
                .orElse("");
    }

    private static String toSet(SparkMap map, Optional<SparkMap> last, boolean stops) {
        String wanted = stops ? "leave" : "next";
        TextTable table =
                last.isPresent() ? new TextTable("  rpm", "now", wanted, "change") : new TextTable("  rpm", wanted);
        for (int cell = 0; cell < map.cells().size(); cell++) {
            String rpm = "  " + Shown.fixed(map.cells().get(cell).rpm(), 0);
            String deg = Shown.fixed(map.cells().get(cell).advance().deg(), 1);
            if (last.isPresent()) {
                double now = last.get().degAt(map.cells().get(cell).rpm());
                table.row(rpm, Shown.fixed(now, 1), deg, MapText.change(map, cell, last.get()));
            } else {
                table.row(rpm, deg);
            }
        }
        String whole = last.flatMap(before -> MapText.shift(map, before))
                .map(words -> ", " + words)
                .orElse("");
        return "  Degrees of advance at each speed" + whole + ":\n" + table.text();
    }

    private static String deg(OptionalDouble value) {
        return value.isPresent() ? Shown.fixed(value.getAsDouble(), 1) : "-";
    }

    /** What each speed of the band says. */
    static String answer(MapState state) {
        TextTable table = new TextTable("  rpm", "best deg", "from", "to", "peak", "run", "decided by");
        for (AnswerRow row : state.rows()) {
            Optional<Span> interval = row.answer().flatMap(AnswerRow.Best::interval);
            OptionalDouble peak = row.answer().map(AnswerRow.Best::peakDeg).orElse(OptionalDouble.empty());
            table.row(
                    "  " + Shown.fixed(row.rpm(), 0),
                    row.answer().map(found -> Shown.fixed(found.deg(), 1)).orElse("-"),
                    interval.map(found -> Shown.fixed(found.low(), 1)).orElse("-"),
                    interval.map(found -> Shown.fixed(found.high(), 1)).orElse("-"),
                    deg(peak),
                    deg(row.runDeg()),
                    MapText.decidedBy(row));
        }
        TextTable knock = new TextTable("  rpm", "knock limit", "pull");
        state.knockLimits()
                .forEach(limit -> knock.row(
                        "  " + Shown.fixed(limit.rpm(), 0), Shown.fixed(limit.deg(), 1), String.valueOf(limit.pull())));
        return MapText.standing(state) + "\n"
                + "  By speed, each 90 % CI on its own; run is the most advanced clean pull:\n"
                + table.text()
                + (state.knockLimits().isEmpty() ? "" : "  Knock limits, the margin taken off:\n" + knock.text());
    }
}
