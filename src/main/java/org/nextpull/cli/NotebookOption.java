package org.nextpull.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.nextpull.app.NotebookAccess;
import org.nextpull.notebook.KeptSession;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Which notebook a command works on. */
final class NotebookOption {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--notebook",
            paramLabel = "FILE",
            description = "The notebook (default: notebook.db in the folder for your data).")
    private Optional<String> named = Optional.empty();

    /** Gives up where no file can be called what the user named. */
    NotebookAccess access() {
        return named.map(name -> Program.usable(NotebookAccess.named(name))).orElseGet(NotebookAccess::ofUser);
    }

    /** The command that works on it. */
    CommandLine at() {
        return spec.commandLine();
    }

    Path file() {
        return access().file();
    }

    /** Reads from the notebook, which must be there, or gives up. */
    <T> T reading(NotebookAccess.Work<T> work) {
        return Program.usable(access().read(work));
    }

    /** A session that no program runs now, or gives up. */
    KeptSession ended(long id) {
        return Program.usable(access().ended(id));
    }

    /** Writes to the notebook, or gives up; begins one where there is none. */
    <T> T writing(NotebookAccess.Work<T> work) {
        return Program.usable(access().write(work));
    }
}
