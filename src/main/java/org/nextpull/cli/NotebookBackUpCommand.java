package org.nextpull.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.nextpull.notebook.Copy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code notebook back-up}: a copy that is whole, also while a session is being kept. */
@Command(
        name = "back-up",
        mixinStandardHelpOptions = true,
        description =
                "Copies the notebook, also while a session runs, and reads the copy back. The copy is a notebook itself: name it "
                        + "with --notebook, or put it in the place of the damaged one. It writes over nothing.")
final class NotebookBackUpCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "TARGET", description = "The file to write.")
    private String target = "";

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    NotebookBackUpCommand(Console console, CommandSpec spec) {
        this.console = console;
        this.spec = spec;
    }

    @Override
    public Integer call() {
        Path file = path();
        Copy copy = notebook.reading(book -> book.backUp(file));
        console.out()
                .println("Copied " + copy.sessions() + (copy.sessions() == 1 ? " session" : " sessions") + " to "
                        + copy.file() + " (" + (copy.bytes() + 1023) / 1024 + " kB), and read it back.");
        return ExitCodes.DONE;
    }

    private Path path() {
        try {
            return Path.of(target);
        } catch (InvalidPathException impossible) {
            throw new ParameterException(spec.commandLine(), "no file can be called " + target);
        }
    }
}
