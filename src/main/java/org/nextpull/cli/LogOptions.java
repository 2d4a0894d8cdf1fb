package org.nextpull.cli;

import java.util.List;
import java.util.Optional;
import org.nextpull.app.DayInput;
import org.nextpull.app.DayReader;
import org.nextpull.app.LabelledLog;
import org.nextpull.app.NotebookAccess;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plan and logs, both needed. */
final class LogOptions {
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
