package org.nextpull;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/** Waiting in tests: for what happens on another thread, with an end to it, or for a moment where a test plays a sender that keeps a pace. */
public final class Await {
    /** Far more than any machine needs; then it never will be. */
    private static final Duration PATIENCE = Duration.ofMinutes(1);

    private static final long LOOK_NS = 10_000_000;

    private Await() {}

    /** Waits until something is so, for a minute at most. */
    public static void until(String what, BooleanSupplier isSo) {
        until(what, PATIENCE, isSo);
    }

    /** Waits until something is so, and fails when it is not within a time. */
    public static void until(String what, Duration most, BooleanSupplier isSo) {
        if (!comes(most, isSo)) {
            throw new AssertionError("not within " + most.toSeconds() + " s: " + what);
        }
    }

    /** Whether something becomes so within a time. An interrupted thread does not wait for it. */
    public static boolean comes(Duration most, BooleanSupplier isSo) {
        long end = System.nanoTime() + most.toNanos();
        while (!isSo.getAsBoolean()) {
            if (System.nanoTime() > end || Thread.currentThread().isInterrupted()) {
                return false;
            }
            LockSupport.parkNanos(LOOK_NS);
        }
        return true;
    }

    /** Lets a time pass of which nothing tells that it is over. */
    public static void pass(Duration time) {
        moment(System.nanoTime() + time.toNanos());
    }

    /** Waits for a moment of {@link System#nanoTime}; one that is gone by is now. An interrupted thread does not wait for it. */
    public static void moment(long nanoTime) {
        while (System.nanoTime() < nanoTime && !Thread.currentThread().isInterrupted()) {
            LockSupport.parkNanos(nanoTime - System.nanoTime());
        }
    }
}
