package org.nextpull.live;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.nextpull.alarm.Alarm;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.fit.Experience;
import org.nextpull.intake.capture.CaptureFolder;
import org.nextpull.intake.folder.FolderMemory;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalQueue;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.SessionClock;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;
import org.tinylog.Logger;

/**
 * A session that runs: captures what arrives, sounds alarms, finds pulls and advises, until it is closed. Where its folder holds
 * captures already, it goes on with that session. Safe for several threads; everything is told on the session's own thread.
 */
public final class LiveSession implements AutoCloseable {
    private static final long WAIT_MS = 20;
    private static final long LAST_ANSWER_S = 20;

    private final Setup setup;
    private final CaptureFolder folder;
    private final List<Finding> resumption;
    private final ArrivalQueue queue;
    private final Captures captures;
    private final ExecutorService deskThread;
    private final AdviceDesk desk;
    private final LiveDay day;
    private final Thread thread;
    private final LiveTelling telling;
    private final CountDownLatch played = new CountDownLatch(1);
    private volatile boolean closing;

    private LiveSession(Setup setup, Listener listener) {
        this.setup = setup;
        this.folder = new CaptureFolder(setup.captures());
        CaptureFolder.Resumption resumed = resume(folder, setup.clock());
        SessionClock clock = resumed.clock();
        this.resumption = resumed.findings();
        this.queue = new ArrivalQueue(clock);
        DayIntake intake = new DayIntake(setup.intake());
        List<String> names = new ArrayList<>(intake.names());
        names.add(OperatorLines.SOURCE);
        this.captures = new Captures(folder, names, clock);
        this.deskThread = Executors.newSingleThreadExecutor(work -> {
            Thread made = new Thread(work, "live-desk");
            made.setDaemon(true);
            return made;
        });
        this.desk = new AdviceDesk(deskThread, setup.keeper());
        this.telling = new LiveTelling(listener, captures, queue, this::snapshot);
        this.day = new LiveDay(setup, clock.now(), desk, telling);
        telling.snapshot();
        this.thread = new Thread(this::run, "live-session");
    }

