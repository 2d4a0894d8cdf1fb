package org.nextpull.live;

import org.nextpull.alarm.Alarm;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;

/** What a running day has to tell, on the thread that feeds it. */
interface DayEvents {
    /** A limit was passed, got worse or is within again. */
    void alarm(Alarm.Event event);

    /** Something is to be said. */
    void said(LiveState.Notice notice);

    /** A pull is over; it is not measured yet. */
    void pullFound();

    /** A pull is in the result. */
    void pullEnded(MeasuredPull.Curve pull);

    /** The day did an act of its own accord, which is to be captured. */
    void acted(OperatorAction act);

    /** Something changed that is to be shown at once. */
    void changed();
}
