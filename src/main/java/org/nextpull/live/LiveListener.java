package org.nextpull.live;

import org.nextpull.alarm.Alarm;
import org.nextpull.finding.Finding;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.response.MeasuredPull;

/** Told of what happens in a session, on the session's own thread: whoever takes long here delays alarms. */
public interface LiveListener {
    /** Something changed: at most ten times a second, but at once after a pull, an alarm or a change of a link. */
    default void changed(LiveState state) {}

    /**
     * A pull ended, was measured and is in the result.
     *
     * @param pull the pull
     */
    default void pullEnded(LiveState state, MeasuredPull.Curve pull) {}

    /** A limit was passed, got worse or is within again. */
    default void alarm(Alarm.Event event, LiveState state) {}

    /** Something is to be said. */
    default void said(ArrivalTime at, Finding finding) {}
}
