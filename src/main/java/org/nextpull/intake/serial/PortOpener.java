package org.nextpull.intake.serial;

import org.nextpull.finding.Outcome;

/** Opens ports. The seam at which tests put a port of their own. */
@FunctionalInterface
public interface PortOpener {
    /** Opens a port as it is to be set; a failed outcome says why not. May take long on some devices. */
    Outcome<Port> open(WireSettings settings);
}
