package org.nextpull.live;

import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import org.nextpull.finding.Finding;
import org.nextpull.session.Act;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;

/**
 * Keeps a session beyond its end. What cannot be kept is said by {@link #news} and never stops the session: no method throws. Called on
 * one thread, which is not that of the alarms.
 */
public interface Keeper {
    /** Id of the session; empty when it is kept nowhere. */
    OptionalLong session();

    /**
     * Keeps the pulls of a result that are not kept yet, and what was advised after them.
     *
     * @param at now
     * @param input what the result was made from
     * @param result the day so far
     * @param whole the pulls up to this number are final; later ones are kept when they are
     */
    void pulls(Instant at, SessionInput input, SessionResult result, int whole);

    /** Keeps an act. */
    void act(Instant at, Act act);

    /** The session has ended. */
    void close(Instant at);

    /** What is to be said since this was asked last. */
    List<Finding> news();

    /** Keeps nothing. */
    static Keeper none() {
        return new Keeper() {
            @Override
            public OptionalLong session() {
                return OptionalLong.empty();
            }

            @Override
            public void pulls(Instant at, SessionInput input, SessionResult result, int whole) {}

            @Override
            public void act(Instant at, Act act) {}

            @Override
            public void close(Instant at) {}

            @Override
            public List<Finding> news() {
                return List.of();
            }
        };
    }
}
