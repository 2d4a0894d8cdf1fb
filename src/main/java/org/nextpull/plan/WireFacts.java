package org.nextpull.plan;

import java.util.List;
import java.util.Optional;

/**
 * One serial source, table {@code [[wire]]}.
 *
 * @param device the port; empty where there is only one wire and the command names the port
 * @param port how the port is set
 * @param lines how a line is made up
 * @param columns headers of the fields in order, written as in a log; empty where the logger sends them or each field has its name
 * @param delayS how much later than the others this source reports, in s
 */
public record WireFacts(Optional<String> device, PortFacts port, Lines lines, List<String> columns, double delayS) {
    public WireFacts {
        columns = List.copyOf(columns);
    }

    /** How a line is made up. */
    public enum Lines {
        /** Values with a separator. */
        SEPARATED,
        /** {@code name=value} pairs. */
        PAIRS,
        /** Sentences with a checksum, framed as in NMEA 0183. */
        SENTENCE
    }
}
