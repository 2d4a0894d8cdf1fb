package org.nextpull.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.fuel.FuelFacts;
import org.nextpull.report.json.FuelJson;
import org.nextpull.report.text.FuelText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fuel show}: all that is known of one fuel, with sources and cautions. */
@Command(
        name = "show",
        mixinStandardHelpOptions = true,
        description = "All that is known of one fuel: figures with their spread and source, and what to beware of.")
final class FuelShowCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(arity = "0..1", paramLabel = "FUEL", description = "A fuel; without one, the plan's.")
    private Optional<String> name = Optional.empty();

    @Option(
            names = "--against",
            paramLabel = "FUEL",
            defaultValue = "petrol",
            description = "Fuel that flow is compared with (default: ${DEFAULT-VALUE}).")
    private String against = "petrol";

    @Mixin
    private KnownFuels known = new KnownFuels();

    @Mixin
    private OutputOptions output = new OutputOptions();

    FuelShowCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        FuelFacts facts = FuelFacts.of(known.namedOrInTank(name), known.named(against));
        if (output.isJson()) {
            console.out().println(new FuelJson().show(facts, known.findings()));
        } else {
            console.out().print(new FuelText(output.shown()).show(facts));
        }
        Messages.print(console.err(), known.findings(), output.shown());
        return ExitCodes.DONE;
    }
}
