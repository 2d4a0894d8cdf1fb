package org.nextpull.window.work;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Hands values over to another thread, the latest only: a receiver that is slower than the giver skips, and no queue grows.
 *
 * @param <T> what is handed over
 */
public final class Latest<T> {
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
