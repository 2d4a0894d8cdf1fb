package org.nextpull.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.WaterAdded;
import org.nextpull.report.json.FuelFlowJson;
import org.nextpull.report.text.FuelFlowText;
import org.nextpull.unit.Unit;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fuel water}: what water does to a fuel with alcohol. */
@Command(
        name = "water",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "What water does to a fuel with alcohol: its alcohol content, and how much more of it is needed.")
final class FuelWaterCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final Console console;
    private final OneReading water = new OneReading("volume of water");
    private final OneReading fuel = new OneReading("volume of fuel");

    @Parameters(arity = "0..1", paramLabel = "FUEL", description = "A fuel with alcohol; without one, the plan's.")
    private Optional<String> name = Optional.empty();

    @Mixin
    private KnownFuels known = new KnownFuels();

    @Mixin
    private OutputOptions output = new OutputOptions();

    FuelWaterCommand(Console console) {
        this.console = console;
    }

    @Option(names = "--water-l", paramLabel = "N", description = "Litres of water that get into it.")
    void waterL(double value) {
        water.take("--water-l", Unit.LITRE, value);
    }

    @Option(names = "--water-gal", paramLabel = "N", description = "US gallons of water that get into it.")
    void waterGal(double value) {
        water.take("--water-gal", Unit.US_GALLON, value);
    }

    @Option(names = "--fuel-l", paramLabel = "N", description = "Litres of fuel without the water.")
    void fuelL(double value) {
        fuel.take("--fuel-l", Unit.LITRE, value);
    }

    @Option(names = "--fuel-gal", paramLabel = "N", description = "US gallons of fuel without the water.")
    void fuelGal(double value) {
        fuel.take("--fuel-gal", Unit.US_GALLON, value);
    }

    @Override
    public Integer call() {
        CommandLine at = spec.commandLine();
        double litres = fuel.positive(at, "--fuel-l or --fuel-gal");
        double wet = water.required(at, "--water-l or --water-gal");
        water.check(at, value -> value >= 0, "not be negative");
        Fuel dry = known.namedOrInTank(name);
        WaterAdded added = known.taken(WaterAdded.to(dry, wet / litres));
        if (output.isJson()) {
            console.out().println(new FuelFlowJson().water(added, known.findings()));
        } else {
            console.out().print(new FuelFlowText(output.shown()).water(added));
        }
        Messages.print(console.err(), known.findings(), output.shown());
        return ExitCodes.DONE;
    }
}
