package org.nextpull.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.WaterAdded;
import org.nextpull.report.json.FuelFlowJson;
import org.nextpull.report.text.FuelFlowText;
import org.nextpull.unit.Quantity;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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

    @Parameters(arity = "0..1", paramLabel = "FUEL", description = "A fuel with alcohol; without one, the plan's.")
    private Optional<String> name = Optional.empty();

    @Option(names = "--water", paramLabel = "AMOUNT", description = "Water that gets into it: 1L or 0.3gal.")
    private Optional<Amount> water = Optional.empty();

    @Option(names = "--fuel", paramLabel = "AMOUNT", description = "Fuel without the water: 20L or 5gal.")
    private Optional<Amount> fuel = Optional.empty();

    @Mixin
    private KnownFuels known = new KnownFuels();

    @Mixin
    private OutputOptions output = new OutputOptions();

    FuelWaterCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        CommandLine at = spec.commandLine();
        double without = Amount.positive(at, new Amount.Wanted("volume of fuel", "--fuel", Quantity.VOLUME), fuel);
        double wet = water.orElseThrow(
                        () -> new Amount.Wanted("volume of water", "--water", Quantity.VOLUME).missing(at))
                .si(at, "--water", Quantity.VOLUME);
        if (wet < 0) {
            throw new ParameterException(at, "--water must not be negative.");
        }
        Fuel dry = known.namedOrInTank(name);
        WaterAdded added = known.taken(WaterAdded.to(dry, wet / without));
        if (output.isJson()) {
            console.out().println(new FuelFlowJson().water(added, known.findings()));
        } else {
            console.out().print(new FuelFlowText(output.shown()).water(added));
        }
        Messages.print(console.err(), known.findings(), output.shown());
        return ExitCodes.DONE;
    }
}
