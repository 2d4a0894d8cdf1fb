package org.nextpull.cli;

import java.io.BufferedReader;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Starts the program. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        boolean needsDisplay = args.length > 0 && args[0].equals("window");
        if (!needsDisplay) {
            System.setProperty("java.awt.headless", System.getProperty("java.awt.headless", "true"));
        }
        System.exit(run(args, System.in, System.out, System.err));
    }

    /** Runs one command and gives its exit status; prints and reads in UTF-8. */
    static int run(String[] args, InputStream in, PrintStream out, PrintStream err) {
        PrintWriter outWriter = new PrintWriter(out, false, StandardCharsets.UTF_8);
        PrintWriter errWriter = new PrintWriter(err, true, StandardCharsets.UTF_8);
        BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        int status =
                Program.commandLine(new Console(outWriter, errWriter, reader)).execute(args);
        outWriter.flush();
        errWriter.flush();
        return status;
    }
}
