package org.nextpull.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code engine}: the model engine. */
@Command(
        name = "engine",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        description =
                "The model engine: an invented engine with a known truth, of the size that a plan names, on a simulated dyno.")
final class EngineCommand implements Runnable {
    private final Console console;

    @Spec
    private CommandSpec spec;

    private EngineCommand(Console console, CommandSpec spec) {
        this.console = console;
        this.spec = spec;
    }

    static CommandLine commandLine(Console console) {
        return new CommandLine(new EngineCommand(console, CommandSpec.create()))
                .addSubcommand(new EngineWriteCommand(console))
                .addSubcommand(new EngineServeCommand(console, CommandSpec.create()))
                .addSubcommand(new EnginePractiseCommand(console));
    }

    @Override
    public void run() {
        spec.commandLine().usage(console.out());
    }
}
