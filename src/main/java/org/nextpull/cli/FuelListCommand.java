package org.nextpull.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelFacts;
import org.nextpull.report.json.FuelJson;
import org.nextpull.report.text.FuelText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code fuel list}: every fuel that can be named, a row each. */
@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        description = "Every fuel that can be named, beside the one that it is compared with.")
final class FuelListCommand implements Callable<Integer> {
    private final Console console;

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

    FuelListCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Fuel other = known.named(against);
        List<FuelFacts> facts = known.blends().all().stream()
                .map(fuel -> FuelFacts.of(fuel, other))
                .toList();
        if (output.isJson()) {
            console.out().println(new FuelJson().list(facts, known.findings()));
        } else {
            console.out().print(new FuelText(output.shown()).list(facts, other));
        }
        Messages.print(console.err(), known.findings(), output.shown());
        return ExitCodes.DONE;
    }
}
