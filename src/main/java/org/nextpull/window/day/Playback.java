package org.nextpull.window.day;

/**
 * How far a day has been gone through again, and how fast it goes on.
 *
 * @param shown pulls shown so far
 * @param of pulls of the day
 * @param secondsAPull time from one pull to the next
 * @param paused whether it stands still
 * @param waitedS time since the last pull appeared, in s
 */
public record Playback(int shown, int of, double secondsAPull, boolean paused, double waitedS) {
    private static final double FASTEST_S = 0.25;
    private static final double SLOWEST_S = 64;

    /** Ticks of a tenth of a second add up to a little less than a second. */
    private static final double HAIR_S = 1e-6;

    /** Before the first pull of a day of so many. */
    public static Playback start(int of, double secondsAPull) {
        return new Playback(0, of, secondsAPull, of == 0, 0);
    }

    public boolean isAtEnd() {
        return shown == of;
    }

    /** Pauses, or goes on; at the end it starts again. */
    public Playback pauseOrGoOn() {
        return paused && isAtEnd()
                ? new Playback(0, of, secondsAPull, of == 0, 0)
                : new Playback(shown, of, secondsAPull, !paused, 0);
    }

    /** So many pulls forth, or back where negative; it then stands still. */
    public Playback step(int pulls) {
        int there = Math.max(0, Math.min(of, shown + pulls));
        return new Playback(there, of, secondsAPull, true, 0);
    }

    public Playback faster() {
        return new Playback(shown, of, Math.max(FASTEST_S, secondsAPull / 2), paused, waitedS);
    }

    public Playback slower() {
        return new Playback(shown, of, Math.min(SLOWEST_S, secondsAPull * 2), paused, waitedS);
    }

    /** After some time has gone by: at most one more pull, and a pause at the end. */
    public Playback after(double seconds) {
        if (paused) {
            return this;
        }
        double waited = waitedS + seconds;
        if (waited < secondsAPull - HAIR_S) {
            return new Playback(shown, of, secondsAPull, false, waited);
        }
        int next = Math.min(of, shown + 1);
        return new Playback(next, of, secondsAPull, next == of, 0);
    }
}
