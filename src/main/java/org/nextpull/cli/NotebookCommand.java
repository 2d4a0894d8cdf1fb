package org.nextpull.cli;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.nextpull.app.DayInput;
import org.nextpull.app.NotebookAccess;
import org.nextpull.app.PlanFile;
import org.nextpull.notebook.Checkup;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.Notebook;
import org.nextpull.notebook.SessionStart;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.report.Shown;
import org.nextpull.report.json.NotebookJson;
import org.nextpull.report.text.NotebookText;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code notebook}: the sessions that were kept; a method a command. */
@Command(
        name = "notebook",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        synopsisSubcommandLabel = "COMMAND",
        description = "Keeps past sessions in one file: pulls, advice, and what was done by hand.")
final class NotebookCommand implements Runnable {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final Console console;

    private NotebookCommand(Console console) {
        this.console = console;
    }

    static CommandLine commandLine(Console console) {
        CommandLine line = new CommandLine(new NotebookCommand(console));
        List.of("list", "search", "show", "add", "rename", "remove", "check", "backUp")
                .forEach(name -> line.addSubcommand(CommandLine.getCommandMethods(NotebookCommand.class, name)
                        .get(0)));
        return line.addSubcommand(new NotebookCorrectCommand(console, CommandSpec.create()))
                .addSubcommand(new NotebookExportCommand(console, CommandSpec.create()));
    }

    @Override
    public void run() {
        spec.commandLine().usage(console.out());
    }

    @Command(name = "list", mixinStandardHelpOptions = true, description = "Lists every session, the latest day first.")
    int list(@Mixin NotebookOption notebook, @Mixin OutputOptions output) {
        // whoever has kept nothing yet has an empty list, not a fault; a file that was named must be there
        NotebookAccess access = notebook.access();
        List<SessionSummary> sessions =
                Program.usable(access.isNamed() ? access.read(Notebook::list) : access.sessions(""));
        output.print(
                console.out(),
                () -> new NotebookJson().list(sessions),
                () -> text(output).list(sessions));
        return ExitCodes.DONE;
    }

    @Command(
            name = "search",
            mixinStandardHelpOptions = true,
            description = {
                "Lists the sessions that hold all of the words.",
                "In the names of engine, fuel, plan and logs, in labels, notes and reasons, or in the advice."
            })
    int search(
            @Parameters(arity = "1..*", paramLabel = "WORD", description = "Words, each of which must be found.")
                    List<String> words,
            @Mixin NotebookOption notebook,
            @Mixin OutputOptions output) {
        List<SessionSummary> found = notebook.reading(book -> book.find(String.join(" ", words)));
        output.print(
                console.out(),
                () -> new NotebookJson().list(found),
                () -> text(output).found(found));
        return ExitCodes.DONE;
    }

    @Command(
            name = "show",
            mixinStandardHelpOptions = true,
            description =
                    "Shows one session: its answer, worked out again from its samples, its pulls, and what was advised at the "
                            + "time.")
    int show(
            @Parameters(paramLabel = "ID", description = "Number of the session, as list shows it.") long id,
            @Mixin NotebookOption notebook,
            @Mixin OutputOptions output) {
        KeptSession session = notebook.reading(book -> book.session(id));
        SessionResult result = session.result();
        output.print(
                console.out(),
                () -> new NotebookJson().session(session, result),
                () -> text(output).session(session, result));
        return ExitCodes.DONE;
    }

