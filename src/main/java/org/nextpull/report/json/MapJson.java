package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.nextpull.advice.AnswerRow;
import org.nextpull.advice.MapState;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.TorqueLeft;
import org.nextpull.unit.Span;

/** Maps in the document of {@code advise}. */
final class MapJson {
    private MapJson() {}

    /** The cells of a setting that is a map; null where it is none. */
    static void put(ObjectNode node, String key, Optional<SparkMap> map) {
        if (map.isEmpty()) {
            node.putNull(key);
            return;
        }
        ArrayNode cells = node.putArray(key);
        for (SparkMap.Cell cell : map.get().cells()) {
            ObjectNode each = cells.addObject();
            Json.put(each, "rpm", cell.rpm(), 0);
            Json.put(each, "advance_deg", cell.advance().deg(), 2);
        }
    }

    /** By how much the next map is the last pull's moved as a whole; null where it is not. */
    static void putShift(ObjectNode node, Optional<SparkMap> next, Optional<MapState> state) {
        OptionalDouble shift = next.flatMap(map -> state.map(known -> map.shiftFrom(known.last())))
                .orElse(OptionalDouble.empty());
        Json.put(node, "shift_deg", shift, 2);
    }

    /** What a map gains over one number; null where nobody knows. */
    static void putGain(ObjectNode node, Optional<MapState.Gain> gain) {
        if (gain.isEmpty()) {
            node.putNull("gain_over_flat_percent");
            return;
        }
        ObjectNode each = node.putObject("gain_over_flat_percent");
        Json.put(each, "value", gain.get().percent(), 3);
        Json.put(each, "low", gain.get().interval().low(), 3);
        Json.put(each, "high", gain.get().interval().high(), 3);
    }

    /** The timing part of a day of a map. */
    static ObjectNode timing(MapState state, KnockMark knock) {
        ObjectNode node = Json.object();
        Json.put(node, "peak_deg", mean(state, MapJson::peak), 2);
        Json.put(node, "best_deg", mean(state, MapJson::best), 2);
        node.putNull("low_deg");
        node.putNull("high_deg");
        node.put("bracketed", state.rows().stream().allMatch(AnswerRow::isBracketed));
        node.put("knock", knock.id());
        node.putNull("knock_limit_deg");
        node.putNull("torque_nm");
        node.putNull("power_kw");
        node.put("rows_proven", state.leftByLeave().isPresent());
        ArrayNode rows = node.putArray("rows");
        state.rows().forEach(row -> row(rows.addObject(), row));
        knockLimits(node, state.knockLimits());
        putGain(node, state.gainOverFlat());
        node.set("left_at_peak_map", left(state.leftAtPeak()));
        node.set("left_at_least_map", left(state.leftAtLeast()));
        state.leftByLeave()
                .ifPresentOrElse(
                        found -> node.set("left_by_chosen_map", left(found)), () -> node.putNull("left_by_chosen_map"));
        Json.put(node, "scatter_percent", state.scatterPercent(), 3);
        Json.put(node, "drift_percent_per_pull", state.driftPercent(), 3);
        node.putArray("outliers");
        return node;
    }

    static void knockLimits(ObjectNode node, List<MapState.KnockAtRow> rows) {
        ArrayNode limits = node.putArray("knock_limits");
        for (MapState.KnockAtRow limit : rows) {
            ObjectNode each = limits.addObject();
            Json.put(each, "rpm", limit.rpm(), 0);
            Json.put(each, "deg", limit.deg(), 2);
            each.put("pull", limit.pull());
        }
    }

    private static ObjectNode left(TorqueLeft left) {
        ObjectNode node = Json.object();
        Json.put(node, "expected_percent", left.expectedPercent(), 3);
        Json.put(node, "chance_of_half_percent", left.chanceOfMuch(), 4);
        return node;
    }

    private static void row(ObjectNode node, AnswerRow row) {
        Optional<Span> interval = row.answer().flatMap(AnswerRow.Best::interval);
        Json.put(node, "rpm", row.rpm(), 0);
        Json.put(node, "best_deg", best(row), 2);
        Json.put(node, "low_deg", interval.map(Span::low), 2);
        Json.put(node, "high_deg", interval.map(Span::high), 2);
        Json.put(node, "peak_deg", peak(row), 2);
        Json.put(node, "run_deg", row.runDeg(), 2);
        node.put("by", row.by().id());
        node.put("bracketed", row.isBracketed());
    }

    /** The mean over all rows; empty where one of them has no such value. */
    private static OptionalDouble mean(MapState state, Function<AnswerRow, OptionalDouble> value) {
        boolean isWhole = state.rows().stream().allMatch(row -> value.apply(row).isPresent());
        return isWhole
                ? state.rows().stream()
                        .flatMapToDouble(row -> value.apply(row).stream())
                        .average()
                : OptionalDouble.empty();
    }

    private static OptionalDouble best(AnswerRow row) {
        return row.answer().map(found -> OptionalDouble.of(found.deg())).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble peak(AnswerRow row) {
        return row.answer().map(AnswerRow.Best::peakDeg).orElse(OptionalDouble.empty());
    }
}
