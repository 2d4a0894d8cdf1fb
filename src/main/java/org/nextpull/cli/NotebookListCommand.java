package org.nextpull.cli;

import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import org.nextpull.app.NotebookAccess;
import org.nextpull.notebook.Notebook;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.report.json.NotebookJson;
import org.nextpull.report.text.NotebookText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code notebook list}: every session, the latest day first. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Every session, the latest day first.")
final class NotebookListCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    @Mixin
    private OutputOptions output = new OutputOptions();

    NotebookListCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        // whoever has kept nothing yet has an empty list, not a fault; a file that was named must be there
        NotebookAccess access = notebook.access();
        List<SessionSummary> sessions =
                Program.usable(access.isNamed() ? access.read(Notebook::list) : access.sessions(""));
        if (output.isJson()) {
            console.out().println(new NotebookJson().list(sessions));
        } else {
            console.out().print(new NotebookText(output.shown(), ZoneId.systemDefault()).list(sessions));
        }
        return ExitCodes.DONE;
    }
}
