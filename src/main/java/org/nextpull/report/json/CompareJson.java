package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.compare.InterimLooks;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.compare.PullAdvice;
import org.nextpull.compare.PullPlan;
import org.nextpull.finding.Finding;
import org.nextpull.plan.Goal;
import org.nextpull.scatter.Scatter;
import org.nextpull.session.ComparedDay;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/** The document of {@code compare}. */
public final class CompareJson {
    private final FindingsJson findings = new FindingsJson();

    /** The comparison of a day. */
    public String document(
            ComparedDay day, MeasuredComparison both, Goal.Response response, List<Finding> inputFindings) {
        ComparisonResult result = both.by(response);
        ObjectNode document = Json.document();
        document.put("reference", result.reference().label());
        document.put("order_from", day.orderFrom().id());
        document.put("interval_percent", (int) ComparisonResult.INTERVAL_PERCENT);
        Json.put(document, "worth_percent", result.worthPercent(), 3);
        document.put("final", result.isFinal());
        Json.put(document, "drift_percent_per_pull", result.drift().percentPerPull(), 4);
        Json.put(document, "warm_up_percent", result.warmUpPercent(), 3);
        ArrayNode array = document.putArray("comparisons");
        result.comparisons().forEach(one -> array.add(comparison(one, both)));
        further(document, result);
        ArrayNode groups = document.putArray("groups");
        for (List<String> group : result.groups()) {
            ArrayNode labels = groups.addArray();
            group.forEach(labels::add);
        }
        ArrayNode ranking = document.putArray("ranking");
        result.ranking().forEach(ranking::add);
        List<Finding> all = new ArrayList<>(inputFindings);
        all.addAll(result.findings());
        findings.addAll(document.putArray("findings"), all);
        return Json.pretty(document);
    }

    private static void further(ObjectNode document, ComparisonResult result) {
        if (result.further().isEmpty()) {
            document.putNull("further");
            return;
        }
        ObjectNode node = document.putObject("further");
        ArrayNode order = node.putArray("order");
        result.further().get().order().forEach(order::add);
        if (result.further().get().looks() instanceof InterimLooks.Planned planned) {
            node.put("planned", planned.pulls());
            node.put("looks_before", planned.earlier());
        }
    }

    private static ObjectNode comparison(Comparison one, MeasuredComparison both) {
        ObjectNode node = Json.object();
        node.put("label", one.label());
        Optional<Double> torque = both.torqueDifference(one.label()).map(Torque::newtonMetres);
        Optional<Double> power = both.powerDifference(one.label()).map(Power::kilowatts);
        Json.put(node, "difference_nm", torque, 3);
        Json.put(node, "difference_kw", power, 3);
        Json.put(node, "difference_percent", one.difference().percent(), 4);
        Json.put(node, "low_percent", one.difference().interval().low(), 4);
        Json.put(node, "high_percent", one.difference().interval().high(), 4);
        node.put("verdict", one.verdict().id());
        if (one.pullsNeeded().isPresent()) {
            node.put("pulls_needed", one.pullsNeeded().getAsInt());
        } else {
            node.putNull("pulls_needed");
        }
        rows(node, one.label(), both);
        return node;
    }

    /** Key {@code rows}: the difference of torque of a label at each speed. */
    static void rows(ObjectNode node, String label, MeasuredComparison both) {
        ArrayNode rows = node.putArray("rows");
        List<Comparison.RowDifference> differences = both.torque()
                .flatMap(result -> result.of(label))
                .map(Comparison::rows)
                .orElse(List.of());
        for (Comparison.RowDifference row : differences) {
            ObjectNode each = rows.addObject();
            Json.put(each, "rpm", row.rpm(), 0);
            Json.put(each, "this_nm", row.levels().label(), 3);
            Json.put(each, "reference_nm", row.levels().reference(), 3);
            Json.put(each, "difference_percent", row.percent(), 4);
            Json.put(each, "low_percent", row.band().low(), 4);
            Json.put(each, "high_percent", row.band().high(), 4);
        }
    }

    /** The plan for a day. */
    public static String planPulls(PullAdvice advice, Scatter scatter) {
        ObjectNode document = Json.document();
        Json.put(document, "scatter_percent", scatter.percent(), 4);
        Json.put(document, "scatter_df", scatter.degreesOfFreedom(), 1);
        document.put("swept", advice.swept());
        put(document, "interleaved", advice.interleaved());
        put(document, "three_change_overs", advice.withChangeOvers(3));
        put(document, "two_change_overs", advice.withChangeOvers(2));
        put(document, "least_cost", advice.cheapest().flatMap(PullAdvice.Cheapest::plan));
        advice.cheapest()
                .flatMap(
                        asked -> asked.plan().map(plan -> plan.cost(asked.cost().pulls())))
                .ifPresent(cost -> ((ObjectNode) document.get("least_cost")).put("cost_pulls", cost));
        if (advice.cautious().isPresent()) {
            document.put("cautious_pulls", advice.cautious().getAsInt());
        } else {
            document.putNull("cautious_pulls");
        }
        Json.put(document, "resolved_by_most_percent", advice.resolvedByMost(), 4);
        return Json.pretty(document);
    }

    private static void put(ObjectNode document, String key, Optional<PullPlan> plan) {
        if (plan.isEmpty()) {
            document.putNull(key);
            return;
        }
        ObjectNode node = document.putObject(key);
        node.put("pulls", plan.get().pulls());
        node.put("change_overs", plan.get().changeOvers());
        node.put("flushing_pulls", plan.get().flushing());
        ArrayNode order = node.putArray("order");
        plan.get().order().forEach(order::add);
        Json.put(node, "half_width_percent", plan.get().halfWidthPercent(), 4);
        Json.put(node, "power", plan.get().power(), 4);
        Json.put(node, "power_unplanned", plan.get().powerUnplanned(), 4);
    }
}
