package org.nextpull.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * What a start costs: the version, and the advice on the sample log, from the jar and from the installed image, where that was made, in
 * turn with a program that greets and does nothing else. The median of several rounds; ratios of one run can be compared.
 */
public final class StartBench {
    private static final int ROUNDS = 7;
    private static final List<String> NAMES = List.of(
            "hello",
            "the version from the jar",
            "advise from the jar",
            "advise from the jar, first compiler alone",
            "advise from the image");

    private static final String JAR = "target/nextpull.jar";
    private static final String IMAGE = "target/image/nextpull/bin/nextpull";

    private StartBench() {}

    /** The least that a command line of this kind does. */
    @Command(name = "hello", mixinStandardHelpOptions = true)
    static final class Hello implements Runnable {
        @Override
        public void run() {
            System.out.println("hello");
        }
    }

    /**
     * Runs the bench.
     *
     * @param args nothing; {@code hello} to greet
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        if (args.length > 0) {
            System.exit(new CommandLine(new Hello()).execute());
        }
        List<String> advise =
                List.of("advise", "--plan", "sweep-plans/hillclimb-e10-day.toml", "sample-logs/hillclimb-e10-day.csv");
        String java = LogBench.javaCommand();
        List<List<String>> lines = new ArrayList<>();
        lines.add(LogBench.java(List.of(), StartBench.class.getName(), "hello"));
        lines.add(List.of(java, "-jar", JAR, "--version"));
        lines.add(with(List.of(java, "-jar", JAR), advise));
        lines.add(with(List.of(java, "-XX:TieredStopAtLevel=1", "-jar", JAR), advise));
        if (new java.io.File(IMAGE).canExecute()) {
            lines.add(with(List.of(IMAGE), advise));
        }
        double[][] seconds = new double[lines.size()][ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            for (int line = 0; line < lines.size(); line++) {
                seconds[line][round] = LogBench.run("start", lines.get(line)).seconds();
            }
        }
        for (int line = 0; line < lines.size(); line++) {
            System.out.printf(
                    Locale.ROOT,
                    "%s: %.2f s, %.1f times hello%n",
                    NAMES.get(line),
                    median(seconds[line]),
                    median(seconds[line]) / median(seconds[0]));
        }
    }

    private static List<String> with(List<String> program, List<String> words) {
        List<String> line = new ArrayList<>(program);
        line.addAll(words);
        return line;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        java.util.Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
