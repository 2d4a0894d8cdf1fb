package org.nextpull.cli;

import java.nio.file.Path;
import java.util.List;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.PlainText;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;

/**
 * A plan, read from its file.
 *
 * @param plan the plan
 * @param text as it was written
 * @param path where it lies; paths in it are relative to it
 * @param findings what is worth saying of it
 */
record PlanFile(SweepPlan plan, String text, Path path, List<Finding> findings) {
    PlanFile {
        findings = List.copyOf(findings);
    }

    /** Reads a plan, or gives up with all that is wrong with it. */
    static PlanFile read(String name) {
        String text = text(name);
        Outcome<SweepPlan> outcome = PlanText.read(text, name);
        SweepPlan plan = outcome.value().orElseThrow(() -> new Program.BadInput(outcome.findings()));
        return new PlanFile(plan, text, Path.of(name), outcome.findings());
    }

    private static String text(String name) {
        Outcome<String> text = PlainText.read(name, PlanText.MOST_BYTES);
        return text.value().orElseThrow(() -> new Program.BadInput(text.findings()));
    }

    /** A path of the plan, seen from where the plan lies. */
    Path resolve(String relative) {
        Path parent = path.toAbsolutePath().getParent();
        return parent == null ? Path.of(relative) : parent.resolve(relative);
    }
}
