package org.nextpull.window.page;

import java.awt.EventQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.tinylog.Logger;

/** The threads of a window: one that reads, fits and writes, one that draws charts, and the event thread, which only shows. */
public final class Work implements AutoCloseable {
    private final ExecutorService thinking = single("nextpull-window-work");
    private final ExecutorService drawing = single("nextpull-window-charts");

    private static ExecutorService single(String name) {
        return Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Runs a task away from the event thread, one after the other. */
    public void think(Runnable task) {
        run(thinking, task);
    }

    /** Works something out away from the event thread and shows it on it. */
    public <T> void think(Supplier<T> task, Consumer<T> shown) {
        think(() -> {
            T result = task.get();
            EventQueue.invokeLater(() -> shown.accept(result));
        });
    }

    /** Draws away from the event thread. */
    public void draw(Runnable task) {
        run(drawing, task);
    }

    private static void run(ExecutorService executor, Runnable task) {
        try {
            executor.execute(() -> {
                try {
                    task.run();
                } catch (RuntimeException | Error fault) {
                    Logger.error(fault, "a task of the window failed");
                    throw fault;
                }
            });
        } catch (RejectedExecutionException closed) {
            Logger.debug("the window is closed; a task was left out");
        }
    }

    @Override
    public void close() {
        thinking.shutdownNow();
        drawing.shutdownNow();
    }

    /**
     * Hands values over to another thread, the latest only: a receiver that is slower than the giver skips, and no queue grows.
     *
     * @param <T> what is handed over
     */
    public static final class Latest<T> {
        private final Executor executor;
        private final Consumer<T> receiver;
        private final AtomicReference<@Nullable T> waiting = new AtomicReference<>();

        /**
         * A hand-over.
         *
         * @param executor runs the receiver
         * @param receiver takes the values
         */
        public Latest(Executor executor, Consumer<T> receiver) {
            this.executor = executor;
            this.receiver = receiver;
        }

        /** Gives a value; never waits. */
        public void give(T value) {
            if (waiting.getAndSet(value) == null) {
                executor.execute(this::take);
            }
        }

        private void take() {
            T value = waiting.getAndSet(null);
            if (value != null) {
                receiver.accept(value);
            }
        }
    }
}
