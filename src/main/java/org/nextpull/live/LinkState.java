package org.nextpull.live;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.finding.Finding;

/**
 * How a source is doing.
 *
 * @param source its name: the port or the folder
 * @param link whether it can be read
 * @param sinceLastS seconds since something came, in s; empty when nothing has
 * @param finding what is wrong with it at the moment
 */
public record LinkState(String source, Link link, OptionalDouble sinceLastS, Optional<Finding> finding) {
    /** Whether a source can be read. */
    public enum Link {
        /** It has not been reached yet. */
        WAITING,
        CONNECTED,
        /** It is connected, but nothing comes. */
        SILENT,
        /** It went away. */
        LOST
    }
}
