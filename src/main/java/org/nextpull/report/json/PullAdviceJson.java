package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.nextpull.compare.PullAdvice;
import org.nextpull.compare.PullPlan;
import org.nextpull.scatter.Scatter;

/** The document of {@code plan-pulls}. */
public final class PullAdviceJson {

    /** The plan for a day. */
    public String document(PullAdvice advice, Scatter scatter) {
        ObjectNode document = Json.document();
        Json.put(document, "scatter_percent", scatter.percent(), 4);
        Json.put(document, "scatter_df", scatter.degreesOfFreedom(), 1);
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
