package org.nextpull.cli;

import java.io.IOException;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.nextpull.notebook.KeptSession;
import org.nextpull.report.Shown;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code notebook remove}: takes sessions out. */
@Command(
        name = "remove",
        mixinStandardHelpOptions = true,
        description =
                "Takes sessions out of the notebook with all that belongs to them, after asking. What was captured of a live "
                        + "session stays in its folder, which is named.")
final class NotebookRemoveCommand implements Callable<Integer> {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);

    private final Console console;

    @Parameters(arity = "1..*", paramLabel = "ID", description = "Numbers of the sessions, as list shows them.")
    private List<Long> ids = List.of();

    @Option(names = "--yes", description = "Do not ask; needed where nobody can be asked.")
    private boolean yes;

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    NotebookRemoveCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        List<KeptSession> sessions = new ArrayList<>();
        for (long id : ids) {
            sessions.add(notebook.ended(id));
        }
        sessions.forEach(session -> console.out().println(line(session)));
        if (!yes) {
            console.out().print("Type yes to remove: ");
            console.out().flush();
            String answer = console.in().readLine();
            if (answer == null) {
                console.err().println("Nobody can be asked whether that is meant; say so with --yes.");
                return ExitCodes.WRONG_USAGE;
            }
            if (!answer.strip().equalsIgnoreCase("yes")) {
                console.out().println("Nothing was removed.");
                return ExitCodes.DONE;
            }
        }
        for (KeptSession session : sessions) {
            notebook.writing(book -> {
                book.remove(session.id());
                return session.id();
            });
            console.out()
                    .println("Removed session " + session.id() + "."
                            + session.start()
                                    .capture()
                                    .map(folder -> " Its raw data is still in " + folder + ".")
                                    .orElse(""));
        }
        return ExitCodes.DONE;
    }

    private static String line(KeptSession session) {
        return "Session " + session.id() + ", "
                + DAY.format(session.summary().started().atZone(ZoneId.systemDefault())) + ", "
                + session.summary().engine().orElse("engine without a name") + ", "
                + Shown.count(session.summary().pulls(), "pull");
    }
}
