package org.nextpull.cli;

import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options that every command with a result has. */
final class OutputOptions {
    @Mixin
    private Units units = new Units();

    @Option(names = "--json", description = "Print one JSON document instead of text.")
    private boolean json;

    boolean isJson() {
        return json;
    }

    Shown shown() {
        return units.shown();
    }

    /** The units that people read. */
    static final class Units {
        @Option(
                names = "--units",
                paramLabel = "metric|us",
                defaultValue = "metric",
                description =
                        "Units that people read: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}). JSON is always metric.")
        private UnitSystem units = UnitSystem.METRIC;

        Shown shown() {
            return new Shown(units);
        }
    }
}
