package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.nextpull.finding.Finding;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.NamedScale;
import org.nextpull.unit.Lambda;

/** The document of {@code fuel convert}. */
public final class ScaleJson {
    private final FindingsJson findings = new FindingsJson();

    /** One mixture of a fuel on every scale. */
    public String convert(Fuel fuel, Lambda lambda, List<NamedScale> scales, List<Finding> said) {
        ObjectNode document = Json.document().put("fuel", fuel.name());
        Json.put(document, "lambda", lambda.value(), 4);
        Json.put(document, "true_afr", fuel.scale().airFuelRatio(lambda), 3);
        ArrayNode array = document.putArray("scales");
        for (NamedScale scale : scales) {
            ObjectNode node = array.addObject().put("scale", scale.name());
            Json.put(node, "set_to", scale.scale().ratioAtLambdaOne(), 3);
            Json.put(node, "shows", scale.shows(lambda), 3);
        }
        findings.addAll(document.putArray("findings"), said);
        return Json.pretty(document);
    }
}
