package org.nextpull.window.day;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.live.LiveState;
import org.nextpull.session.SessionResult;

/**
 * A day at one moment: all that a page can show of it. Immutable.
 *
 * @param source where the day comes from, as the operator named it
 * @param result what the tool says about it
 * @param playback how far a day is that is gone through again; empty for a running one
 * @param running links, capture and alarms of a running day; empty for one that is gone through again
 */
public record DayMoment(String source, SessionResult result, Optional<Playback> playback, Optional<LiveState> running) {
    /** What is left of the time that the plan wants before the next pull, in s; a day that is gone through again waits for nothing. */
    public OptionalDouble coolDownS() {
        return running.map(LiveState::waitBeforeNextS).orElse(OptionalDouble.empty());
    }
}
