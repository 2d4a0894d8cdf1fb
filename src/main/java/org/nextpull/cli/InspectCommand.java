package org.nextpull.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.nextpull.app.LogArchive;
import org.nextpull.app.PlanFile;
import org.nextpull.finding.Finding;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.json.InspectJson;
import org.nextpull.report.text.InspectText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code inspect}: what is in a log and how it was understood. */
@Command(
        name = "inspect",
        mixinStandardHelpOptions = true,
        description = {
            "Shows how each log was understood and what is wrong with its data.",
            "Columns, units, sample rate, and the pulls found and rejected."
        })
final class InspectCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            arity = "1..*",
            paramLabel = "LOG",
            description = "CSV logs or tables of results, gz or zip of them, folders, globs.")
    private List<String> logs = List.of();

    @Option(
            names = "--plan",
            paramLabel = "PLAN",
            description = "Sweep plan; its band, columns and units are used for reading.")
    private String plan = "";

    @Mixin
    private OutputOptions output = new OutputOptions();

    private boolean nothingUsable = true;
    private boolean noPull = true;
    private boolean someFailed;

    @Option(names = "--lines", description = "With --json: one line with one object for each file.")
    private boolean lines;

    InspectCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        SweepPlan rules = plan.isEmpty()
                ? SweepPlan.defaults()
                : Program.usable(PlanFile.read(plan)).plan();
        LogArchive archive = new LogArchive(rules, logs);
        Optional<InspectJson> document = output.isJson() ? Optional.of(new InspectJson()) : Optional.empty();
        List<Finding> findings;
        try (ProgressLine progress = ProgressLine.of(console.err(), archive.progress())) {
            findings = archive.read(looked -> {
                progress.clear();
                print(looked, document);
            });
        }
        if (nothingUsable) {
            throw new Program.BadInput(findings);
        }
        document.filter(whole -> !lines).ifPresent(whole -> console.out().println(whole.document(findings)));
        console.print(findings);
        return noPull || someFailed || findings.stream().anyMatch(Finding::isError)
                ? ExitCodes.BAD_INPUT
                : ExitCodes.DONE;
    }

    private void print(LogArchive.Looked looked, Optional<InspectJson> json) {
        looked.log().ifPresent(source -> {
            noPull &= source.candidates().isEmpty();
            someFailed |= source.findings().stream().anyMatch(Finding::isError);
        });
        nothingUsable &= looked.log().isEmpty() && looked.table().isEmpty();
        noPull &= looked.table().isEmpty();
        if (json.isEmpty()) {
            print(looked, new InspectText(output.shown()));
            return;
        }
        InspectJson document = json.get();
        looked.log().ifPresent(document::add);
        looked.table().ifPresent(table -> document.add(table.table(), table.findings()));
        if (lines) {
            document.takeLines().forEach(console.out()::println);
        }
    }

    private void print(LogArchive.Looked looked, InspectText text) {
        looked.log().ifPresent(source -> console.out().println(text.log(source)));
        looked.table().ifPresent(table -> {
            console.out().println(text.table(table.table()));
            console.print(table.findings());
        });
    }

    /** A line on the terminal that says how far the reading of many bytes is; nothing where no terminal is. */
    static final class ProgressLine implements AutoCloseable {
        private static final long EVERY_MS = 500;
        private static final int BAR = 20;
        private static final double MEGA = 1e6;
        private static final String CLEAR = "\r" + " ".repeat(78) + "\r";

        private final PrintWriter err;
        private final LogArchive.Progress progress;
        private final long startedNanos = System.nanoTime();
        private final ScheduledExecutorService clock;
        private boolean shown;

        private ProgressLine(PrintWriter err, LogArchive.Progress progress) {
            this.err = err;
            this.progress = progress;
            this.clock = Executors.newSingleThreadScheduledExecutor(task -> {
                Thread thread = new Thread(task, "progress");
                thread.setDaemon(true);
                return thread;
            });
        }

        static ProgressLine of(PrintWriter err, LogArchive.Progress progress) {
            ProgressLine line = new ProgressLine(err, progress);
            if (Terminal.isThere()) {
                var unused = line.clock.scheduleAtFixedRate(line::show, EVERY_MS, EVERY_MS, TimeUnit.MILLISECONDS);
            }
            return line;
        }

        private synchronized void show() {
            shown = true;
            err.print("\r" + text(progress, (System.nanoTime() - startedNanos) / 1e9) + " ");
            err.flush();
        }

        /** What the line says after so many seconds. */
        static String text(LogArchive.Progress progress, double seconds) {
            OptionalDouble share = progress.share();
            int done = (int) Math.round(BAR * share.orElse(0));
            String left = share.orElse(0) > 0
                    ? String.format(
                            Locale.ROOT, ", %.0f s left", seconds * (1 - share.getAsDouble()) / share.getAsDouble())
                    : "";
            return String.format(
                    Locale.ROOT,
                    "[%s%s] %d of %d files, %.0f MB/s%s",
                    "#".repeat(done),
                    ".".repeat(BAR - done),
                    progress.filesDone(),
                    progress.files(),
                    progress.bytesRead() / MEGA / Math.max(seconds, 1e-3),
                    left);
        }

        /** Takes the line away, to print something else in its place. */
        synchronized void clear() {
            if (shown) {
                err.print(CLEAR);
                err.flush();
                shown = false;
            }
        }

        @Override
        public void close() {
            clock.shutdownNow();
            clear();
        }
    }
}
