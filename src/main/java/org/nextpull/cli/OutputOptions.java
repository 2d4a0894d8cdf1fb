package org.nextpull.cli;

import org.nextpull.report.Shown;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options that every command with a result has. */
final class OutputOptions {
    @Mixin
    private UnitsOption units = new UnitsOption();

    @Option(names = "--json", description = "Print one JSON document instead of text.")
    private boolean json;

    boolean isJson() {
        return json;
    }

    Shown shown() {
        return units.shown();
    }
}
