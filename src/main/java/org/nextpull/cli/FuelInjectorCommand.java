package org.nextpull.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.InjectorDuty;
import org.nextpull.report.json.FuelFlowJson;
import org.nextpull.report.text.FuelFlowText;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Unit;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fuel injector}: how long injectors must stay open. */
@Command(
        name = "injector",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "How long injectors of a given rating must stay open on a fuel, and how large they would have to be.")
final class FuelInjectorCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final Console console;
    private final OneReading across = new OneReading("pressure across the injectors");

    @Parameters(arity = "0..1", paramLabel = "FUEL", description = "What flows through; without one, the plan's fuel.")
    private Optional<String> name = Optional.empty();

    @Option(names = "--injectors", required = true, paramLabel = "N", description = "How many share the flow.")
    private int count = 1;

    @Mixin
    private FuelDemand demand = new FuelDemand();

    @Mixin
    private InjectorSize size = new InjectorSize();

    @Mixin
    private KnownFuels known = new KnownFuels();

    @Mixin
    private OutputOptions output = new OutputOptions();

    FuelInjectorCommand(Console console) {
        this.console = console;
    }

    @Option(
            names = "--across-kpa",
            paramLabel = "N",
            description = "Pressure difference over them now, fuel less manifold; without it, that of the rating.")
    void acrossKpa(double value) {
        across.take("--across-kpa", Unit.KILOPASCAL, value);
    }

    @Option(names = "--across-psi", paramLabel = "N", description = "The same in psi.")
    void acrossPsi(double value) {
        across.take("--across-psi", Unit.PSI, value);
    }

    @Override
    public Integer call() {
        CommandLine at = spec.commandLine();
        if (count < 1 || count > 100) {
            throw new ParameterException(at, "--injectors must be from 1 to 100, not " + count + ".");
        }
        InjectorDuty.Injectors injectors = new InjectorDuty.Injectors(count, size.rating(at));
        across.check(at, value -> value > 0, "be above 0");
        Pressure now = Pressure.ofPascals(
                across.value(at).orElse(injectors.rating().across().pascals()));
        Fuel fuel = known.namedOrInTank(name);
        InjectorDuty duty = known.taken(InjectorDuty.of(demand.flow(at, fuel, known), injectors, now, fuel));
        if (output.isJson()) {
            console.out().println(new FuelFlowJson().injector(fuel, duty, known.findings()));
        } else {
            console.out().print(new FuelFlowText(output.shown()).injector(fuel, duty));
        }
        Messages.print(console.err(), known.findings(), output.shown());
        return ExitCodes.DONE;
    }
}
