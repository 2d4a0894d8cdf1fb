package org.nextpull.window.day;

import java.util.Optional;
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
public record DayMoment(
        String source, SessionResult result, Optional<Playback> playback, Optional<LiveState> running) {}
