package org.nextpull.cli;

import java.util.List;
import java.util.Optional;
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
        List<LabelledLog> unlabelled =
                logs.stream().map(log -> new LabelledLog(Optional.empty(), log)).toList();
        return new DayReader(new NotebookOption()).day(Optional.of(plan), unlabelled);
    }
}
