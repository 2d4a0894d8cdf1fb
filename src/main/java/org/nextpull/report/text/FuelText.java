package org.nextpull.report.text;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.nextpull.fuel.Element;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelFacts;
import org.nextpull.fuel.FuelProperty;
import org.nextpull.fuel.NamedScale;
import org.nextpull.fuel.SourcedFigure;
import org.nextpull.report.FuelWords;
import org.nextpull.report.Shown;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;

/** What {@code fuel list}, {@code fuel show} and {@code fuel blend} print. */
public final class FuelText {
    private final Shown shown;

    public FuelText(Shown shown) {
        this.shown = shown;
    }

    /** Every fuel, a row each. */
    public String list(List<FuelFacts> facts, Fuel against) {
        TextTable table = new TextTable(
                "fuel",
                "air-fuel ratio",
                "in print",
                "density " + unit(Quantity.DENSITY),
                "heating " + unit(Quantity.SPECIFIC_ENERGY),
                "cooling " + degrees(),
                "volume",
                "best lambda",
                "octane");
        for (FuelFacts row : facts) {
            Fuel fuel = row.fuel();
            table.row(
                    fuel.name(),
                    Shown.fixed(row.airFuelRatio(), 2),
                    value(fuel, FuelProperty.PRINTED_AIR_FUEL_RATIO),
                    value(fuel, FuelProperty.DENSITY),
                    value(fuel, FuelProperty.LOWER_HEATING_VALUE),
                    cooling(shown, row.coolingKelvins()),
                    fixed(row.atEqualLambda().volumeRatio(), 2),
                    two(fuel, FuelProperty.BEST_POWER_LAMBDA),
                    value(fuel, FuelProperty.RESEARCH_OCTANE));
        }
        return table.text()
                + "\nVolume: how much for the same air and lambda, over that of " + against.name()
                + ". Cooling: of the charge if all of it evaporates, an upper bound.\n"
                + "A dash: not known. Spread, source and cautions of one fuel: fuel show.\n";
    }

    /** All that is known of one fuel. */
    public String show(FuelFacts facts) {
        Fuel fuel = facts.fuel();
        StringBuilder text = new StringBuilder(fuel.name() + ": stoichiometric air-fuel ratio "
                + Shown.fixed(facts.airFuelRatio(), 2) + ", from its elements\n  " + elements(fuel) + " by mass\n\n");
        TextTable table = new TextTable("  figure", "value", "unit", "spread", "source");
        for (Map.Entry<FuelProperty, SourcedFigure> entry : fuel.properties().entrySet()) {
            Quantity quantity = entry.getKey().quantity();
            SourcedFigure sourced = entry.getValue();
            table.row(
                    "  " + FuelWords.label(entry.getKey()),
                    number(entry.getKey(), sourced.value()),
                    symbol(quantity),
                    spread(entry.getKey(), sourced),
                    sourced.source());
        }
        if (!table.isEmpty()) {
            text.append(table.text()).append('\n');
        }
        facts.energy()
                .ifPresent(content -> text.append("  Heat from burning exactly: ")
                        .append(energy(content.perKilogramOfAir(), 2) + " " + unit(Quantity.SPECIFIC_ENERGY))
                        .append(" of air, ")
                        .append(energy(content.perKilogramOfMixture(), 2) + " " + unit(Quantity.SPECIFIC_ENERGY))
                        .append(" of mixture\n"));
        if (facts.coolingKelvins().isPresent()) {
            text.append("  Cooling of the charge if all of it evaporates, at lambda 1: ")
                    .append(cooling(shown, facts.coolingKelvins()) + " " + degrees() + ", an upper bound\n");
        }
        text.append(FuelFlowText.inPlaceOf(facts)).append('\n').append(cautions(fuel));
        return text.toString();
    }

    /** What to beware of with a fuel. */
    static String cautions(Fuel fuel) {
        return "Beware of " + fuel.name() + ". " + FuelWords.DEFER + "\n"
                + fuel.cautions().stream()
                        .map(caution -> "  - " + FuelWords.sentence(caution) + "\n")
                        .collect(Collectors.joining())
                + (fuel.cautions().size() > 1 ? "" : "  - Nothing else is known of it here: read its data sheet.\n");
    }

