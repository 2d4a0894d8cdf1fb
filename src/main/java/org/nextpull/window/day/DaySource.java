package org.nextpull.window.day;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.nextpull.app.DaySheet;
import org.nextpull.live.LiveState;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.SessionResult;

/** Where a day comes from. Nothing here waits for anything: what it says comes to the watcher, on a thread of the source. */
public interface DaySource extends AutoCloseable {
    /** Starts, once; the watcher hears of every change and must not wait either. */
    void start(Consumer<Moment> watcher);

    /** The keys that pause and step; empty for a running session. */
    Optional<Player> player();

    /** Does what the operator asks for; what comes of it is told to the watcher. */
    void tell(OperatorAction act);

    /** The day so far with what was said after each pull; may take long, so not for the event thread. */
    DaySheet sheet();

    @Override
    void close();

    /**
     * A day at one moment: all that a page can show of it. Immutable.
     *
     * @param source where the day comes from, as the operator named it
     * @param result what the tool says about it
     * @param playback how far a day is that is gone through again; empty for a running one
     * @param running links, capture and alarms of a running day; empty for one that is gone through again
     */
    record Moment(String source, SessionResult result, Optional<Playback> playback, Optional<LiveState> running) {
        /** What is left of the time that the plan wants before the next pull, in s; a day that is gone through again waits for nothing. */
        public OptionalDouble coolDownS() {
            return running.map(LiveState::waitBeforeNextS).orElse(OptionalDouble.empty());
        }
    }

    /** The keys of a day that is gone through again. Every method returns at once. */
    interface Player {
        /** Changes how the day goes on. */
        void play(UnaryOperator<Playback> change);

        default void pauseOrGoOn() {
            play(Playback::pauseOrGoOn);
        }

        default void forth() {
            play(playback -> playback.step(1));
        }

        default void back() {
            play(playback -> playback.step(-1));
        }

        default void faster() {
            play(Playback::faster);
        }

        default void slower() {
            play(Playback::slower);
        }
    }
}
