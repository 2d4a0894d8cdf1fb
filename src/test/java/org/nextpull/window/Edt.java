package org.nextpull.window;

import java.awt.EventQueue;
import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Asks the event thread, and waits until it shows something. */
final class Edt {

    private Edt() {}

    static <T> T get(Supplier<T> question) {
        AtomicReference<@Nullable T> answer = new AtomicReference<>();
        run(() -> answer.set(question.get()));
        T value = answer.get();
        if (value == null) {
            throw new AssertionError("no answer from the event thread");
        }
        return value;
    }

    static void run(Runnable task) {
        try {
            EventQueue.invokeAndWait(task);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError("interrupted", stopped);
        } catch (InvocationTargetException fault) {
            throw new AssertionError("the event thread failed", fault.getCause());
        }
    }
}
