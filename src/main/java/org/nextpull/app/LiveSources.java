package org.nextpull.app;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.folder.FolderSettings;
import org.nextpull.live.LiveIntake;
import org.nextpull.live.PlanPorts;
import org.nextpull.plan.SweepPlan;

/** What a session reads from, by the names that the user gives and by what the plan says of its wires. Not for the event thread. */
public final class LiveSources {
    private LiveSources() {}

    /** A folder into which a logger writes. */
    public static Outcome<LiveIntake> folder(String name) {
        if (name.isBlank()) {
            return notReadable(name, "no folder is named");
        }
        try {
            Path folder = Path.of(name);
            return Files.isDirectory(folder)
                    ? Outcome.of(new LiveIntake.Folder(FolderSettings.usual(folder)))
                    : notReadable(name, "there is no such folder");
        } catch (InvalidPathException odd) {
            return notReadable(name, "the name is none that a folder can have");
        }
    }

    /**
     * The ports that the plan describes.
     *
     * @param device the one that the user named; empty leaves it to the plan
     */
    public static Outcome<LiveIntake> ports(SweepPlan plan, Optional<String> device) {
        return PlanPorts.of(plan, device).map(ports -> ports);
    }

    private static Outcome<LiveIntake> notReadable(String name, String why) {
        return Outcome.failed(
                Finding.error(FindingCode.FOLDER_NOT_READABLE, Place.inFile(name), Detail.of("why", why)));
    }
}
