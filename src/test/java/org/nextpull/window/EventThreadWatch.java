package org.nextpull.window;

import java.awt.EventQueue;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import javax.swing.JComponent;
import javax.swing.RepaintManager;

/**
 * Watches the event thread: every part that is changed must be changed on it, and a knock on its door every few milliseconds tells how
 * long it was busy with something else. Parts that are not in a window yet may be built anywhere.
 */
final class EventThreadWatch implements AutoCloseable {
    private static final long KNOCK_MS = 10;

    private final List<String> trespasses = Collections.synchronizedList(new ArrayList<>());
    private final List<Long> waits = Collections.synchronizedList(new ArrayList<>());
    private final AtomicLong knockedNs = new AtomicLong();
    private final ScheduledExecutorService knocker = Executors.newSingleThreadScheduledExecutor();
    private final RepaintManager before;

    EventThreadWatch() {
        before = Edt.get(() -> RepaintManager.currentManager(null));
        Edt.run(() -> RepaintManager.setCurrentManager(new Checking()));
        var unused = knocker.scheduleAtFixedRate(this::knock, KNOCK_MS, KNOCK_MS, TimeUnit.MILLISECONDS);
    }

    /** One knock at a time, so that a long wait counts once. */
    private void knock() {
        if (knockedNs.compareAndSet(0, System.nanoTime())) {
            EventQueue.invokeLater(() -> waits.add((System.nanoTime() - knockedNs.getAndSet(0)) / 1_000_000));
        }
    }

    /** Parts that were changed on another thread. */
    List<String> trespasses() {
        return List.copyOf(trespasses);
    }

    /** Forgets the waits so far. */
    void again() {
        waits.clear();
    }

    /** The wait that a share of all knocks stayed below, in ms. */
    long waitMs(double share) {
        List<Long> sorted = new ArrayList<>(List.copyOf(waits));
        Collections.sort(sorted);
        return sorted.isEmpty() ? 0 : sorted.get((int) Math.min(sorted.size() - 1.0, share * sorted.size()));
    }

    private final class Checking extends RepaintManager {
        @Override
        public synchronized void addInvalidComponent(JComponent part) {
            check(part);
            super.addInvalidComponent(part);
        }

        @Override
        public void addDirtyRegion(JComponent part, int x, int y, int width, int height) {
            check(part);
            super.addDirtyRegion(part, x, y, width, height);
        }

        private void check(JComponent part) {
            if (!EventQueue.isDispatchThread() && part.isShowing()) {
                trespasses.add(part.getClass().getName() + " on "
                        + Thread.currentThread().getName());
            }
        }
    }

    @Override
    public void close() {
        knocker.shutdownNow();
        Edt.run(() -> RepaintManager.setCurrentManager(before));
    }
}
