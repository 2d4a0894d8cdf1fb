package org.nextpull.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Keeps the trace of a fault of the program in a file, so that no user meets one. */
final class FaultLog {
    private FaultLog() {}

    /** Writes the trace and gives the name of the file, or says that it could not be written. */
    static String write(Throwable fault) {
        try {
            Path file = Files.createTempFile("nextpull-fault-", ".log");
            try (PrintWriter writer = new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
                fault.printStackTrace(writer);
            }
            return file.toString();
        } catch (IOException full) {
            return "(which could not be written: " + full.getMessage() + ")";
        }
    }
}
