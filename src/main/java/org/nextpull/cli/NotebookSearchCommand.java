package org.nextpull.cli;

import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.report.json.NotebookJson;
import org.nextpull.report.text.NotebookText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code notebook search}: the sessions in which words stand. */
@Command(
        name = "search",
        mixinStandardHelpOptions = true,
        description =
                "The sessions in which every one of the words stands: in the names of engine, fuel, plan and logs, in labels, "
                        + "notes and reasons, or in the advice.")
final class NotebookSearchCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(arity = "1..*", paramLabel = "WORD", description = "Words, each of which must be found.")
    private List<String> words = List.of();

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    @Mixin
    private OutputOptions output = new OutputOptions();

    NotebookSearchCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<SessionSummary> found = notebook.reading(book -> book.find(String.join(" ", words)));
        if (output.isJson()) {
            console.out().println(new NotebookJson().list(found));
        } else {
            console.out().print(new NotebookText(output.shown(), ZoneId.systemDefault()).found(found));
        }
        return ExitCodes.DONE;
    }
}