    @Command(
            name = "add",
            mixinStandardHelpOptions = true,
            description = {
                "Adds a day of logs as a session.",
                "It keeps the samples, so that the day can be shown, compared and learned from like a live one."
            })
    int add(
            @Mixin DayOptions.PlanAndLogs day,
            @Option(
                            names = "--on",
                            paramLabel = "YYYY-MM-DD",
                            description = "Day on which it was run (default: today).")
                    Optional<LocalDate> on,
            @Mixin NotebookOption notebook) {
        DayInput input = day.read();
        console.print(input.findings());
        SessionResult result = input.result();
        long used = result.pulls().stream().filter(MeasuredPull::isUsed).count();
        if (used == 0) {
            console.print(result.findings());
            return ExitCodes.BAD_INPUT;
        }
        PlanFile plan = Program.usable(PlanFile.read(day.plan()));
        long id = notebook.writing(book -> {
            Instant now = on.map(date -> date.atTime(LocalTime.NOON)
                            .atZone(ZoneId.systemDefault())
                            .toInstant())
                    .orElseGet(Instant::now);
            return book.add(
                    new SessionStart(now, Program.version(), day.plan(), plan.text(), Optional.empty()),
                    input.session(),
                    result);
        });
        console.out()
                .println("Kept as session " + id + ": "
                        + Shown.count(result.pulls().size(), "pull") + ", " + used + " of them used.");
        return input.someFailed() ? ExitCodes.BAD_INPUT : ExitCodes.DONE;
    }

    @Command(
            name = "rename",
            mixinStandardHelpOptions = true,
            description = {
                "Gives the engine of a session another name.",
                "In the list and in the plan that is kept with it. Sessions of one name teach each other."
            })
    int rename(
            @Parameters(index = "0", paramLabel = "ID", description = "Number of the session, as list shows it.")
                    long id,
            @Parameters(index = "1", paramLabel = "NAME", description = "The new name of the engine.") String name,
            @Mixin NotebookOption notebook) {
        if (name.isBlank()) {
            throw new ParameterException(notebook.at(), "An engine needs a name that is not blank.");
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

    @Command(
            name = "remove",
            mixinStandardHelpOptions = true,
            description = {
                "Removes sessions from the notebook, after asking.",
                "The raw data of a live session stays in its folder, which is named."
            })
    int remove(
            @Parameters(arity = "1..*", paramLabel = "ID", description = "Numbers of the sessions, as list shows them.")
                    List<Long> ids,
            @Option(names = "--yes", description = "Do not ask; needed without a terminal.") boolean yes,
            @Mixin NotebookOption notebook)
            throws IOException {
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
                console.err().println("There is no terminal to ask; confirm with --yes.");
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

    @Command(
            name = "check",
            mixinStandardHelpOptions = true,
            description = {
                "Checks the notebook for damage.",
                "It works out every figure again from its samples and compares it with the one that was kept. A notebook of an older "
                        + "version is brought up to this one first."
            })
    int check(@Mixin NotebookOption notebook, @Mixin OutputOptions output) {
        Checkup checkup = notebook.reading(Notebook::check);
        console.out().println(output.isJson() ? new NotebookJson().check(checkup) : NotebookText.check(checkup));
        console.print(List.copyOf(checkup.findings()), output.shown());
        return checkup.isGood() ? ExitCodes.DONE : ExitCodes.BAD_INPUT;
    }

    @Command(
            name = "back-up",
            mixinStandardHelpOptions = true,
            description = {
                "Copies the notebook, also while a session runs, and reads the copy back.",
                "The copy is a notebook itself: name it with --notebook, or put it in the place of a damaged one. It overwrites nothing."
            })
    int backUp(
            @Parameters(paramLabel = "TARGET", description = "The file to write.") String target,
            @Mixin NotebookOption notebook) {
        Path file;
        try {
            file = Path.of(target);
        } catch (InvalidPathException impossible) {
            throw new ParameterException(notebook.at(), "no file can be called " + target);
        }
        Notebook.Copy copy = notebook.reading(book -> book.backUp(file));
        console.out()
                .println("Copied " + copy.sessions() + (copy.sessions() == 1 ? " session" : " sessions") + " to "
                        + copy.file() + " (" + (copy.bytes() + 1023) / 1024 + " kB), and read it back.");
        return ExitCodes.DONE;
    }

    private static NotebookText text(OutputOptions output) {
        return new NotebookText(output.shown(), ZoneId.systemDefault());
    }
}
