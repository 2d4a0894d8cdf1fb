package org.nextpull.window.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.nextpull.app.DayInput;
import org.nextpull.app.DaySheet;
import org.nextpull.session.Amendments;
import org.nextpull.session.DayByPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.OperatorActions;
import org.nextpull.session.Replay;
import org.nextpull.session.SessionResult;
import org.tinylog.Logger;

/** A day gone through again pull by pull. Logs are read and pulls fitted on a thread of its own, each state when it is first shown. */
public final class ReplayedDay implements DaySource, DaySource.Player {
    private static final long TICK_MS = 100;
    private static final double FIRST_SPEED_S = 4;
    private final boolean atEnd;

    private final String name;
    private final DayInput input;
    private final Supplier<DayByPull> reader;
    private final ScheduledExecutorService thread;
    private volatile Consumer<DaySource.Moment> watcher = moment -> {};
    private volatile @Nullable Future<?> ticks;
    private @Nullable DayByPull day;
    private final List<OperatorAction> acts;
    private Playback playback = Playback.start(0, FIRST_SPEED_S);

    private ReplayedDay(String name, DayInput input, boolean atEnd, Supplier<DayByPull> reader) {
        this.atEnd = atEnd;
        this.name = name;
        this.input = input;
        this.reader = reader;
        this.acts = new ArrayList<>(earlier(input.session().amendments()));
        this.thread = Executors.newSingleThreadScheduledExecutor(task -> {
            Thread made = new Thread(task, "nextpull-window-day");
            made.setDaemon(true);
            return made;
        });
    }

    /**
     * A day whose logs were read before, or one of the notebook.
     *
     * @param name what the operator calls it
     */
    public static ReplayedDay of(String name, DayInput input) {
        return new ReplayedDay(name, input, false, () -> DayByPull.of(input.session(), input.sources()));
    }

    /** The same, shown at its end at first. */
    public static ReplayedDay atEnd(String name, DayInput input) {
        return new ReplayedDay(name, input, true, () -> DayByPull.of(input.session(), input.sources()));
    }

    /** What was done by hand before, as acts, so that more can be done. */
    private static List<OperatorAction> earlier(Amendments amendments) {
        List<OperatorAction> acts = new ArrayList<>();
        amendments
                .corrected()
                .forEach((pull, setting) -> acts.add(
                        amendments.assumed().contains(pull)
                                ? new OperatorAction.Setting(pull, setting, true)
                                : new OperatorAction.Correct(pull, setting)));
        amendments.struck().forEach((pull, why) -> acts.add(new OperatorAction.Strike(pull, why)));
        amendments.lifted().forEach(pull -> acts.add(new OperatorAction.Lift(pull, "")));
        if (!amendments.ownWatch().isEmpty()) {
            acts.add(new OperatorAction.OwnWatch(List.copyOf(amendments.ownWatch())));
        }
        return acts;
    }

    @Override
    public void start(Consumer<DaySource.Moment> newWatcher) {
        watcher = newWatcher;
        run(() -> {
            DayByPull read = reader.get();
            day = read;
            Playback start = Playback.start(read.pulls(), FIRST_SPEED_S);
            playback = atEnd ? start.step(read.pulls()) : start;
            tell();
        });
        ticks = thread.scheduleAtFixedRate(() -> guarded(this::tick), TICK_MS, TICK_MS, TimeUnit.MILLISECONDS);
    }

    private void tick() {
        Playback before = playback;
        playback = before.after(TICK_MS / 1000.0);
        if (playback.shown() != before.shown() || playback.paused() != before.paused()) {
            tell();
        }
    }

    @Override
    public void play(UnaryOperator<Playback> change) {
        run(() -> {
            playback = change.apply(playback);
            tell();
        });
    }

    @Override
    public void tell(OperatorAction act) {
        run(() -> {
            acts.add(act);
            if (day != null) {
                day = day.with(OperatorActions.of(acts).applied(input.session()));
                tell();
            }
        });
    }

    private void tell() {
        if (day != null) {
            SessionResult result = day.after(playback.shown());
            watcher.accept(new DaySource.Moment(name, result, Optional.of(playback), Optional.empty()));
        }
    }

    @Override
    public Optional<DaySource.Player> player() {
        return Optional.of(this);
    }

    @Override
    public DaySheet sheet() {
        try {
            Replay replay = thread.submit(() -> (day == null ? reader.get() : day).replay(playback.shown()))
                    .get();
            return DaySheet.of(input, replay);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while the day was gone through", stopped);
        } catch (ExecutionException fault) {
            throw new IllegalStateException("the day could not be gone through", fault.getCause());
        }
    }

    private void run(Runnable task) {
        try {
            thread.execute(() -> guarded(task));
        } catch (RejectedExecutionException closed) {
            Logger.debug("the day is closed; a key was left out");
        }
    }

    /** A task that throws would end the ticks without a word. */
    private static void guarded(Runnable task) {
        try {
            task.run();
        } catch (RuntimeException fault) {
            Logger.error(fault, "a step of the day failed");
        }
    }

    @Override
    public void close() {
        Future<?> running = ticks;
        if (running != null) {
            running.cancel(true);
        }
        thread.shutdownNow();
    }
}
