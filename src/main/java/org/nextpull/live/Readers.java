package org.nextpull.live;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.intake.folder.FolderMemory;
import org.nextpull.intake.folder.FolderReader;
import org.nextpull.intake.folder.FolderWatch;
import org.nextpull.intake.serial.PortOpener;
import org.nextpull.intake.serial.WireReader;
import org.nextpull.intake.wire.ArrivalQueue;

/** The threads that read the sources of a session. */
final class Readers implements AutoCloseable {
    private final List<WireReader> wires = new ArrayList<>();
    private final List<FolderReader> folders = new ArrayList<>();

    /** Starts them all; files of a folder that were taken before are not taken again. */
    static Readers start(LiveIntake intake, PortOpener opener, ArrivalQueue queue, FolderMemory before) {
        Readers readers = new Readers();
        if (intake instanceof LiveIntake.Ports ports) {
            for (LivePort port : ports.ports()) {
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
