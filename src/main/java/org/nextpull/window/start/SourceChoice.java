package org.nextpull.window.start;

import java.util.Optional;
import org.nextpull.finding.Outcome;
import org.nextpull.live.LiveIntake;
import org.nextpull.live.PlanPorts;
import org.nextpull.plan.SweepPlan;

/**
 * Where the operator wants values from.
 *
 * @param isFolder whether it is a folder of logs, else ports
 * @param name the folder, or the port; blank leaves the port to the plan
 */
record SourceChoice(boolean isFolder, String name) {
    static SourceChoice port(String name) {
        return new SourceChoice(false, name.strip());
    }

    static SourceChoice folder(String name) {
        return new SourceChoice(true, name.strip());
    }

    /** What a session would read from, out of this choice and what the plan says of its wires. Not for the event thread. */
    Outcome<LiveIntake> source(SweepPlan plan) {
        return isFolder
                ? LiveIntake.ofFolder(name)
                : PlanPorts.of(plan, device()).map(ports -> ports);
    }

    /** The port that was named; empty leaves it to the plan. */
    Optional<String> device() {
        return isFolder || name.isEmpty() ? Optional.empty() : Optional.of(name);
    }
}
