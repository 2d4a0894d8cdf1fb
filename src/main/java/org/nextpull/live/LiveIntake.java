package org.nextpull.live;

import java.util.List;
import org.nextpull.intake.folder.FolderSettings;

/** What a session reads from: ports, or a folder that another program writes logs into. */
public sealed interface LiveIntake {
    /** Serial ports, each a source of its own. */
    record Ports(List<LivePort> ports) implements LiveIntake {
        public Ports {
            ports = List.copyOf(ports);
        }
    }

    /** A folder. */
    record Folder(FolderSettings folder) implements LiveIntake {}
}
