package org.nextpull.cli;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.util.List;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.report.FindingLines;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;

/**
 * Where a command prints and reads.
 *
 * @param out results
 * @param err progress and messages
 * @param in what the user types
 */
record Console(PrintWriter out, PrintWriter err, BufferedReader in) {
    /** Findings as lines on standard error. */
    void print(List<Finding> findings) {
        print(findings, new Shown(UnitSystem.METRIC));
    }

    /** The same in the units that people asked for. */
    void print(List<Finding> findings, Shown shown) {
        new FindingLines(FindingText.in(shown)).said(findings).forEach(line -> err.println(line.marked()));
    }

    /** What came out, with what is worth saying of it printed; or gives up with why nothing did. */
    <T> T said(Outcome<T> outcome) {
        T value = Program.usable(outcome);
        print(outcome.findings());
        return value;
    }
}
