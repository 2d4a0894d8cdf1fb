package org.nextpull.cli;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fuel.BlendRecipe;
import org.nextpull.fuel.Element;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelFacts;
import org.nextpull.fuel.FuelProperty;
import org.nextpull.fuel.SourcedFigure;
import org.nextpull.report.json.FuelJson;
import org.nextpull.report.text.FuelText;
import org.nextpull.unit.Quantity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code fuel blend}: what a blend is like before it is mixed. */
@Command(
        name = "blend",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Works out a blend from its parts, or from its elements as a data sheet gives them.")
final class FuelBlendCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final Console console;

    @Option(names = "--name", paramLabel = "NAME", defaultValue = "blend", description = "Name of the blend.")
    private String name = "blend";

    @Option(
            names = "--of",
            paramLabel = "FUEL=SHARE",
            split = ",",
            description = "Its parts, such as ethanol=0.3,e10=0.7; together 1.")
    private Map<String, Double> parts = new LinkedHashMap<>();

    @Option(names = "--by", paramLabel = "volume|mass", description = "What the shares count (default: volume).")
    private Optional<String> by = Optional.empty();

    @Option(
            names = "--elements",
            paramLabel = "ELEMENT=SHARE",
            split = ",",
            description = "Its elements by mass, such as carbon=0.834,hydrogen=0.129,oxygen=0.037.")
    private Map<String, Double> elements = new LinkedHashMap<>();

    @Option(
            names = "--density",
            paramLabel = "AMOUNT",
            description = "With --elements: density, 0.745kg/L or 6.2lb/gal.")
    private Optional<Amount> density = Optional.empty();

    @Mixin
    private KnownFuels known = new KnownFuels();

    @Mixin
    private OutputOptions output = new OutputOptions();

    FuelBlendCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (parts.isEmpty() == elements.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "Give either --of or --elements, one of the two.");
        }
        Fuel blend = known.taken(parts.isEmpty() ? ofElements() : ofParts());
        FuelFacts facts = FuelFacts.of(blend, known.named("petrol"));
        return known.tell(
                console,
                output,
                () -> new FuelJson().show(facts, known.findings()),
                () -> new FuelText(output.shown()).show(facts));
    }

    private Outcome<Fuel> ofParts() {
        if (density.isPresent()) {
            throw new ParameterException(
                    spec.commandLine(), "--density goes with --elements; that of parts is computed.");
        }
        BlendRecipe.ShareBy share = by.map(text -> known.taken(BlendRecipe.ShareBy.find(text, Place.nowhere())))
                .orElse(BlendRecipe.ShareBy.VOLUME);
        return BlendRecipe.ofParts(name, parts, share, known.blends(), Place.nowhere());
    }

    private Outcome<Fuel> ofElements() {
        if (by.isPresent()) {
            throw new ParameterException(spec.commandLine(), "--by goes with --of; elements are always by mass.");
        }
        Map<Element, Double> fractions = new EnumMap<>(Element.class);
        elements.forEach((id, share) -> fractions.put(element(id), share));
        Map<FuelProperty, SourcedFigure> figures = new EnumMap<>(FuelProperty.class);
        density.map(amount -> amount.positive(spec.commandLine(), "--density", Quantity.DENSITY))
                .ifPresent(
                        value -> figures.put(FuelProperty.DENSITY, SourcedFigure.exactly(value, "given by --density")));
        return BlendRecipe.ofElements(name, fractions, figures, Place.nowhere());
    }

    private Element element(String id) {
        for (Element element : Element.values()) {
            if (element.id().equalsIgnoreCase(id) || element.symbol().equalsIgnoreCase(id)) {
                return element;
            }
        }
        throw new ParameterException(
                spec.commandLine(),
                "There is no element '" + id + "' here; give carbon, hydrogen, oxygen or nitrogen.");
    }
}
