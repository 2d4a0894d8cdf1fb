package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.air.AirSheet;
import org.nextpull.air.AirState;
import org.nextpull.air.Correction;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.air.WeatherChange;
import org.nextpull.finding.Finding;
import org.nextpull.unit.Temperature;

/** The document of {@code air}. */
public final class AirJson {
    private final FindingsJson findings = new FindingsJson();

    /** One weather and, if there is one, a later weather with what the change does. */
    public String sheet(
            AirSheet sheet, Optional<AirSheet> later, Optional<CorrectionStandard> chosen, List<Finding> said) {
        ObjectNode document = Json.document();
        document.set("air", air(sheet));
        document.set("standards", standards(sheet));
        Json.putText(document, "plan_standard", chosen.map(CorrectionStandard::id));
        if (later.isPresent()) {
            ObjectNode node = document.putObject("later");
            node.set("air", air(later.get()));
            node.set("standards", standards(later.get()));
            node.set("changes", changes(sheet.changeTo(later.get().air())));
        } else {
            document.putNull("later");
        }
        findings.addAll(document.putArray("findings"), said);
        return Json.pretty(document);
    }

    private static ObjectNode air(AirSheet sheet) {
        AirState air = sheet.air();
        ObjectNode node = Json.object();
        Json.put(node, "baro_kpa", air.barometer().kilopascals(), 3);
        Json.put(node, "dry_kpa", air.dryPressure().kilopascals(), 3);
        Json.put(node, "vapour_kpa", air.vapour().kilopascals(), 4);
        Json.put(node, "air_c", air.temperature().celsius(), 2);
        Json.put(node, "humidity_percent", 100 * air.relativeHumidity(), 1);
        OptionalDouble dewPoint =
                sheet.dewPoint().stream().mapToDouble(Temperature::celsius).findFirst();
        Json.put(node, "dew_point_c", dewPoint, 2);
        Json.put(node, "wet_bulb_c", sheet.wetBulb().celsius(), 2);
        Json.put(node, "density_kg_m3", air.density(), 4);
        Json.put(node, "density_altitude_m", sheet.densityAltitude(), 0);
        return node;
    }

    private ArrayNode standards(AirSheet sheet) {
        ArrayNode array = Json.object().putArray("standards");
        for (Correction correction : sheet.corrections()) {
            ObjectNode node = array.addObject();
            node.put("standard", correction.standard().id());
            node.put("title", correction.standard().title());
            node.put("withdrawn", correction.standard().withdrawn());
            Json.put(node, "factor", correction.factor(), 5);
            node.put("within_range", correction.isWithinLimits());
            findings.addAll(node.putArray("findings"), correction.findings());
        }
        return array;
    }

    private static ArrayNode changes(List<WeatherChange> changes) {
        ArrayNode array = Json.object().putArray("changes");
        for (WeatherChange change : changes) {
            ObjectNode node = array.addObject();
            node.put("standard", change.standard().id());
            Json.put(node, "raw_torque_percent", change.rawTorquePercent(), 3);
            for (WeatherChange.Cause cause : WeatherChange.Cause.values()) {
                Json.put(
                        node,
                        "by_" + cause.name().toLowerCase(Locale.ROOT) + "_percent",
                        100 * (change.ratios().getOrDefault(cause, 1.0) - 1),
                        3);
            }
        }
        return array;
    }
}
