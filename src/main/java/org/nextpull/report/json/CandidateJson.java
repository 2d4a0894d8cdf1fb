package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.MapState;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.advice.Verdict;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.plan.Goal;
import org.nextpull.session.CandidateDay;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;
import org.nextpull.unit.Temperature;

/** The candidates of a day in a document. */
final class CandidateJson {
    private CandidateJson() {}

    /** Key {@code candidates}: null for a plan without them. */
    static void put(ObjectNode document, SessionResult result) {
        if (result.candidates().isEmpty()) {
            document.putNull("candidates");
            return;
        }
        CandidateDay day = result.candidates().get();
        Goal.Response response = result.plan().goal().response();
        Optional<ComparisonResult> told = day.comparison().map(found -> found.by(response));
        ObjectNode node = document.putObject("candidates");
        node.put("reference", day.reference().label());
        node.put("interval_percent", (int) ComparisonResult.INTERVAL_PERCENT);
        ArrayNode order = node.putArray("decision_order");
        day.order().forEach(order::add);
        node.put("decision_runs", day.runs().size());
        node.put("decided", day.isDecided());
        ArrayNode each = node.putArray("each");
        for (CandidateDay.State state : day.candidates()) {
            ObjectNode one = each.addObject();
            one.put("label", state.plan().label());
            Json.putText(one, "fuel", state.plan().fuel());
            Json.putText(one, "note", state.plan().note());
            Optional<Chosen> chosen = state.chosen();
            Json.put(
                    one,
                    "advance_deg",
                    chosen.flatMap(found -> found.setting().advance()).map(value -> value.deg()),
                    2);
            MapJson.put(one, "map", chosen.flatMap(found -> found.setting().map()));
            Json.put(
                    one,
                    "lambda",
                    chosen.flatMap(found -> found.setting().lambda()).map(Lambda::value),
                    4);
            Json.putText(one, "by", chosen.map(found -> found.by().id()));
            Optional<Comparison> gain = day.gain(state, response);
            Json.put(one, "gain_percent", gain.map(found -> found.difference().percent()), 4);
            Json.put(
                    one,
                    "low_percent",
                    gain.map(found -> found.difference().interval().low()),
                    4);
            Json.put(
                    one,
                    "high_percent",
                    gain.map(found -> found.difference().interval().high()),
                    4);
            Json.putText(one, "verdict", gain.map(found -> found.verdict().id()));
            share(one, "by_setting_percent", state.shares().map(CandidateDay.Shares::setting));
            share(one, "by_itself_percent", state.shares().map(CandidateDay.Shares::itself));
            gain.flatMap(found -> day.comparison())
                    .ifPresent(both -> CompareJson.rows(one, state.plan().label(), both));
            Json.put(one, "exhaust_c", state.hottestExhaust().map(Temperature::celsius), 0);
            Json.put(one, "knock_low_rpm", state.knockRpm().map(Span::low), 0);
            Json.put(one, "knock_high_rpm", state.knockRpm().map(Span::high), 0);
            Json.put(
                    one,
                    "knock_limit_deg",
                    state.swept()
                            .flatMap(Verdict::timing)
                            .map(SweepAnswer::limit)
                            .filter(OptionalDouble::isPresent)
                            .map(OptionalDouble::getAsDouble),
                    2);
            MapJson.knockLimits(
                    one,
                    state.swept()
                            .flatMap(Verdict::map)
                            .map(MapState::knockLimits)
                            .orElse(List.of()));
            consumption(one, day.consumption(state, response));
        }
        ArrayNode groups = node.putArray("groups");
        told.ifPresent(found -> found.groups().forEach(group -> {
            ArrayNode labels = groups.addArray();
            group.forEach(labels::add);
        }));
    }

    /** Null where nobody can tell. */
    private static void share(ObjectNode one, String key, Optional<CandidateDay.Share> share) {
        if (share.isEmpty()) {
            one.putNull(key);
            return;
        }
        ObjectNode node = one.putObject(key);
        Json.put(node, "value", share.get().percent(), 4);
        Json.put(node, "low", share.get().interval().low(), 4);
        Json.put(node, "high", share.get().interval().high(), 4);
    }

    private static void consumption(ObjectNode one, Optional<CandidateDay.Consumption> used) {
        if (used.isEmpty()) {
            one.putNull("at_equal_power");
            return;
        }
        ObjectNode node = one.putObject("at_equal_power");
        Json.put(node, "mass_ratio", used.get().mass(), 4);
        used.get().volume().ifPresent(value -> Json.put(node, "volume_ratio", value, 4));
        used.get().energy().ifPresent(value -> Json.put(node, "energy_ratio", value, 4));
        used.get().cost().ifPresent(value -> Json.put(node, "cost_ratio", value, 4));
    }
}
