package org.nextpull.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.nextpull.app.DayInput;
import org.nextpull.app.DayReader;
import org.nextpull.app.LabelledLog;
import org.nextpull.app.NotebookAccess;
import org.nextpull.finding.Outcome;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What every command over a day takes: a plan with logs, or a session of the notebook. */
final class DayOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--plan", paramLabel = "PLAN", description = "Sweep plan (TOML); a session has its own.")
    private Optional<String> plan = Optional.empty();

    @Parameters(
            arity = "0..*",
            paramLabel = "LOG",
            description = "CSV logs or tables of results, gz or zip of them, folders, globs.")
    private List<String> logs = List.of();

    @Option(
            names = "--session",
            paramLabel = "ID",
            description = "A session of the notebook in place of plan and logs, by its number in notebook list.")
    private Optional<Long> session = Optional.empty();

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    @Option(
            names = "--no-notebook",
            description = "Learn nothing from earlier days, as [goal] learn_from_notebook = false does.")
    private boolean noNotebook;

    /** Whether a day was named at all. */
    boolean isNamed() {
        return session.isPresent() || !logs.isEmpty();
    }

    Optional<String> plan() {
        return plan;
    }

    NotebookAccess notebook() {
        return notebook.access();
    }

    DayInput read() {
        return read(LabelledLog::unlabelled);
    }

    /** Reads logs of which some are named with a label: {@code LABEL=LOG}. */
    DayInput readLabelled() {
        return read(LabelledLog::parse);
    }

    private DayInput read(Function<String, LabelledLog> parse) {
        NotebookAccess book = notebook.access();
        if (session.isPresent()) {
            require(logs.isEmpty() && plan.isEmpty(), "--session takes neither a plan nor logs: it has its own");
            return Program.usable(DayReader.session(book, session.get()));
        }
        require(!logs.isEmpty(), "Name a log, or a session of the notebook with --session.");
        List<LabelledLog> named = logs.stream().map(parse).toList();
        require(
                plan.isPresent() || named.stream().anyMatch(log -> log.session().isPresent()),
                "Missing required option: '--plan=PLAN'");
        Outcome<DayInput> day = DayReader.day(book, plan, named);
        return Program.usable(noNotebook ? day : day.then(read -> DayReader.learned(book, read)));
    }

    private void require(boolean holds, String message) {
        if (!holds) {
            throw new ParameterException(spec.commandLine(), message);
        }
    }

    /** Plan and logs, both needed. */
    static final class PlanAndLogs {
        @Option(names = "--plan", required = true, paramLabel = "PLAN", description = "Sweep plan (TOML).")
        private String plan = "";

        @Parameters(
                arity = "1..*",
                paramLabel = "LOG",
                description = "CSV logs or tables of results, gz or zip of them, folders, globs.")
        private List<String> logs = List.of();

        String plan() {
            return plan;
        }

        DayInput read() {
            return read(plan, logs);
        }

        static DayInput read(String plan, List<String> logs) {
            return Program.usable(DayReader.day(
                    NotebookAccess.ofUser(),
                    Optional.of(plan),
                    logs.stream().map(LabelledLog::unlabelled).toList()));
        }
    }
}