    /**
     * Starts a session; looks through earlier captures in its folder first, which takes as long as they are: before that it would ask for
     * a first pull once more.
     */
    public static LiveSession start(Setup setup, Listener listener) {
        LiveSession session = new LiveSession(setup, listener);
        session.thread.start();
        try {
            session.played.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return session;
    }

    private static CaptureFolder.Resumption resume(CaptureFolder folder, Setup.Clock clock) {
        try {
            return folder.resume(clock.monotonicNs(), clock.wall());
        } catch (IOException fault) {
            return new CaptureFolder.Resumption(
                    SessionClock.starting(clock.monotonicNs(), clock.wall()), List.of(unreadable(fault)));
        }
    }

    private static Finding unreadable(IOException fault) {
        return Finding.error(
                FindingCode.LIVE_CAPTURES_UNREADABLE,
                Place.nowhere(),
                Detail.of("why", String.valueOf(fault.getMessage())));
    }

    /** Does what the operator asks for, in the order of asking; what cannot be done is said. */
    public void tell(OperatorAction act) {
        queue.words(OperatorLines.SOURCE, OperatorLines.line(act));
    }

    /** The session as it was shown last. */
    public LiveState state() {
        return telling.state();
    }

    /** Ends the session in good order and waits for it. */
    @Override
    public void close() {
        closing = true;
        awaitEnd();
    }

    /** Waits until the session was closed and has ended. */
    public void awaitEnd() {
        boolean interrupted = false;
        while (thread.isAlive()) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        // held until the last byte is written: two programs that keep one session would spoil it
        try (SessionFolders.Claim held = setup.claim()) {
            FolderMemory before = playEarlier();
            played.countDown();
            LiveIntake.Readers readers = setup.intake().read(setup.opener(), queue, before);
            PracticeDay.runBeside(setup);
            try {
                while (!closing) {
                    step(WAIT_MS);
                }
            } finally {
                readers.close();
                end();
            }
            Logger.debug("{} is free again", held.folder());
        } finally {
            played.countDown();
        }
    }

    private FolderMemory playEarlier() {
        DayIntake intake = new DayIntake(setup.intake());
        EarlierCaptures earlier = new EarlierCaptures(intake.names());
        day.replaying();
        try {
            earlier.play(
                    folder,
                    arrival -> guarded(() -> {
                        captures.count(arrival);
                        day.accept(arrival);
                    }));
        } catch (IOException fault) {
            day.say(queue.now(), unreadable(fault));
        }
        guarded(() -> {
            if (!resumption.isEmpty()) {
                intake.names()
                        .forEach(name -> day.accept(new Arrival.Lost(name, queue.now(), Arrival.Cause.STOPPED, 0)));
                day.tick(queue.now());
            }
            day.goOn();
        });
        resumption.forEach(finding -> day.say(queue.now(), finding));
        earlier.findings().forEach(finding -> day.say(queue.now(), finding));
        telling.show(true);
        return earlier.folder();
    }

    private void step(long waitMs) {
        Optional<Arrival> arrival = take(waitMs);
        arrival.ifPresent(captures::received);
        guarded(() -> {
            if (arrival.isPresent()) {
                day.accept(arrival.get());
                telling.dirty();
            } else {
                day.tick(queue.now());
            }
            day.takeAnswers();
            captures.news(queue.now()).forEach(finding -> day.say(queue.now(), finding));
            setup.keeper().news().forEach(finding -> day.say(queue.now(), finding));
        });
        telling.show(day.takeLinkChange());
    }

    private Optional<Arrival> take(long waitMs) {
        try {
            return queue.take(waitMs);
        } catch (InterruptedException e) {
            closing = true;
            return Optional.empty();
        }
    }

    /** A fault in the program must not end a session while an engine runs. */
    private void guarded(Runnable work) {
        try {
            work.run();
        } catch (RuntimeException fault) {
            Logger.error(fault, "a fault in a running session");
            day.say(
                    queue.now(),
                    Finding.error(FindingCode.LIVE_FAULT, Place.nowhere(), Detail.of("why", fault.toString())));
        }
    }

    private LiveState snapshot() {
        return day.state(captures.state(), setup.keeper());
    }

    private void end() {
        while (queue.heldBytes() > 0) {
            step(0);
        }
        step(0);
        guarded(() -> day.finish(queue.now()));
        desk.close(Instant.ofEpochMilli(queue.now().wallMs()));
        deskThread.shutdown();
        try {
            if (!deskThread.awaitTermination(LAST_ANSWER_S, TimeUnit.SECONDS)) {
                Logger.warn("the last advice was not worked out in {} s", LAST_ANSWER_S);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        guarded(day::takeAnswers);
        captures.close();
        captures.news(queue.now()).forEach(finding -> day.say(queue.now(), finding));
        telling.show(true);
    }

    /** Told of what happens in a session, on the session's own thread: whoever takes long here delays alarms. */
    public interface Listener {
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

    /**
     * What a session is started with.
     *
     * @param plan the sweep plan
     * @param intake what it reads from
     * @param claim on the folder of this session, one that holds captures is gone on with; the session gives it back when it has ended
     * @param experience what earlier days taught
     * @param keeper the notebook
     * @param opener opens ports
     * @param clock where the time comes from
     */
    public record Setup(
            SweepPlan plan,
            LiveIntake intake,
            SessionFolders.Claim claim,
            Optional<Experience> experience,
            Keeper keeper,
            Port.Opener opener,
            Clock clock) {
        /** The folder of this session. */
        public Path captures() {
            return claim.folder();
        }

        /**
         * Two clocks.
         *
         * @param monotonicNs never goes back
         * @param wall as the computer's clock has it
         */
        public record Clock(LongSupplier monotonicNs, InstantSource wall) {
            public static Clock system() {
                return new Clock(System::nanoTime, InstantSource.system());
            }
        }
    }
}
