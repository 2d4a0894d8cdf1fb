package org.nextpull.live;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.nextpull.finding.Finding;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;

/**
 * Keeps a session beyond its end. What cannot be kept is said by {@link #news} and never stops the session: no method throws. Called on
 * one thread, which is not that of the alarms.
 */
public interface Keeper {
    /** Id of the session; empty when it is kept nowhere. May be asked on any thread. */
    OptionalLong session();

    /**
     * Keeps the day as it now stands, and what was advised. Its pulls are all final.
     *
     * @param at now
     * @param input what the result was made from
     * @param result the day so far
     */
    void day(Instant at, SessionInput input, SessionResult result);

    /** Keeps the acts of a session that is gone on with, as far as they are not kept yet. */
    void earlier(Instant at, List<OperatorAction> acts);

    /** Keeps an act. */
    void act(Instant at, OperatorAction act);

    /** The session has ended. */
    void close(Instant at);

    /** What is to be said since this was asked last; may be asked on any thread. */
    List<Finding> news();

    /** Why nothing is kept at the moment; empty while all is well. May be asked on any thread. */
    Optional<Finding> failing();

    /** Keeps nothing. */
    static Keeper none() {
        return new Keeper() {
            @Override
            public OptionalLong session() {
                return OptionalLong.empty();
            }

            @Override
            public void day(Instant at, SessionInput input, SessionResult result) {}

            @Override
            public void earlier(Instant at, List<OperatorAction> acts) {}

            @Override
            public void act(Instant at, OperatorAction act) {}

            @Override
            public void close(Instant at) {}

            @Override
            public List<Finding> news() {
                return List.of();
            }

            @Override
            public Optional<Finding> failing() {
                return Optional.empty();
            }
        };
    }
}
