package org.nextpull.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelDose;
import org.nextpull.fuel.FuelFacts;
import org.nextpull.fuel.FuelSwap;
import org.nextpull.fuel.NamedScale;
import org.nextpull.fuel.WaterAdded;
import org.nextpull.report.json.FuelJson;
import org.nextpull.report.text.FuelFlowText;
import org.nextpull.report.text.FuelText;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Quantity;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fuel}: the arithmetic of fuels, a command for each question; a method where a few options do. */
@Command(
        name = "fuel",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "Does the arithmetic of fuels.",
            "What is known of them, lambda and air-fuel ratio on any scale, flow against another fuel, blends, water, "
                    + "injectors."
        },
        synopsisSubcommandLabel = "COMMAND")
final class FuelCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final Console console;

    private FuelCommand(Console console) {
        this.console = console;
    }

    static CommandLine commandLine(Console console) {
        CommandLine line = new CommandLine(new FuelCommand(console));
        List.of("list", "show", "convert", "compare", "water")
                .forEach(name -> line.addSubcommand(
                        CommandLine.getCommandMethods(FuelCommand.class, name).get(0)));
        return line.addSubcommand(new FuelBlendCommand(console)).addSubcommand(new FuelInjectorCommand(console));
    }

    @Override
    public void run() {
        spec.commandLine().usage(console.out());
    }

    /** What flow is compared with. */
    static final class Against {
        @Option(
                names = "--against",
                paramLabel = "FUEL",
                defaultValue = "petrol",
                description = "Fuel that flow is compared with (default: ${DEFAULT-VALUE}).")
        private String fuel = "";
    }

    @Command(
            name = "list",
            mixinStandardHelpOptions = true,
            description = "Lists every known fuel beside the one it is compared with.")
    int list(@Mixin Against against, @Mixin KnownFuels known, @Mixin OutputOptions output) {
        Fuel other = known.named(against.fuel);
        List<FuelFacts> facts = known.blends().all().stream()
                .map(fuel -> FuelFacts.of(fuel, other))
                .toList();
        return known.tell(
                console,
                output,
                () -> new FuelJson().list(facts, known.findings()),
                () -> new FuelText(output.shown()).list(facts, other));
    }

    @Command(
            name = "show",
            mixinStandardHelpOptions = true,
            description = "Shows all that is known of one fuel: figures with spread and source, and cautions.")
    int show(
            @Parameters(arity = "0..1", paramLabel = "FUEL", description = "A fuel; without one, the plan's.")
                    Optional<String> name,
            @Mixin Against against,
            @Mixin KnownFuels known,
            @Mixin OutputOptions output) {
        FuelFacts facts = FuelFacts.of(known.namedOrInTank(name), known.named(against.fuel));
        return known.tell(
                console,
                output,
                () -> new FuelJson().show(facts, known.findings()),
                () -> new FuelText(output.shown()).show(facts));
    }

    @Command(
            name = "convert",
            mixinStandardHelpOptions = true,
            description = {
                "Converts lambda and air-fuel ratio on any scale.",
                "It also says what a gauge that is set for one fuel shows while another burns."
            })
    int convert(
            @Parameters(
                            arity = "0..1",
                            paramLabel = "FUEL",
                            description = "The fuel that burns; without one, the plan's.")
                    Optional<String> name,
            @Option(names = "--lambda", paramLabel = "L", description = "A lambda to show on the scales.")
                    Optional<Double> lambda,
            @Option(names = "--afr", paramLabel = "A", description = "What a gauge shows.") Optional<Double> afr,
            @Option(
                            names = "--scale",
                            paramLabel = "S",
                            defaultValue = "petrol",
                            description =
                                    "What the gauge is set to: the ratio that it shows at lambda 1, or a fuel's name for the ratio in print "
                                            + "(default: ${DEFAULT-VALUE}, 14.7).")
                    String scale,
            @Option(
                            names = "--to",
                            paramLabel = "S",
                            description = "Show it on this scale too; may be given several times.")
                    @Nullable
                    List<String> others,
            @Mixin KnownFuels known,
            @Mixin OutputOptions output) {
        Fuel fuel = known.namedOrInTank(name);
        List<NamedScale> scales = new ArrayList<>();
        scales.add(known.scale(scale));
        Optional.ofNullable(others).orElse(List.of()).forEach(other -> scales.add(known.scale(other)));
        scales.add(NamedScale.inPrint(fuel));
        if (lambda.isPresent() == afr.isPresent()) {
            throw new ParameterException(known.at(), "Give either --lambda or --afr, one of the two.");
        }
        Lambda mixture = lambda.map(value -> Conversions.lambda(known.at(), "--lambda", value))
                .orElseGet(() -> Conversions.lambda(
                        known.at(), afr.orElseThrow(), scales.get(0).scale()));
        List<NamedScale> distinct = scales.stream().distinct().toList();
        return known.tell(
                console,
                output,
                () -> new FuelJson().convert(fuel, mixture, distinct, known.findings()),
                () -> FuelText.convert(fuel, mixture, distinct));
    }

    @Command(
            name = "compare",
            mixinStandardHelpOptions = true,
            description =
                    "Shows what changes from one fuel to another at the same air: mass, volume, jets, cooling, energy.")
    int compare(
            @Parameters(paramLabel = "FUEL", description = "The fuel to change to.") String name,
            @Parameters(
                            arity = "0..1",
                            paramLabel = "IN_USE",
                            description = "The fuel in use, as --against names it (default: petrol).")
                    Optional<String> other,
            @Option(names = "--against", paramLabel = "FUEL", description = "The fuel in use.")
                    Optional<String> against,
            @Option(
                            names = "--lambda",
                            paramLabel = "L",
                            defaultValue = "1",
                            description = "Lambda of both (default: ${DEFAULT-VALUE}).")
                    double lambda,
            @Option(
                            names = "--against-lambda",
                            paramLabel = "L",
                            description = "Lambda of the fuel in use, if it is another one.")
                    Optional<Double> againstLambda,
            @Mixin KnownFuels known,
            @Mixin OutputOptions output) {
        Lambda mine = Conversions.lambda(known.at(), "--lambda", lambda);
        Lambda otherLambda = againstLambda
                .map(value -> Conversions.lambda(known.at(), "--against-lambda", value))
                .orElse(mine);
        Fuel fuel = known.named(name);
        if (other.isPresent() && against.isPresent()) {
            throw new ParameterException(
                    known.at(), "Name the fuel in use once: " + other.get() + " or --against " + against.get() + ".");
        }
        Fuel inUse = known.named(against.or(() -> other).orElse("petrol"));
        FuelSwap swap = FuelSwap.between(new FuelDose(fuel, mine), new FuelDose(inUse, otherLambda));
        Optional<FuelSwap> best = FuelSwap.atBestPower(fuel, inUse);
        return known.tell(
                console,
                output,
                () -> new FuelJson().compare(swap, best, known.findings()),
                () -> new FuelFlowText(output.shown()).compare(swap, best));
    }

    @Command(
            name = "water",
            mixinStandardHelpOptions = true,
            sortOptions = false,
            description =
                    "Shows what water does to a fuel with alcohol: its alcohol content, and how much more of it is needed.")
    int water(
            @Parameters(
                            arity = "0..1",
                            paramLabel = "FUEL",
                            description = "A fuel with alcohol; without one, the plan's.")
                    Optional<String> name,
            @Option(names = "--water", paramLabel = "AMOUNT", description = "Water that gets into it: 1L or 0.3gal.")
                    Optional<Amount> water,
            @Option(names = "--fuel", paramLabel = "AMOUNT", description = "Fuel without the water: 20L or 5gal.")
                    Optional<Amount> fuel,
            @Mixin KnownFuels known,
            @Mixin OutputOptions output) {
        CommandLine at = known.at();
        double without = Amount.positive(at, new Amount.Wanted("volume of fuel", "--fuel", Quantity.VOLUME), fuel);
        double wet = water.orElseThrow(
                        () -> new Amount.Wanted("volume of water", "--water", Quantity.VOLUME).missing(at))
                .si(at, "--water", Quantity.VOLUME);
        if (wet < 0) {
            throw new ParameterException(at, "--water must not be negative.");
        }
        Fuel dry = known.namedOrInTank(name);
        WaterAdded added = known.taken(WaterAdded.to(dry, wet / without));
        return known.tell(
                console,
                output,
                () -> new FuelJson().water(added, known.findings()),
                () -> new FuelFlowText(output.shown()).water(added));
    }
}
