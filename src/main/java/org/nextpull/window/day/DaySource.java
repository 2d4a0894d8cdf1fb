package org.nextpull.window.day;

import java.util.Optional;
import java.util.function.Consumer;
import org.nextpull.app.DaySheet;
import org.nextpull.session.OperatorAction;

/** Where a day comes from. Nothing here waits for anything: what it says comes to the watcher, on a thread of the source. */
public interface DaySource extends AutoCloseable {
    /** Starts, once; the watcher hears of every change and must not wait either. */
    void start(Consumer<DayMoment> watcher);

    /** The keys that pause and step; empty for a running session. */
    Optional<Player> player();

    /** Does what the operator asks for; what comes of it is told to the watcher. */
    void tell(OperatorAction act);

    /** The day so far with what was said after each pull; may take long, so not for the event thread. */
    DaySheet sheet();

    @Override
    void close();
}
