package org.nextpull.window.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.nextpull.advice.Verdict;
import org.nextpull.app.DaySheet;
import org.nextpull.live.LiveSession;
import org.nextpull.live.LiveState;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.Replay;
import org.nextpull.session.SessionResult;
import org.tinylog.Logger;

/** A running session as a source of the window: started and ended on a thread of its own, since both may take long. */
public final class RunningDay implements DaySource {
    private final String name;
    private final Function<LiveSession.Listener, LiveSession> starter;
    private final Map<Integer, Verdict> said = new TreeMap<>();
    private volatile Consumer<DaySource.Moment> watcher = moment -> {};
    private @Nullable LiveSession session;
    private boolean closed;

    /**
     * A session that is started when the window asks for it.
     *
     * @param name what the operator calls it
     * @param starter starts it
     */
    public RunningDay(String name, Function<LiveSession.Listener, LiveSession> starter) {
        this.name = name;
        this.starter = starter;
    }

    @Override
    public void start(Consumer<DaySource.Moment> newWatcher) {
        watcher = newWatcher;
        aside("nextpull-window-start", () -> {
            LiveSession started = starter.apply(new LiveSession.Listener() {
                @Override
                public void changed(LiveState state) {
                    show(state);
                }
            });
            keep(started);
            show(started.state());
        });
    }

    private synchronized void keep(LiveSession started) {
        session = started;
        if (closed) {
            aside("nextpull-window-end", started::close);
        }
    }

    private void show(LiveState state) {
        remember(state.result());
        watcher.accept(new DaySource.Moment(name, state.result(), Optional.empty(), Optional.of(state)));
    }

    /** The latest that was said after each count of pulls is what was said after it. */
    private synchronized void remember(SessionResult result) {
        int pulls = result.measured().size();
        if (pulls > 0) {
            result.verdict().ifPresent(verdict -> said.put(pulls, verdict));
        }
    }

    @Override
    public Optional<DaySource.Player> player() {
        return Optional.empty();
    }

    @Override
    public synchronized void tell(OperatorAction act) {
        if (session == null) {
            Logger.warn("the session has not begun: what was asked for was left out");
        } else {
            session.tell(act);
        }
    }

    @Override
    public synchronized DaySheet sheet() {
        if (session == null) {
            throw new IllegalStateException("the session has not begun");
        }
        SessionResult result = session.state().result();
        List<Replay.Step> steps = new ArrayList<>();
        for (int count = 1; count <= result.measured().size(); count++) {
            MeasuredPull.Curve last = result.measured().get(count - 1);
            Optional.ofNullable(said.get(count))
                    .ifPresent(verdict -> steps.add(new Replay.Step(last.pull(), last.alarms(), verdict)));
        }
        return DaySheet.ofRunning(new Replay(result, steps, List.of()));
    }

    /** Waits for the session's own end without holding what its thread needs to get there. */
    @Override
    public void close() {
        running().ifPresent(LiveSession::close);
    }

    private synchronized Optional<LiveSession> running() {
        closed = true;
        return Optional.ofNullable(session);
    }

    private static void aside(String name, Runnable task) {
        Thread thread = new Thread(
                () -> {
                    try {
                        task.run();
                    } catch (RuntimeException fault) {
                        Logger.error(fault, "a session could not be started or ended");
                    }
                },
                name);
        thread.start();
    }
}
