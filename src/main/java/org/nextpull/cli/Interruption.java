package org.nextpull.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Ends something that runs on in good order when the program is interrupted: the program waits until the command has told all. */
final class Interruption implements AutoCloseable {
    private static final long PATIENCE_S = 8;

    private final CountDownLatch told = new CountDownLatch(1);
    private final Thread hook;
    private volatile boolean interrupted;

    private Interruption(Runnable stop) {
        this.hook = new Thread(() -> end(stop), "interruption");
    }

    /** From now until it is closed an interruption stops what runs. */
    static Interruption ending(Runnable stop) {
        Interruption interruption = new Interruption(stop);
        Runtime.getRuntime().addShutdownHook(interruption.hook);
        return interruption;
    }

    private void end(Runnable stop) {
        interrupted = true;
        stop.run();
        try {
            if (!told.await(PATIENCE_S, TimeUnit.SECONDS)) {
                Thread.currentThread().interrupt();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** Exit status of the command so far. */
    int status() {
        return interrupted ? ExitCodes.INTERRUPTED : ExitCodes.DONE;
    }

    @Override
    public void close() {
        told.countDown();
        if (!interrupted) {
            Runtime.getRuntime().removeShutdownHook(hook);
        }
    }
}
