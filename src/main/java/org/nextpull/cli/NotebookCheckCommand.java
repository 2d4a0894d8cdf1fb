package org.nextpull.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.nextpull.notebook.Checkup;
import org.nextpull.notebook.Notebook;
import org.nextpull.report.json.NotebookJson;
import org.nextpull.report.text.NotebookText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code notebook check}: looks for damage. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description =
                "Looks for damage in the file and in the samples, and makes every figure again from its samples to see whether it "
                        + "comes out as it was kept. A notebook of an older version is brought up to this one first.")
final class NotebookCheckCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    @Mixin
    private OutputOptions output = new OutputOptions();

    NotebookCheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Checkup checkup = notebook.reading(Notebook::check);
        if (output.isJson()) {
            console.out().println(new NotebookJson().check(checkup));
        } else {
            console.out().println(NotebookText.check(checkup));
        }
        Messages.print(console.err(), List.copyOf(checkup.findings()), output.shown());
        return checkup.isGood() ? ExitCodes.DONE : ExitCodes.BAD_INPUT;
    }
}
