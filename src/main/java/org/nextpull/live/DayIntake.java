package org.nextpull.live;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.alarm.AlarmRules;
import org.nextpull.channel.Column;
import org.nextpull.intake.folder.FolderMemory;
import org.nextpull.intake.folder.FolderReader;
import org.nextpull.intake.folder.FolderWatch;
import org.nextpull.intake.serial.PortOpener;
import org.nextpull.intake.serial.WireReader;
import org.nextpull.intake.wire.ArrivalQueue;
import org.nextpull.intake.wire.WireChain;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.PullRules;

/** What a session reads from, as the chain and the finding of pulls see it. */
final class DayIntake {
    private static final String BETWEEN_NAMES = " + ";

    private final LiveIntake intake;

    DayIntake(LiveIntake intake) {
        this.intake = intake;
    }

    List<WireSource> sources() {
        if (intake instanceof LiveIntake.Ports ports) {
            return ports.ports().stream()
                    .map(port -> WireSource.port(
                            port.wire().device(),
                            port.lines(),
                            port.wire().port().text()))
                    .toList();
        }
        return List.of(
                WireSource.folder(((LiveIntake.Folder) intake).folder().folder().toString()));
    }

    List<String> names() {
        return sources().stream().map(WireSource::name).toList();
    }

    DayPulls pulls(SweepPlan plan, AlarmRules limits, WireChain chain) {
        PullRules rules = PullRules.of(plan);
        return intake instanceof LiveIntake.Folder folder
                ? new FolderPulls(folder.folder().folder(), plan.log().hints(), rules, limits)
                : new PortPulls(title(), () -> columns(chain), rules, limits);
    }

    /** All sources in one name. */
    String title() {
        return String.join(BETWEEN_NAMES, names());
    }

    /** Whether something is understood of what each source sends. */
    boolean isUnderstood(WireChain chain) {
        return names().stream().noneMatch(name -> chain.columns(name).isEmpty());
    }

    /** The columns of all sources, as far as they are understood. */
    List<Column> columns(WireChain chain) {
        return names().stream().flatMap(name -> chain.columns(name).stream()).toList();
    }

    /** The threads that read the sources of a session. */
    static final class Readers implements AutoCloseable {
        private final List<WireReader> wires = new ArrayList<>();
        private final List<FolderReader> folders = new ArrayList<>();

        /** Starts them all; files of a folder that were taken before are not taken again. */
        static Readers start(LiveIntake intake, PortOpener opener, ArrivalQueue queue, FolderMemory before) {
            Readers readers = new Readers();
            if (intake instanceof LiveIntake.Ports ports) {
                for (LiveIntake.Port port : ports.ports()) {
                    readers.wires.add(WireReader.start(port.wire(), opener, queue));
                }
            } else if (intake instanceof LiveIntake.Folder folder) {
                readers.folders.add(FolderReader.start(new FolderWatch(folder.folder(), queue, before), queue));
            }
            return readers;
        }

        @Override
        public void close() {
            wires.forEach(WireReader::close);
            folders.forEach(FolderReader::close);
        }
    }
}
