package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.fuel.FlowComparison;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelSwap;
import org.nextpull.fuel.InjectorDuty;
import org.nextpull.fuel.WaterAdded;
import org.nextpull.unit.Unit;

/** The documents of {@code fuel compare}, {@code fuel water} and {@code fuel injector}. */
public final class FuelFlowJson {
    private final FindingsJson findings = new FindingsJson();

    /** One fuel in place of another. */
    public String compare(FuelSwap swap, Optional<FuelSwap> atBestPower, List<Finding> said) {
        ObjectNode document = Json.document();
        document.put("fuel", swap.flow().dose().fuel().name());
        document.put("against", swap.flow().against().fuel().name());
        document.set("as_asked", swap(swap));
        document.set("best_power", atBestPower.map(FuelFlowJson::swap).orElse(null));
        document.set("cautions", FuelJson.cautions(swap.flow().dose().fuel()));
        findings.addAll(document.putArray("findings"), said);
        return Json.pretty(document);
    }

    private static ObjectNode swap(FuelSwap swap) {
        ObjectNode node = flow(swap.flow());
        Json.put(node, "cooling_k", swap.coolingKelvins(), 1);
        Json.put(node, "against_cooling_k", swap.coolingAgainstKelvins(), 1);
        Json.put(node, "air_energy_ratio", swap.energyRatio(), 4);
        return node;
    }

    static ObjectNode flow(FlowComparison flow) {
        ObjectNode node = Json.object();
        Json.put(node, "lambda", flow.dose().lambda().value(), 4);
        Json.put(node, "against_lambda", flow.against().lambda().value(), 4);
        Json.put(node, "mass_ratio", flow.massRatio(), 4);
        Json.put(node, "volume_ratio", flow.volumeRatio(), 4);
        Json.put(node, "jet_area_ratio", flow.areaRatio(), 4);
        Json.put(node, "jet_diameter_ratio", flow.diameterRatio(), 4);
        return node;
    }

    /** A fuel with water in it. */
    public String water(WaterAdded added, List<Finding> said) {
        ObjectNode document = Json.document();
        document.put("fuel", added.before().name());
        wet(document.putObject("without"), added.before(), added.alcoholBefore());
        wet(document.putObject("with_water"), added.after(), added.alcoholAfter());
        Json.put(document, "mass_ratio", added.flow().massRatio(), 4);
        Json.put(document, "volume_ratio", added.flow().volumeRatio(), 4);
        document.set("cautions", FuelJson.cautions(added.before()));
        findings.addAll(document.putArray("findings"), said);
        return Json.pretty(document);
    }

    private static void wet(ObjectNode node, Fuel fuel, double alcohol) {
        Json.put(node, "alcohol_percent", 100 * alcohol, 2);
        Json.put(node, "afr", fuel.stoichiometricAirFuelRatio(), 3);
        Json.put(node, "density_kg_m3", fuel.density(), 1);
    }

    /** How long injectors must stay open. */
    public String injector(Fuel fuel, InjectorDuty duty, List<Finding> said) {
        ObjectNode document = Json.document().put("fuel", fuel.name());
        Json.put(document, "duty_percent", 100 * duty.fraction(), 2);
        Json.put(document, "needed_g_s", Unit.GRAM_PER_SECOND.fromSi(duty.needed()), 4);
        Json.put(document, "held_open_g_s", Unit.GRAM_PER_SECOND.fromSi(duty.heldOpen()), 4);
        Json.put(document, "usual_most_percent", 100 * InjectorDuty.HIGHEST_USUAL, 0);
        Json.put(document, "size_ratio", duty.sizeRatio(), 4);
        document.set("cautions", FuelJson.cautions(fuel));
        findings.addAll(document.putArray("findings"), said);
        return Json.pretty(document);
    }
}
