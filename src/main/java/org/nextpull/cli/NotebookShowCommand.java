package org.nextpull.cli;

import java.time.ZoneId;
import java.util.concurrent.Callable;
import org.nextpull.notebook.KeptSession;
import org.nextpull.report.json.NotebookJson;
import org.nextpull.report.text.NotebookText;
import org.nextpull.session.SessionResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code notebook show}: one session in words. */
@Command(
        name = "show",
        mixinStandardHelpOptions = true,
        description =
                "One session in words: its answer, made again from its samples, its pulls, what was done by hand and what was "
                        + "advised at the time.")
final class NotebookShowCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "ID", description = "Number of the session, as list shows it.")
    private long id;

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    @Mixin
    private OutputOptions output = new OutputOptions();

    NotebookShowCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        KeptSession session = notebook.reading(book -> book.session(id));
        SessionResult result = session.result();
        if (output.isJson()) {
            console.out().println(new NotebookJson().session(session, result));
        } else {
            console.out().print(new NotebookText(output.shown(), ZoneId.systemDefault()).session(session, result));
        }
        return ExitCodes.DONE;
    }
}
