package org.nextpull.bench;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Reads one generated log in turn with {@code cat}, the CSV library that only cuts fields, an analytical database over JDBC, and this program:
 * in a small heap, as a user starts the jar, and from the installed image where there is one. Each is a process of its own; printed are time,
 * processor time, memory and how many times as long as this program in the small heap each took. The ratios of one run can be compared; the
 * times of two runs cannot.
 */
public final class LogBench {
    private static final int SECONDS_APART = 55;
    private static final Path IMAGE = Path.of("target", "image", "nextpull", "bin", "nextpull");

    /** For the engine of the log. */
    static final String PLAN = """
            [timing]
            start_deg = 20
            least_deg = 16
            most_deg = 36
            [band]
            from_rpm = 2800
            to_rpm = 6200
            """;

    private LogBench() {}

    /** One process that ended. */
    record Ended(String name, double seconds, double processorSeconds, long residentKb) {}

    /**
     * Runs the bench.
     *
     * @param args megabytes of the log, and the least number of its pulls; or {@code growth} and numbers of pulls
     */
    public static void main(String[] args) throws IOException, InterruptedException, SQLException {
        if (args.length == 2 && args[0].equals("tokens")) {
            tokens(Path.of(args[1]));
        } else if (args.length == 2 && args[0].equals("database")) {
            database(args[1]);
        } else if (args.length > 1 && args[0].equals("growth")) {
            growth(Arrays.stream(args).skip(1).mapToInt(Integer::parseInt).toArray());
        } else {
            bench(args.length > 0 ? Long.parseLong(args[0]) : 200, args.length > 1 ? Integer.parseInt(args[1]) : 1);
        }
    }

    private static void bench(long megabytes, int leastPulls) throws IOException, InterruptedException {
        Path log = Files.createTempFile("nextpull-bench", ".csv");
        try {
            int pulls = new LongLog(leastPulls > 1 ? 15 : SECONDS_APART).write(log, megabytes * 1_000_000, leastPulls);
            System.out.printf(
                    Locale.ROOT, "%d MB, 14 channels at 100 Hz, %d pulls%n%n", Files.size(log) / 1_000_000, pulls);
            String file = log.toString();
            List<Ended> all = new ArrayList<>();
            all.add(run("cat", List.of("cat", file)));
            all.add(run("the CSV library cutting fields", java(List.of(), LogBench.class.getName(), "tokens", file)));
            all.add(run(
                    "DuckDB over JDBC, averages by pull", java(List.of(), LogBench.class.getName(), "database", file)));
            all.add(run(
                    "`inspect`, heap of 64 MB",
                    java(List.of("-Xmx64m", "-XX:+UseSerialGC"), "org.nextpull.cli.Main", "inspect", file)));
            double own = all.get(all.size() - 1).seconds();
            all.add(run("`inspect` as the jar is started", java(List.of(), "org.nextpull.cli.Main", "inspect", file)));
            if (Files.isExecutable(IMAGE)) {
                all.add(run("`inspect`, installed image", List.of(IMAGE.toString(), "inspect", file)));
            }
            System.out.println("| what | time | processor time | memory | times of inspect |\n|---|---|---|---|---|");
            all.forEach(one -> System.out.printf(
                    Locale.ROOT,
                    "| %s | %.2f s | %.2f s | %d MB | %.2f |%n",
                    one.name(),
                    one.seconds(),
                    one.processorSeconds(),
                    one.residentKb() / 1000,
                    one.seconds() / own));
        } finally {
            Files.delete(log);
        }
    }

    /** What a pull costs, however many there are: the first number of pulls is that against which the others are held. */
    private static void growth(int[] numbers) throws IOException, InterruptedException {
        Path plan = Files.createTempFile("nextpull-bench", ".toml");
        Path log = Files.createTempFile("nextpull-bench", ".csv");
        try {
            Files.writeString(plan, PLAN);
            System.out.println("| pulls | command | time | processor time | memory | processor time a pull |");
            System.out.println("|---|---|---|---|---|---|");
            for (int pulls : numbers) {
                new LongLog(15).write(log, 0, pulls);
                for (String command : List.of("inspect", "advise", "replay")) {
                    List<String> words = new ArrayList<>(List.of(command, "--plan", plan.toString(), log.toString()));
                    if (!command.equals("inspect")) {
                        words.add("--no-notebook");
                    }
                    Ended one = run(
                            command,
                            java(
                                    List.of("-Xmx64m", "-XX:+UseSerialGC"),
                                    "org.nextpull.cli.Main",
                                    words.toArray(String[]::new)));
                    System.out.printf(
                            Locale.ROOT,
                            "| %d | `%s` | %.1f s | %.1f s | %d MB | %.0f ms |%n",
                            pulls,
                            command,
                            one.seconds(),
                            one.processorSeconds(),
                            one.residentKb() / 1000,
                            1e3 * one.processorSeconds() / pulls);
                }
            }
        } finally {
            Files.delete(log);
            Files.delete(plan);
        }
    }

    static String javaCommand() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    static List<String> java(List<String> options, String main, String... args) {
        List<String> line = new ArrayList<>();
        line.add(javaCommand());
        line.addAll(options);
        line.addAll(List.of("-cp", System.getProperty("java.class.path"), main));
        line.addAll(List.of(args));
        return line;
    }

    static Ended run(String name, List<String> line) throws IOException, InterruptedException {
        long started = System.nanoTime();
        Process process = new ProcessBuilder(line)
                .redirectOutput(new File("/dev/null"))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        double processor = 0;
        long resident = 0;
        while (process.isAlive()) {
            // of a process that has just ended the system tells nothing any more: what it said last counts
            processor = Math.max(
                    processor,
                    process.info().totalCpuDuration().map(Duration::toMillis).orElse(0L) / 1e3);
            resident = Math.max(resident, residentKb(process.pid()));
            Thread.sleep(5);
        }
        double seconds = (System.nanoTime() - started) / 1e9;
        if (process.exitValue() != 0) {
            throw new IOException(name + " ended with " + process.exitValue());
        }
        return new Ended(name, seconds, processor, resident);
    }

    private static long residentKb(long pid) {
        try {
            return Files.readAllLines(Path.of("/proc/" + pid + "/status")).stream()
                    .filter(line -> line.startsWith("VmHWM:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                    .findFirst()
                    .orElse(0);
        } catch (IOException ended) {
            return 0;
        }
    }

    private static void tokens(Path file) throws IOException {
        Counting counting = new Counting();
        try (CsvReader<Long> reader = CsvReader.builder().build(counting, file)) {
            reader.forEach(row -> {});
        }
        System.out.println(counting.characters);
    }

    /** Looks at no field but for its length. */
    private static final class Counting extends AbstractBaseCsvCallbackHandler<Long> {
        private long characters;

        @Override
        protected void handleField(int index, char[] buffer, int offset, int length, boolean quoted) {
            characters += length;
        }

        @Override
        protected Long buildRecord() {
            return characters;
        }
    }

    private static void database(String file) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = connection.createStatement()) {
            statement.execute("set threads = 2");
            try (ResultSet rows = statement.executeQuery("select floor(\"Time [s]\" / " + SECONDS_APART
                    + ") as pull, avg(\"Torque [N.m]\"), avg(\"Lambda\"), avg(\"Spark advance [deg]\") from read_csv('"
                    + file
                    + "') where \"Throttle [%]\" > 95 group by pull order by pull")) {
                long pulls = 0;
                while (rows.next()) {
                    pulls++;
                }
                System.out.println(pulls);
            }
        }
    }
}