    /** The two cautions that matter most with a fuel, and where all of them are. */
    static String worst(Fuel fuel) {
        return fuel.cautions().stream()
                        .limit(2)
                        .map(FuelWords::sentence)
                        .collect(Collectors.joining(" ", "WARNING, " + fuel.name() + ": ", "\n"))
                + "All its cautions: fuel show " + fuel.name() + ". " + FuelWords.DEFER + "\n";
    }

    /** Cooling in the degrees that people read. */
    static String cooling(Shown shown, OptionalDouble kelvins) {
        Unit unit = shown.unit(Quantity.TEMPERATURE);
        return kelvins.isPresent() ? Shown.fixed(unit.differenceFromSi(kelvins.getAsDouble()), 0) : "-";
    }

    static String fixed(OptionalDouble value, int places) {
        return value.isPresent() ? Shown.fixed(value.getAsDouble(), places) : "-";
    }

    private String degrees() {
        return degrees(shown);
    }

    static String degrees(Shown shown) {
        Unit unit = shown.unit(Quantity.TEMPERATURE);
        return unit == Unit.CELSIUS ? "K" : unit.sign();
    }

    private static String elements(Fuel fuel) {
        return fuel.composition().massFractions().entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .map(entry -> name(entry.getKey()) + " " + Shown.fixed(100 * entry.getValue(), 1) + " %")
                .collect(Collectors.joining(", "));
    }

    private static String name(Element element) {
        return element.id();
    }

    private String value(Fuel fuel, FuelProperty property) {
        return fuel.sourced(property)
                .map(sourced -> number(property, sourced.value()))
                .orElse("-");
    }

    private static String two(Fuel fuel, FuelProperty property) {
        return fixed(fuel.value(property), 2);
    }

    private String spread(FuelProperty property, SourcedFigure sourced) {
        String low = number(property, sourced.spread().low());
        String high = number(property, sourced.spread().high());
        return low.equals(high) ? "" : low + " to " + high;
    }

    private String number(FuelProperty property, double si) {
        return switch (property.quantity()) {
            case COUNT -> Shown.plain(si);
            case SPECIFIC_ENERGY -> energy(si, property == FuelProperty.LATENT_HEAT ? 3 : 2);
            default -> shown.number(property.quantity(), si);
        };
    }

    /** An energy for a mass; whole numbers are fine enough in the small American unit. */
    private String energy(double si, int metricPlaces) {
        Unit unit = shown.unit(Quantity.SPECIFIC_ENERGY);
        return Shown.fixed(unit.fromSi(si), unit == Unit.BTU_PER_POUND ? 0 : metricPlaces);
    }

    private String unit(Quantity quantity) {
        return shown.unit(quantity).sign();
    }

    private String symbol(Quantity quantity) {
        return switch (quantity) {
            case COUNT, LAMBDA, AIR_FUEL_RATIO -> "";
            default -> unit(quantity);
        };
    }

    /** One mixture of a fuel on every scale. */
    public static String convert(Fuel fuel, Lambda lambda, List<NamedScale> scales) {
        TextTable table = new TextTable("gauge", "set to", "shows");
        for (NamedScale scale : scales) {
            table.row(
                    scale.name(),
                    Shown.fixed(scale.scale().ratioAtLambdaOne(), 2),
                    Shown.fixed(scale.shows(lambda), 2));
        }
        table.row(
                fuel.name() + " by its elements",
                Shown.fixed(fuel.stoichiometricAirFuelRatio(), 2),
                Shown.fixed(fuel.scale().airFuelRatio(lambda), 2));
        String gauge = scales.stream()
                .findFirst()
                .map(scale -> ", which a gauge set to "
                        + Shown.fixed(scale.scale().ratioAtLambdaOne(), 2) + " shows as "
                        + Shown.fixed(scale.scale().airFuelRatio(lambda), 2))
                .orElse("");
        return fuel.name() + " at lambda " + Shown.fixed(lambda.value(), 3) + side(lambda) + ": air-fuel ratio "
                + Shown.fixed(fuel.scale().airFuelRatio(lambda), 2) + gauge + "\n\n"
                + table.text() + "\nSet to: what it shows at lambda 1. A gauge shows lambda times that on any fuel; "
                + "the last line is the true ratio by mass.\n";
    }

    private static String side(Lambda lambda) {
        String shown = Shown.fixed(lambda.value(), 3);
        return "1.000".equals(shown) ? " (stoichiometric)" : lambda.value() < 1 ? " (rich)" : " (lean)";
    }
}
