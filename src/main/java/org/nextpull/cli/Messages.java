package org.nextpull.cli;

import java.io.PrintWriter;
import java.util.List;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.report.FindingLines;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;

/** Findings as lines on standard error. */
final class Messages {
    private Messages() {}

    static void print(PrintWriter err, List<Finding> findings) {
        print(err, findings, new Shown(UnitSystem.METRIC));
    }

    /** What came out, with what is worth saying of it printed; or gives up with why nothing did. */
    static <T> T said(PrintWriter err, Outcome<T> outcome) {
        T value = Program.usable(outcome);
        print(err, outcome.findings());
        return value;
    }

    /** The same in the units that people asked for. */
    static void print(PrintWriter err, List<Finding> findings, Shown shown) {
        new FindingLines(FindingText.in(shown)).said(findings).forEach(line -> err.println(line.marked()));
    }
}
