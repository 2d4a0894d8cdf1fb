package org.nextpull.cli;

import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plan and logs, which every command over a day takes. */
final class DayOptions {
    @Option(names = "--plan", required = true, paramLabel = "PLAN", description = "Sweep plan (TOML).")
    private String plan = "";

    @Parameters(
            arity = "1..*",
            paramLabel = "LOG",
            description = "CSV logs or tables of results, gz or zip of them, folders, globs.")
    private List<String> logs = List.of();

    DayInput read() {
        return DayInput.read(plan, logs);
    }

    /** Reads logs of which some are named with a label: {@code LABEL=LOG}. */
    DayInput readLabelled() {
        return DayInput.labelled(plan, logs.stream().map(LabelledLog::parse).toList());
    }
}
