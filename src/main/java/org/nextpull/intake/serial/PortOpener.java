package org.nextpull.intake.serial;

import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;

/** Opens ports. The seam at which tests put a port of their own. */
@FunctionalInterface
public interface PortOpener {
    /** Opens a port as it is to be set; a failed outcome says why not. May take long on some devices. */
    Outcome<Port> open(WireSettings settings);

    /** What is to be said of a port that is not there, without opening it; empty while it is, and where that cannot be told. */
    default Optional<Finding> missing(WireSettings settings) {
        return Optional.empty();
    }
}
