package org.nextpull.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelDose;
import org.nextpull.fuel.FuelSwap;
import org.nextpull.report.json.FuelFlowJson;
import org.nextpull.report.text.FuelFlowText;
import org.nextpull.unit.Lambda;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fuel compare}: how much of one fuel an engine needs in place of another. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description =
                "What changes when one fuel takes the place of another at the same air: mass, volume, jets, cooling, energy.")
final class FuelCompareCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final Console console;

    @Parameters(paramLabel = "FUEL", description = "The fuel to change to.")
    private String name = "";

    @Option(
            names = "--against",
            paramLabel = "FUEL",
            defaultValue = "petrol",
            description = "The fuel in use (default: ${DEFAULT-VALUE}).")
    private String against = "petrol";

    @Option(
            names = "--lambda",
            paramLabel = "L",
            defaultValue = "1",
            description = "Lambda of both (default: ${DEFAULT-VALUE}).")
    private double lambda = 1;

    @Option(
            names = "--against-lambda",
            paramLabel = "L",
            description = "Lambda of the fuel in use, if it is another one.")
    private Optional<Double> againstLambda = Optional.empty();

    @Mixin
    private KnownFuels known = new KnownFuels();

    @Mixin
    private OutputOptions output = new OutputOptions();

    FuelCompareCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Lambda mine = MixtureNumber.lambda(spec.commandLine(), "--lambda", lambda);
        Lambda other = againstLambda
                .map(value -> MixtureNumber.lambda(spec.commandLine(), "--against-lambda", value))
                .orElse(mine);
        Fuel fuel = known.named(name);
        Fuel inUse = known.named(against);
        FuelSwap swap = FuelSwap.between(new FuelDose(fuel, mine), new FuelDose(inUse, other));
        Optional<FuelSwap> best = FuelSwap.atBestPower(fuel, inUse);
        if (output.isJson()) {
            console.out().println(new FuelFlowJson().compare(swap, best, known.findings()));
        } else {
            console.out().print(new FuelFlowText(output.shown()).compare(swap, best));
        }
        Messages.print(console.err(), known.findings(), output.shown());
        return ExitCodes.DONE;
    }
}
