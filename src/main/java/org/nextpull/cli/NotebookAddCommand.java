package org.nextpull.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.app.DayInput;
import org.nextpull.app.PlanFile;
import org.nextpull.notebook.SessionStart;
import org.nextpull.report.Shown;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code notebook add}: a day that was logged without this program. */
@Command(
        name = "add",
        mixinStandardHelpOptions = true,
        description =
                "Keeps a day of logs as a session, with its samples, so that it can be shown, compared and learned from like a "
                        + "session that was run live.")
final class NotebookAddCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private LogOptions day = new LogOptions();

    @Option(names = "--on", paramLabel = "YYYY-MM-DD", description = "Day on which it was run (default: today).")
    private Optional<LocalDate> on = Optional.empty();

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    NotebookAddCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        DayInput input = day.read();
        Messages.print(console.err(), input.findings());
        SessionResult result = input.result();
        long used = result.pulls().stream().filter(MeasuredPull::isUsed).count();
        if (used == 0) {
            Messages.print(console.err(), result.findings());
            return ExitCodes.BAD_INPUT;
        }
        PlanFile plan = Program.usable(PlanFile.read(day.plan()));
        long id = notebook.writing(book -> {
            Instant now = on.map(date -> date.atTime(LocalTime.NOON)
                            .atZone(ZoneId.systemDefault())
                            .toInstant())
                    .orElseGet(Instant::now);
            return book.add(
                    new SessionStart(now, new Version().getVersion()[0], day.plan(), plan.text(), Optional.empty()),
                    input.session(),
                    result);
        });
        console.out()
                .println("Kept as session " + id + ": "
                        + Shown.count(result.pulls().size(), "pull") + ", " + used + " of them used.");
        return input.someFailed() ? ExitCodes.BAD_INPUT : ExitCodes.DONE;
    }
}
