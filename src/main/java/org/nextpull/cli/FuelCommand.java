package org.nextpull.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code fuel}: the arithmetic of fuels, a command for each question. */
@Command(
        name = "fuel",
        mixinStandardHelpOptions = true,
        description =
                "The arithmetic of fuels: what is known of them, lambda and air-fuel ratio on any scale, flow against "
                        + "another fuel, blends, water, injectors.",
        synopsisSubcommandLabel = "COMMAND")
final class FuelCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final Console console;

    private FuelCommand(Console console) {
        this.console = console;
    }

    static CommandLine commandLine(Console console) {
        return new CommandLine(new FuelCommand(console))
                .addSubcommand(new FuelListCommand(console))
                .addSubcommand(new FuelShowCommand(console))
                .addSubcommand(new FuelConvertCommand(console))
                .addSubcommand(new FuelCompareCommand(console))
                .addSubcommand(new FuelBlendCommand(console))
                .addSubcommand(new FuelWaterCommand(console))
                .addSubcommand(new FuelInjectorCommand(console));
    }

    @Override
    public void run() {
        spec.commandLine().usage(console.out());
    }
}
