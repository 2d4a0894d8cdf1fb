package org.nextpull.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.app.PlanFile;
import org.nextpull.app.WrittenFiles;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.csv.SettingsFile;
import org.nextpull.report.AdviceText;
import org.nextpull.report.Shown;
import org.nextpull.simulator.LogDialect;
import org.nextpull.simulator.WrittenDay;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code engine write}: a log with a known truth. */
@Command(
        name = "write",
        mixinStandardHelpOptions = true,
        description = {
            "Writes the log of an invented day, with its truth beside it.",
            "Without --settings it follows the advice until that stops. The same plan, seed and settings give the same "
                    + "bytes. Where the log alone does not tell what was set, a settings file is written as well."
        })
final class EngineWriteCommand implements Callable<Integer> {
    private final Console console;

    @Option(names = "--plan", required = true, paramLabel = "PLAN", description = "Sweep plan (TOML).")
    private String plan = "";

    @Option(
            names = "--seed",
            required = true,
            paramLabel = "N",
            description = "Whole number that decides engine, day and noise.")
    private long seed;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "Log to write.")
    private String out = "";

    @Option(
            names = "--settings",
            paramLabel = "FILE",
            description = "Settings file: one row a pull, in order, instead of the advice.")
    private Optional<String> settings = Optional.empty();

    @Option(
            names = "--dialect",
            paramLabel = "NAME",
            defaultValue = "PLAIN",
            description = "How the log is written: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
    private LogDialect dialect = LogDialect.PLAIN;

    private int pulled;

    EngineWriteCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        PlanFile file = console.said(PlanFile.read(plan));
        Path log = TextFile.path(out);
        Path truth = beside(log, ".truth.toml");
        Path asked = beside(log, ".settings.csv");
        List<Path> read = new ArrayList<>(List.of(file.path()));
        settings.map(TextFile::path).ifPresent(read::add);
        TextFile.require(new WrittenFiles(log, List.of(truth)), read);
        WrittenDay.Order order = new WrittenDay.Order(file.plan(), seed, dialect);
        Outcome<WrittenDay> outcome = settings.map(name -> WrittenDay.of(order, rows(name), this::progress))
                .orElseGet(() -> WrittenDay.following(order, this::progress));
        WrittenDay day = Program.usable(outcome);
        if (day.settings().isPresent()) {
            TextFile.require(new WrittenFiles(log, List.of(asked)), read);
        }
        write(log, day.log(), "log of " + Shown.count(day.pulls(), "pull"));
        write(truth, day.truth(), "truth");
        day.settings().ifPresent(text -> write(asked, text, "settings, for [log] settings or for a plan beside it"));
        return ExitCodes.DONE;
    }

    private List<AskedSetting> rows(String name) {
        Outcome<List<AskedSetting>> outcome = SettingsFile.read(name);
        if (outcome.isFailed() || outcome.findings().stream().anyMatch(Finding::isError)) {
            throw new Program.BadInput(outcome.findings());
        }
        console.print(outcome.findings());
        return outcome.value().orElseThrow();
    }

    private void progress(EngineSetting setting) {
        pulled++;
        console.err().println("pull " + pulled + ": " + AdviceText.setting(setting));
    }

    private void write(Path file, String text, String what) {
        TextFile.write(file, text);
        console.out().println(file + ": " + what);
    }

    private static Path beside(Path log, String ending) {
        String name = String.valueOf(log.getFileName());
        int dot = name.lastIndexOf('.');
        return log.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ending);
    }
}
