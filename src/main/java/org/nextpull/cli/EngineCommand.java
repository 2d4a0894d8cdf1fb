package org.nextpull.cli;

import java.io.IOException;
import java.security.SecureRandom;
import java.util.Optional;
import org.nextpull.app.PlanFile;
import org.nextpull.simulator.Practice;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code engine}: the model engine. */
@Command(
        name = "engine",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        synopsisSubcommandLabel = "COMMAND",
        description = "Plays an invented engine, whose truth is known, on a simulated dyno.")
final class EngineCommand implements Runnable {
    private static final int SEEDS = 1_000_000;

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
                .addSubcommand(CommandLine.getCommandMethods(EngineCommand.class, "practise")
                        .get(0));
    }

    @Override
    public void run() {
        spec.commandLine().usage(console.out());
    }

    @Command(
            name = "practise",
            mixinStandardHelpOptions = true,
            description = {
                "Runs a practice day: it proposes, you set, the engine pulls; at the end it shows the truth.",
                "Type a setting (26 0.87), Enter for what is proposed, why, exclude 3, end, or help."
            })
    int practise(
            @Option(names = "--plan", required = true, paramLabel = "PLAN", description = "Sweep plan (TOML).")
                    String plan,
            @Option(
                            names = "--seed",
                            paramLabel = "N",
                            description =
                                    "Whole number that decides engine, day and noise (default: a random one, which is told).")
                    Optional<Long> seed,
            @Mixin OutputOptions.Units units)
            throws IOException {
        PlanFile file = console.said(PlanFile.read(plan));
        long chosen = seed(seed, console);
        Practice practice = Program.usable(Practice.start(file.plan(), chosen));
        PracticeTalk talk = new PracticeTalk(console, practice, units.shown());
        OrderlyEnd ending = OrderlyEnd.by(talk::interrupted);
        talk.hold();
        ending.done();
        return ExitCodes.DONE;
    }

    /** The seed of an engine, drawn where none is given, and told so that it can be given again. */
    static long seed(Optional<Long> given, Console console) {
        long chosen = given.orElseGet(() -> (long) new SecureRandom().nextInt(SEEDS));
        console.err().println("Building the engine of seed " + chosen + "; --seed " + chosen + " brings it back.");
        return chosen;
    }
}
