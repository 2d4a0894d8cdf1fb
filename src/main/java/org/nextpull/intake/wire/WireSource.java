package org.nextpull.intake.wire;

import java.util.List;
import org.nextpull.plan.WireFacts;

/**
 * A source of the session.
 *
 * @param name its name, as arrivals carry it
 * @param lines what its lines are and how late they come
 * @param settings how the port is set, for people to read; blank where it is no port
 * @param isFolder whether its bytes are those of files
 */
public record WireSource(String name, LineSettings lines, String settings, boolean isFolder) {
    public static WireSource port(String name, LineSettings lines, String settings) {
        return new WireSource(name, lines, settings, false);
    }

    /** A folder of logs, each with a header line. */
    public static WireSource folder(String name) {
        return new WireSource(name, LineSettings.withHeaderLine(), "", true);
    }

    /**
     * What the lines of a source are and how late they come.
     *
     * @param kind how a line is made up
     * @param columns headers of the fields in order, written as in a log, {@code -} for a field of no use; empty where the logger sends a
     *     header line or each value has its name. For sentences a header that begins with {@code $} is the address of the sentence that
     *     those after it belong to
     * @param delayS how much later than the others this source reports, in s
     * @param byteNs nanoseconds that a byte takes on the line; 0 where it takes none
     */
    public record LineSettings(WireFacts.Lines kind, List<String> columns, double delayS, long byteNs) {
        /**
         * Accepts a delay from 0 to 60 s.
         *
         * @throws IllegalArgumentException for any other
         */
        public LineSettings {
            columns = List.copyOf(columns);
            if (!(delayS >= 0 && delayS <= 60)) {
                throw new IllegalArgumentException("a delay is between 0 and 60 s: " + delayS);
            }
        }

        /** Lines with a separator under a header line that the logger sends. */
        public static LineSettings withHeaderLine() {
            return new LineSettings(WireFacts.Lines.SEPARATED, List.of(), 0, 0);
        }
    }
}
