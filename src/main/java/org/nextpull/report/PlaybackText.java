package org.nextpull.report;

/** What is said of a day that is gone through again, so that nobody takes it for a running one. */
public final class PlaybackText {
    private PlaybackText() {}

    /**
     * How far it is.
     *
     * @param shown pulls shown so far
     * @param of pulls of the day
     */
    public static String replayed(String source, int shown, int of) {
        return "Replay, not live: " + source + ", after pull " + shown + " of " + of + ".";
    }

    /** How it goes on, and that nothing arrives that could be kept. */
    public static String pace(boolean paused, boolean atEnd, double secondsAPull) {
        String speed = ", a pull every " + Shown.plain(secondsAPull) + " s";
        String state = !paused ? "Running" + speed : atEnd ? "At the end" : "Paused" + speed;
        return state + "; nothing is recorded.";
    }
}
