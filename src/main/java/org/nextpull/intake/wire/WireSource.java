package org.nextpull.intake.wire;

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
}
