package org.nextpull.cli;

import java.io.Console;

/** Whether somebody sits at a terminal: both input and output are one. */
final class Terminal {
    private Terminal() {}

    /** Up to Java 21 there is no console without a terminal; from 22 on there always is one, and it can be asked. */
    @SuppressWarnings("SystemConsoleNull")
    static boolean isThere() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException before22) {
            return true;
        }
    }
}
