package org.nextpull.live;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.capture.CaptureFolder;
import org.nextpull.intake.capture.CaptureSummary;
import org.nextpull.intake.folder.FolderSettings;
import org.nextpull.intake.serial.WireSettings;
import org.nextpull.intake.wire.LineSettings;
import org.nextpull.plan.SweepPlan;

/** What a session reads from: ports, or a folder that another program writes logs into. */
public sealed interface LiveIntake {
    /** Serial ports, each a source of its own. */
    record Ports(List<Port> ports) implements LiveIntake {
        public Ports {
            ports = List.copyOf(ports);
        }
    }

    /** A folder. */
    record Folder(FolderSettings folder) implements LiveIntake {}

    /**
     * A port that a session reads.
     *
     * @param wire how the port is set
     * @param lines what its lines are
     */
    record Port(WireSettings wire, LineSettings lines) {}

    /**
     * The folder or the ports that a session read from before it ended, told from its captures, so that it can go on without being told
     * again.
     *
     * @param captures its folder
     * @param plan its plan, which says how the ports are set
     */
    static Outcome<LiveIntake> ofCaptures(Path captures, SweepPlan plan) {
        try {
            List<String> sources = new CaptureFolder(captures)
                    .summaries().stream()
                            .map(CaptureSummary::source)
                            .filter(source -> !source.equals(OperatorLines.SOURCE))
                            .toList();
            Optional<Path> folder =
                    sources.stream().flatMap(source -> folder(source).stream()).findFirst();
            if (folder.isPresent()) {
                return Outcome.of(new Folder(FolderSettings.usual(folder.get())));
            }
            Optional<String> device = plan.wires().size() > 1
                    ? Optional.empty()
                    : sources.stream().findFirst();
            return PlanPorts.of(plan, device).map(ports -> ports);
        } catch (IOException unreadable) {
            return Outcome.failed(Finding.error(
                    FindingCode.LIVE_CAPTURES_UNREADABLE,
                    Place.inFile(captures.toString()),
                    Detail.of("why", String.valueOf(unreadable.getMessage()))));
        }
    }

    private static Optional<Path> folder(String source) {
        try {
            return Optional.of(Path.of(source)).filter(Files::isDirectory);
        } catch (InvalidPathException odd) {
            return Optional.empty();
        }
    }
}
