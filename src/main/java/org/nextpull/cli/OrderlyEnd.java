package org.nextpull.cli;

/**
 * Ends a command in good order when it is interrupted: by Ctrl-C, or by a system that shuts down. The process then ends with the status
 * of an interrupted program, whatever the signal.
 */
final class OrderlyEnd {
    private final Thread hook;
    private final Runnable orderly;

    private OrderlyEnd(Runnable orderly) {
        this.orderly = orderly;
        this.hook = new Thread(this::interrupted, "ending");
    }

    /** From now on an interruption ends the command by this, which must not take long. */
    static OrderlyEnd by(Runnable orderly) {
        OrderlyEnd ending = new OrderlyEnd(orderly);
        Runtime.getRuntime().addShutdownHook(ending.hook);
        return ending;
    }

    private void interrupted() {
        try {
            orderly.run();
        } finally {
            // the other hooks have nothing to add, and the status of the signal is not ours
            Runtime.getRuntime().halt(ExitCodes.INTERRUPTED);
        }
    }

    /** The command ended by itself. */
    void done() {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException alreadyInterrupted) {
            waitForEnd();
        }
    }

    /** The program is being interrupted while the command ends: the hook brings it to its end. */
    private void waitForEnd() {
        try {
            hook.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
