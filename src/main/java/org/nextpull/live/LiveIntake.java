package org.nextpull.live;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.capture.CaptureFolder;
import org.nextpull.intake.capture.CaptureSummary;
import org.nextpull.intake.folder.FolderMemory;
import org.nextpull.intake.folder.FolderReader;
import org.nextpull.intake.folder.FolderSettings;
import org.nextpull.intake.folder.FolderWatch;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.serial.WireReader;
import org.nextpull.intake.wire.ArrivalQueue;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.plan.SweepPlan;

/** What a session reads from: ports, or a folder that another program writes logs into. */
public sealed interface LiveIntake {
    /** Serial ports, each a source of its own. */
    record Ports(List<Wire> ports) implements LiveIntake {
        public Ports {
            ports = List.copyOf(ports);
        }

        @Override
        public List<WireSource> sources() {
            return ports.stream()
                    .map(port -> WireSource.port(
                            port.wire().device(),
                            port.lines(),
                            port.wire().port().text()))
                    .toList();
        }

        @Override
        public Readers read(Port.Opener opener, ArrivalQueue queue, FolderMemory before) {
            List<WireReader> readers = ports.stream()
                    .map(port -> WireReader.start(port.wire(), opener, queue))
                    .toList();
            return () -> readers.forEach(WireReader::close);
        }
    }

    /** A folder. */
    record Folder(FolderSettings folder) implements LiveIntake {
        @Override
        public List<WireSource> sources() {
            return List.of(WireSource.folder(folder.folder().toString()));
        }

        @Override
        public Readers read(Port.Opener opener, ArrivalQueue queue, FolderMemory before) {
            return FolderReader.start(new FolderWatch(folder, queue, before), queue)::close;
        }
    }

    /** The sources, one for each port. */
    List<WireSource> sources();

    /**
     * Starts threads that read into a queue. Opening a port may take long.
     *
     * @param before what became of the files of a folder before: those that were taken are not taken again
     */
    Readers read(Port.Opener opener, ArrivalQueue queue, FolderMemory before);

    /** The threads that read, until they are closed. */
    interface Readers extends AutoCloseable {
        @Override
        void close();
    }

    /** All sources in one name. */
    default String name(String between) {
        return sources().stream().map(WireSource::name).collect(Collectors.joining(between));
    }

    /**
     * A port that a session reads.
     *
     * @param wire how the port is set
     * @param lines what its lines are
     */
    record Wire(Port.Settings wire, WireSource.LineSettings lines) {}

    /** A folder into which a logger writes, by the name that the user gives. Not for the event thread. */
    static Outcome<LiveIntake> ofFolder(String name) {
        if (name.isBlank()) {
            return notReadable(name, "no folder is named");
        }
        try {
            Path folder = Path.of(name);
            return Files.isDirectory(folder)
                    ? Outcome.of(new Folder(FolderSettings.usual(folder)))
                    : notReadable(name, "there is no such folder");
        } catch (InvalidPathException odd) {
            return notReadable(name, "the name is none that a folder can have");
        }
    }

    private static Outcome<LiveIntake> notReadable(String name, String why) {
        return Outcome.failed(
                Finding.error(FindingCode.FOLDER_NOT_READABLE, Place.inFile(name), Detail.of("why", why)));
    }

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
