package org.nextpull.cli;

import java.io.PrintWriter;
import java.util.function.Supplier;
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

    /** Prints an answer in the form that was asked for; the other is not made. */
    void print(PrintWriter to, Supplier<String> document, Supplier<String> text) {
        if (json) {
            to.println(document.get());
        } else {
            to.print(text.get());
        }
    }

    /** The units that people read. */
    static final class Units {
        @Option(
                names = "--units",
                paramLabel = "metric|us",
                defaultValue = "metric",
                description = "Units of text, charts and sheet (default: ${DEFAULT-VALUE}). JSON is always metric.")
        private UnitSystem units = UnitSystem.METRIC;

        Shown shown() {
            return new Shown(units);
        }
    }
}
