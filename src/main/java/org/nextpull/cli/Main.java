package org.nextpull.cli;

import java.io.BufferedReader;
import java.io.FilterWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Map;

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
        return new PlainWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), Terminal.isPlain());
    }

    /**
     * Hands on text without what a terminal takes for a command. Names of files, labels, plans and typed lines come from elsewhere: printed as
     * they are, an escape code in one of them could hide or forge what stands beside it. The bell stays, since alarms ring it. A terminal
     * that shows no UTF-8 gets the signs of units in plain ASCII.
     */
    static final class PlainWriter extends FilterWriter {
        private static final char INSTEAD = '?';
        private static final Map<Character, String> IN_ASCII =
                Map.of('°', "deg", '·', ".", '²', "2", '³', "3", '±', "+-", 'µ', "u");

        private final boolean inAscii;

        /**
         * Writes through.
         *
         * @param inAscii whether what reads it knows no signs beyond ASCII
         */
        PlainWriter(Writer out, boolean inAscii) {
            super(out);
            this.inAscii = inAscii;
        }

        @Override
        public void write(int c) throws IOException {
            write(String.valueOf((char) c));
        }

        @Override
        public void write(char[] text, int offset, int length) throws IOException {
            StringBuilder plain = new StringBuilder(length);
            for (int at = offset; at < offset + length; at++) {
                plain.append(inAscii ? IN_ASCII.getOrDefault(text[at], plain(text[at])) : plain(text[at]));
            }
            out.write(plain.toString());
        }

        @Override
        public void write(String text, int offset, int length) throws IOException {
            write(text.toCharArray(), offset, length);
        }

        private static String plain(char c) {
            boolean wanted = c == '\n' || c == '\r' || c == '\t' || c == '\u0007';
            return String.valueOf(wanted || !Character.isISOControl(c) ? c : INSTEAD);
        }
    }
}
