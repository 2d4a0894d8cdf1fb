package org.nextpull.window.start;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.folder.FolderSettings;
import org.nextpull.live.LiveIntake;
import org.nextpull.live.PlanPorts;
import org.nextpull.plan.SweepPlan;

/** What a session would read from, out of what was chosen and what the plan says of its wires. Not for the event thread. */
final class SourceIntake {
    private SourceIntake() {}

    static Outcome<LiveIntake> of(SourceChoice choice, SweepPlan plan) {
        if (!choice.isFolder()) {
            return PlanPorts.of(plan, choice.device()).map(ports -> ports);
        }
        try {
            Path folder = Path.of(choice.name());
            if (!choice.name().isEmpty() && Files.isDirectory(folder)) {
                return Outcome.of(new LiveIntake.Folder(FolderSettings.usual(folder)));
            }
        } catch (InvalidPathException odd) {
            return Outcome.failed(unreadable(choice.name(), "the name is none that a folder can have"));
        }
        return Outcome.failed(
                unreadable(choice.name(), choice.name().isEmpty() ? "no folder is named" : "there is no such folder"));
    }

    private static Finding unreadable(String name, String why) {
        return Finding.error(FindingCode.FOLDER_NOT_READABLE, Place.inFile(name), Detail.of("why", why));
    }
}
