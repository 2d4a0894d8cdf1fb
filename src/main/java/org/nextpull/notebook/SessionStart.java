package org.nextpull.notebook;

import java.time.Instant;
import java.util.Optional;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;

/**
 * What is known of a session when it begins.
 *
 * @param started when
 * @param version version of the program
 * @param planName name of the plan file, as the user gave it
 * @param planText the plan as it was written, remarks and all
 * @param capture folder in which every byte is captured, for a session on the wire
 */
public record SessionStart(
        Instant started, String version, String planName, String planText, Optional<String> capture) {

    /** The plan, or what is wrong with its text. */
    public Outcome<SweepPlan> plan() {
        return PlanText.read(planText, planName);
    }
}
