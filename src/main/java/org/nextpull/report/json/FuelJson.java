package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.fuel.Caution;
import org.nextpull.fuel.Element;
import org.nextpull.fuel.FlowComparison;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelFacts;
import org.nextpull.fuel.FuelProperty;
import org.nextpull.fuel.FuelSwap;
import org.nextpull.fuel.InjectorDuty;
import org.nextpull.fuel.NamedScale;
import org.nextpull.fuel.SourcedFigure;
import org.nextpull.fuel.WaterAdded;
import org.nextpull.report.FuelWords;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Unit;

/** The documents of the commands on fuel. */
public final class FuelJson {
    private final FindingsJson findings = new FindingsJson();

    /** Every fuel. */
    public String list(List<FuelFacts> facts, List<Finding> said) {
        ObjectNode document = Json.document();
        ArrayNode fuels = document.putArray("fuels");
        facts.forEach(row -> fuels.add(node(row)));
        findings.addAll(document.putArray("findings"), said);
        return Json.pretty(document);
    }

    /** One fuel. */
    public String show(FuelFacts facts, List<Finding> said) {
        ObjectNode document = Json.document();
        document.set("fuel", node(facts));
        findings.addAll(document.putArray("findings"), said);
        return Json.pretty(document);
    }

    private static ObjectNode node(FuelFacts facts) {
        Fuel fuel = facts.fuel();
        ObjectNode node = Json.object().put("name", fuel.name());
        Json.put(node, "afr", facts.airFuelRatio(), 3);
        ObjectNode elements = node.putObject("elements");
        for (Element element : Element.values()) {
            Json.put(elements, element.id(), fuel.composition().fraction(element), 5);
        }
        ObjectNode figures = node.putObject("figures");
        for (FuelProperty property : FuelProperty.values()) {
            figure(figures, property, fuel.sourced(property));
        }
        Optional<FuelFacts.EnergyContent> energy = facts.energy();
        Json.put(node, "air_energy_mj_kg", energy.map(content -> mega(content.perKilogramOfAir())), 4);
        Json.put(node, "mixture_energy_mj_kg", energy.map(content -> mega(content.perKilogramOfMixture())), 4);
        Json.put(node, "cooling_k", facts.coolingKelvins(), 1);
        ObjectNode flow = node.putObject("flow");
        flow.put("against", facts.atEqualLambda().against().fuel().name());
        flow.set("equal_lambda", flow(facts.atEqualLambda()));
        flow.set("best_power", facts.atBestPower().map(FuelJson::flow).orElse(null));
        node.set("cautions", cautions(fuel));
        return node;
    }

    private static ArrayNode cautions(Fuel fuel) {
        ArrayNode array = Json.object().putArray("cautions");
        for (Caution caution : fuel.cautions()) {
            array.addObject().put("caution", caution.id()).put("text", FuelWords.sentence(caution));
        }
        return array;
    }

    private static double mega(double joules) {
        return Unit.MEGAJOULE_PER_KILOGRAM.fromSi(joules);
    }

    private static void figure(ObjectNode figures, FuelProperty property, Optional<SourcedFigure> sourced) {
        if (sourced.isEmpty()) {
            figures.putNull(key(property));
            return;
        }
        Unit unit = unit(property);
        ObjectNode node = figures.putObject(key(property));
        Json.put(node, "value", unit.fromSi(sourced.get().value()), 4);
        Json.put(node, "low", unit.fromSi(sourced.get().spread().low()), 4);
        Json.put(node, "high", unit.fromSi(sourced.get().spread().high()), 4);
        node.put("source", sourced.get().source());
    }

    private static String key(FuelProperty property) {
        return switch (property) {
            case DENSITY -> "density_kg_m3";
            case LOWER_HEATING_VALUE -> "lower_heating_mj_kg";
            case LATENT_HEAT -> "evaporation_mj_kg";
            case RESEARCH_OCTANE -> "research_octane";
            case MOTOR_OCTANE -> "motor_octane";
            case PRINTED_AIR_FUEL_RATIO -> "printed_afr";
            case BEST_POWER_LAMBDA -> "best_power_lambda";
            case ALCOHOL_BY_VOLUME -> "alcohol_percent";
        };
    }

    private static Unit unit(FuelProperty property) {
        return switch (property) {
            case DENSITY -> Unit.KILOGRAM_PER_CUBIC_METRE;
            case LOWER_HEATING_VALUE, LATENT_HEAT -> Unit.MEGAJOULE_PER_KILOGRAM;
            case RESEARCH_OCTANE, MOTOR_OCTANE -> Unit.COUNT;
            case PRINTED_AIR_FUEL_RATIO -> Unit.AFR;
            case BEST_POWER_LAMBDA -> Unit.LAMBDA;
            case ALCOHOL_BY_VOLUME -> Unit.PERCENT;
        };
    }

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

    /** One fuel in place of another. */
    public String compare(FuelSwap swap, Optional<FuelSwap> atBestPower, List<Finding> said) {
        ObjectNode document = Json.document();
        document.put("fuel", swap.flow().dose().fuel().name());
        document.put("against", swap.flow().against().fuel().name());
        document.set("as_asked", swap(swap));
        document.set("best_power", atBestPower.map(FuelJson::swap).orElse(null));
        document.set("cautions", cautions(swap.flow().dose().fuel()));
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

    private static ObjectNode flow(FlowComparison flow) {
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
        document.set("cautions", cautions(added.before()));
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
        document.set("cautions", cautions(fuel));
        findings.addAll(document.putArray("findings"), said);
        return Json.pretty(document);
    }
}
