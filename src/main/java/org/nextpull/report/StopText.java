package org.nextpull.report;

import org.nextpull.advice.EarlierStop;
import org.nextpull.session.Replay;

/** What is said of a stop after which pulls were run. */
public final class StopText {
    private StopText() {}

    /**
     * That it stands, or what opened the day again; a sentence that follows others.
     *
     * @param stopsAgain whether the advice that it belongs to is a stop too
     */
    static String sentence(EarlierStop stop, boolean stopsAgain) {
        return stop.reopened()
                .map(why -> " " + reopened(stop, why, stopsAgain))
                .orElseGet(() -> " The stop after pull " + stop.afterPull() + " stands: "
                        + (stop.pullsSince() == 1
                                ? "the pull since then was at a setting"
                                : "the " + stop.pullsSince() + " pulls since then were at settings")
                        + " that had been run before it.");
    }

    private static String reopened(EarlierStop stop, EarlierStop.Reopening why, boolean stopsAgain) {
        String after = stopsAgain
                ? "this stop takes the place of the one after pull " + stop.afterPull() + "."
                : "the stop after pull " + stop.afterPull() + " no longer stands.";
        if (why.pull().isEmpty()) {
            return "An excluded pull or an override opened the day again: " + after;
        }
        String pull = "Pull " + why.pull().getAsInt();
        return switch (why.cause()) {
            case NEW_SETTING -> pull + " was at a setting that had not been run, which opens the day again: " + after;
            case KNOCK -> pull + " knocked, which blocks the final setting: " + after;
            case LIMIT -> pull + " met a limit, which opens the day again: " + after;
            case BY_HAND -> pull + " was changed by hand, which opens the day again: " + after;
        };
    }

    /** After which pull a replayed day would have stopped, and whether later pulls opened it again. */
    public static String of(Replay replay) {
        int pulls = replay.steps().size();
        if (replay.stoppedAfter().isEmpty()) {
            return "Would not have stopped within " + (pulls == 1 ? "this pull" : "these " + pulls + " pulls") + ".";
        }
        String stopped = "Would have stopped after pull "
                + replay.stoppedAfter().getAsInt() + " of " + pulls
                + (replay.pullsSaved() == 0 ? "." : " (" + replay.pullsSaved() + " fewer).");
        return replay.isOpenAgain() ? stopped + " Later pulls opened it again, and it has not stopped since." : stopped;
    }
}
