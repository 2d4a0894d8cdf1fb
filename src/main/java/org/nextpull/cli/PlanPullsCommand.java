package org.nextpull.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nextpull.app.DayInput;
import org.nextpull.app.DayReader;
import org.nextpull.compare.PullAdvice;
import org.nextpull.compare.PullPlan;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.report.json.PullAdviceJson;
import org.nextpull.report.text.PullAdviceText;
import org.nextpull.scatter.Scatter;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code plan-pulls}: before the day, how many pulls in which order. */
@Command(
        name = "plan-pulls",
        mixinStandardHelpOptions = true,
        description =
                "Before the day: how many pulls of two labels, in which order, resolve a given difference, from the scatter "
                        + "from pull to pull. Drift is allowed for in any case.")
final class PlanPullsCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    private CommandSpec spec;

    @ArgGroup(multiplicity = "1")
    private KnownScatter from = new KnownScatter();

    /** Where the scatter comes from. */
    static final class KnownScatter {
        @ArgGroup(exclusive = false)
        private @Nullable Given given;

        @ArgGroup(exclusive = false)
        private @Nullable Measured measured;

        @Option(
                names = "--session",
                paramLabel = "ID",
                description = "Session of the notebook whose repeats give the scatter.")
        private @Nullable Long session;
    }

    /** A scatter that somebody knows. */
    static final class Given {
        @Option(
                names = "--scatter",
                required = true,
                paramLabel = "PERCENT",
                description = "Scatter from pull to pull, one standard deviation in percent.")
        private double percent;

        @Option(
                names = "--scatter-df",
                paramLabel = "N",
                defaultValue = "12",
                description =
                        "Degrees of freedom behind the scatter: repeats less settings (default: ${DEFAULT-VALUE}).")
        private double degreesOfFreedom = 12;
    }

    /** A day that holds repeats. */
    static final class Measured {
        @Option(
                names = "--scatter-from",
                required = true,
                paramLabel = "LOG",
                description = "Log or table of results whose repeats give the scatter.")
        private List<String> logs = List.of();

        @Option(names = "--plan", required = true, paramLabel = "PLAN", description = "Sweep plan of that log.")
        private String plan = "";
    }

    @Option(
            names = "--difference",
            required = true,
            paramLabel = "PERCENT",
            description = "Difference that you want to be able to tell.")
    private double difference;

    @Option(
            names = "--power",
            paramLabel = "PERCENT",
            defaultValue = "80",
            description = "Chance of finding such a difference when it is there (default: ${DEFAULT-VALUE}).")
    private double power = 80;

    @Option(
            names = "--labels",
            paramLabel = "A,B",
            split = ",",
            defaultValue = "A,B",
            description = "Names of the two configurations (default: ${DEFAULT-VALUE}).")
    private List<String> labels = List.of("A", "B");

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    @Mixin
    private OutputOptions output = new OutputOptions();

    PlanPullsCommand(Console console, CommandSpec spec) {
        this.console = console;
        this.spec = spec;
    }

    @Override
    public Integer call() {
        require(difference > 0 && difference < 50, "--difference must be above 0 and below 50 percent: " + difference);
        require(power >= 50 && power < 100, "--power must be at least 50 and below 100 percent: " + power);
        require(labels.size() == 2 && !labels.get(0).equals(labels.get(1)), "--labels names two different labels");
        Scatter known = Optional.ofNullable(from.measured)
                .map(measured -> LogOptions.read(measured.plan, measured.logs))
                .or(() -> Optional.ofNullable(from.session)
                        .map(id -> Program.usable(DayReader.session(notebook.access(), id))))
                .map(PlanPullsCommand::measured)
                .orElseGet(this::given);
        PullAdvice advice = PullAdvice.of(known, new PullPlan.Wish(difference, power / 100), labels);
        console.out()
                .println(
                        output.isJson()
                                ? new PullAdviceJson().document(advice, known)
                                : new PullAdviceText().text(advice, known, difference));
        return ExitCodes.DONE;
    }

    private Scatter given() {
        Given given = Optional.ofNullable(from.given).orElseThrow();
        require(
                given.percent > 0 && given.percent < 50,
                "--scatter must be above 0 and below 50 percent: " + given.percent);
        require(
                given.degreesOfFreedom >= 1 && given.degreesOfFreedom < 1e6,
                "--scatter-df must be at least 1: " + given.degreesOfFreedom);
        return new Scatter(given.percent, given.degreesOfFreedom);
    }

    private static Scatter measured(DayInput input) {
        return input.result()
                .repeatability()
                .scatter()
                .filter(scatter -> scatter.percent() > 0)
                .orElseThrow(() -> {
                    List<Finding> findings = new ArrayList<>(input.findings());
                    findings.add(Finding.error(FindingCode.NO_SCATTER_TO_PLAN_BY, Place.nowhere()));
                    return new Program.BadInput(findings);
                });
    }

    private void require(boolean holds, String message) {
        if (!holds) {
            throw new ParameterException(spec.commandLine(), message);
        }
    }
}
