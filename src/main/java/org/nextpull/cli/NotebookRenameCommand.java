package org.nextpull.cli;

import java.util.concurrent.Callable;
import org.nextpull.notebook.KeptSession;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code notebook rename}: the engine of a session by another name. */
@Command(
        name = "rename",
        mixinStandardHelpOptions = true,
        description =
                "Gives the engine of a session another name, in the list and in the plan that is kept with it. Sessions of one "
                        + "name teach each other.")
final class NotebookRenameCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "ID", description = "Number of the session, as list shows it.")
    private long id;

    @Parameters(index = "1", paramLabel = "NAME", description = "The new name of the engine.")
    private String name = "";

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    NotebookRenameCommand(Console console, CommandSpec spec) {
        this.console = console;
        this.spec = spec;
    }

    @Override
    public Integer call() {
        if (name.isBlank()) {
            CommandLine at = spec.commandLine();
            throw new ParameterException(at, "An engine needs a name that is not blank.");
        }
        KeptSession session = notebook.ended(id);
        notebook.writing(book -> {
            book.rename(id, name.strip());
            return id;
        });
        console.out()
                .println("Session " + id + ": the engine is now \"" + name.strip() + "\", and was "
                        + session.summary()
                                .engine()
                                .map(was -> "\"" + was + "\"")
                                .orElse("without a name") + ".");
        return ExitCodes.DONE;
    }
}
