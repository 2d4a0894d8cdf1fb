package org.nextpull.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code notebook}: the sessions that were kept. */
@Command(
        name = "notebook",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        description =
                "The sessions that were kept, with their pulls, advice and everything done by hand: lists, shows, searches and "
                        + "exports them, adds a day from its logs, corrects, renames and removes them, looks for damage, and copies the notebook while it is in use.")
final class NotebookCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final Console console;

    private NotebookCommand(Console console) {
        this.console = console;
    }

    static CommandLine commandLine(Console console) {
        return new CommandLine(new NotebookCommand(console))
                .addSubcommand(new NotebookListCommand(console))
                .addSubcommand(new NotebookSearchCommand(console))
                .addSubcommand(new NotebookShowCommand(console))
                .addSubcommand(new NotebookAddCommand(console))
                .addSubcommand(new NotebookCorrectCommand(console, CommandSpec.create()))
                .addSubcommand(new NotebookRenameCommand(console, CommandSpec.create()))
                .addSubcommand(new NotebookRemoveCommand(console))
                .addSubcommand(new NotebookExportCommand(console, CommandSpec.create()))
                .addSubcommand(new NotebookCheckCommand(console))
                .addSubcommand(new NotebookBackUpCommand(console, CommandSpec.create()));
    }

    @Override
    public void run() {
        spec.commandLine().usage(console.out());
    }
}
