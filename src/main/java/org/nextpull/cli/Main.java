package org.nextpull.cli;

import java.io.BufferedReader;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
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
        PrintWriter outWriter = new PrintWriter(plain(out), false);
        PrintWriter errWriter = new PrintWriter(plain(err), true);
        BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        int status = execute(args, new Console(outWriter, errWriter, reader));
        // a print stream keeps its own failures to itself
        boolean lost = outWriter.checkError() || out.checkError();
        if (lost && status == ExitCodes.DONE) {
            errWriter.println("The output could not be written.");
            status = ExitCodes.BAD_INPUT;
        }
        errWriter.flush();
        return status;
    }

    /** The last resort for what no bound further in has caught. */
    private static int execute(String[] args, Console console) {
        try {
            return Program.commandLine(console, args).execute(args);
        } catch (OutOfMemoryError full) {
            console.err()
                    .println(
                            "The memory of the program is full ("
                                    + Runtime.getRuntime().maxMemory() / (1 << 20)
                                    + " MB for all of it); give it fewer or shorter files, or give Java more memory with -Xmx.");
            return ExitCodes.BAD_INPUT;
        } catch (StackOverflowError | LinkageError | AssertionError fault) {
            return Program.fault(console, fault, false);
        }
    }

    /** What a program reads is UTF-8 always; a person at a terminal of another charset reads ASCII at least. */
    private static PlainWriter plain(PrintStream stream) {
        java.io.Console terminal = System.console();
        boolean inAscii = terminal != null && !terminal.charset().equals(StandardCharsets.UTF_8);
        return new PlainWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), inAscii);
    }
}
