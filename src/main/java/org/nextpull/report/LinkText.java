package org.nextpull.report;

import java.util.OptionalDouble;

/** How the data of a running session arrives and whether it is kept. */
public final class LinkText {
    private static final double MEGABYTE = 1e6;

    private LinkText() {}

    /** Nothing has come yet. */
    public static String waiting(String source) {
        return source + ": not reached yet.";
    }

    /** All is well. */
    public static String connected(String source, OptionalDouble sinceLastS) {
        return source + ": connected" + since(sinceLastS) + ".";
    }

    /** It is there and says nothing. */
    public static String silent(String source, OptionalDouble sinceLastS) {
        return source + " SILENT" + since(sinceLastS) + ". Check the logger.";
    }

    /** It went away. */
    public static String lost(String source, OptionalDouble sinceLastS) {
        return source + " LOST" + since(sinceLastS) + ". Check the cable. Reconnects by itself.";
    }

    private static String since(OptionalDouble seconds) {
        return seconds.isPresent() && seconds.getAsDouble() >= 1
                ? ", last line " + Shown.fixed(seconds.getAsDouble(), 0) + " s ago"
                : "";
    }

    /** What arrives is written. */
    public static String recording(long bytes) {
        return "Recording, " + Shown.fixed(bytes / MEGABYTE, 1) + " MB.";
    }

    /** A pull is in progress. */
    public static String pulling(int pull, double seconds) {
        return "Pull " + pull + " is running, " + Shown.fixed(seconds, 0) + " s.";
    }

    /**
     * How far a day that is gone through again is.
     *
     * @param shown pulls shown so far
     * @param of pulls of the day
     */
    public static String replayed(String source, int shown, int of) {
        return "Replay, not live: " + source + ", after pull " + shown + " of " + of + ".";
    }

    /** How a day that is gone through again goes on, and that nothing arrives that could be kept. */
    public static String pace(boolean paused, boolean atEnd, double secondsAPull) {
        String speed = ", a pull every " + Shown.plain(secondsAPull) + " s";
        String state = !paused ? "Running" + speed : atEnd ? "At the end" : "Paused" + speed;
        return state + "; nothing is recorded.";
    }
}
