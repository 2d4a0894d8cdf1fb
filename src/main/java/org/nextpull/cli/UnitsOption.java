package org.nextpull.cli;

import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;
import picocli.CommandLine.Option;

/** The units that people read. */
final class UnitsOption {
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
