package org.nextpull.cli;

import java.io.Console;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Whether somebody sits at a terminal: both input and output are one. */
final class Terminal {
    private static final int USUAL_WIDTH = 80;

    private Terminal() {}

    /** Characters that a line of the terminal holds; without one no line is ever too long. */
    static int width() {
        if (!isThere()) {
            return Integer.MAX_VALUE;
        }
        String columns = Optional.ofNullable(System.getenv("COLUMNS")).orElse("");
        return columns.matches("[1-9][0-9]{1,3}") ? Integer.parseInt(columns) : USUAL_WIDTH;
    }

    /** Whether a person sits there who is shown another charset than UTF-8. */
    @SuppressWarnings("SystemConsoleNull")
    static boolean isPlain() {
        Console console = System.console();
        return console != null && isThere() && !console.charset().equals(StandardCharsets.UTF_8);
    }

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
