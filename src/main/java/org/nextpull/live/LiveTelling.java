package org.nextpull.live;

import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.nextpull.alarm.Alarm;
import org.nextpull.intake.wire.ArrivalQueue;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;

/** What a session tells as it runs: to its listener, of changes no more than ten times a second, and to its captures. */
final class LiveTelling implements DayEvents {
    private static final long PERIOD_NS = 100_000_000;

    private final LiveSession.Listener listener;
    private final Captures captures;
    private final ArrivalQueue queue;
    private final Supplier<LiveState> now;
    private volatile @Nullable LiveState state;
    private boolean urgent;
    private boolean dirty;
    private long shownNs;

    /**
     * A teller.
     *
     * @param now the session as it is; not asked before something is to be told
     */
    LiveTelling(LiveSession.Listener listener, Captures captures, ArrivalQueue queue, Supplier<LiveState> now) {
        this.listener = listener;
        this.captures = captures;
        this.queue = queue;
        this.now = now;
    }

    /** The session as it was told last, on any thread. */
    LiveState state() {
        return Objects.requireNonNull(state, "has not begun");
    }

    /** Looks at the session; the first time before another thread may ask. */
    LiveState snapshot() {
        LiveState fresh = now.get();
        state = fresh;
        return fresh;
    }

    /** Something arrived. */
    void dirty() {
        dirty = true;
    }

    /** Tells that something changed, if it did and it is time. */
    void show(boolean atOnce) {
        long nowNs = System.nanoTime();
        if (!atOnce && !urgent && (!dirty || nowNs - shownNs < PERIOD_NS)) {
            return;
        }
        shownNs = nowNs;
        urgent = false;
        dirty = false;
        listener.changed(snapshot());
    }

    @Override
    public void alarm(Alarm.Event event) {
        listener.alarm(event, snapshot());
        urgent = true;
    }

    @Override
    public void said(LiveState.Notice notice) {
        listener.said(notice.at(), notice.finding());
        dirty = true;
    }

    @Override
    public void pullFound() {
        captures.syncSoon();
    }

    @Override
    public void pullEnded(MeasuredPull.Curve pull) {
        listener.pullEnded(snapshot(), pull);
        urgent = true;
    }

    @Override
    public void acted(OperatorAction act) {
        captures.received(Chunk.of(OperatorLines.SOURCE, queue.now(), OperatorLines.line(act)));
    }

    @Override
    public void changed() {
        urgent = true;
    }
}
