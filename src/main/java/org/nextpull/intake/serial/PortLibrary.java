package org.nextpull.intake.serial;

import java.util.List;
import org.nextpull.finding.Outcome;

/** What is needed of the serial library. Any call may throw a {@link LinkageError} when its native part cannot be loaded. */
interface PortLibrary {
    List<PortInfo> list();

    /** Whether there is such a port; it is not opened. */
    boolean isThere(String device);

    Outcome<Port> open(WireSettings settings);
}
