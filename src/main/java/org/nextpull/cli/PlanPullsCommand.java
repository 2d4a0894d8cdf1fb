package org.nextpull.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.nextpull.app.DayInput;
import org.nextpull.app.DayReader;
import org.nextpull.compare.PullAdvice;
import org.nextpull.compare.PullPlan;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.fit.SurfaceKnowledge;
import org.nextpull.report.json.CompareJson;
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
        description = {
            "Says before the day how many pulls, in which order, tell a difference apart.",
            "It works from the repeatability of the dyno and allows for drift."
        })
final class PlanPullsCommand implements Callable<Integer> {
    private static final int MOST_LABELS = 6;
    private static final int MOST_CHANGES = 8;
    private static final double MOST_COST = 1000;

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
                description = "Session of the notebook whose repeats give the repeatability.")
        private @Nullable Long session;
    }

    /** A scatter that somebody knows. */
    static final class Given {
        @Option(
                names = "--scatter",
                required = true,
                paramLabel = "PERCENT",
                description = "Repeatability, one standard deviation from pull to pull in percent.")
        private double percent;

        @Option(
                names = "--scatter-df",
                paramLabel = "N",
                defaultValue = "12",
                description = "Degrees of freedom behind it: repeats less settings (default: ${DEFAULT-VALUE}).")
        private double degreesOfFreedom = 12;
    }

    /** A day that holds repeats. */
    static final class Measured {
        @Option(
                names = "--scatter-from",
                required = true,
                paramLabel = "LOG",
                description = "Log or table of results whose repeats give the repeatability.")
        private List<String> logs = List.of();

        @Option(names = "--plan", required = true, paramLabel = "PLAN", description = "Sweep plan of that log.")
        private String plan = "";
    }

    @Option(
            names = "--difference",
            required = true,
            paramLabel = "PERCENT",
            description = "Smallest difference that you want to detect.")
    private double difference;

    @Option(
            names = "--power",
            paramLabel = "PERCENT",
            defaultValue = "80",
            description = "Chance to detect such a difference when it is there (default: ${DEFAULT-VALUE}).")
    private double power = 80;

    @Option(
            names = "--labels",
            paramLabel = "N|A,B",
            split = ",",
            defaultValue = "A,B",
            description = "How many labels, or their names, the reference first (default: ${DEFAULT-VALUE}).")
    private List<String> labels = List.of("A", "B");

    @Option(
            names = "--changes",
            paramLabel = "N",
            description =
                    "How often each label is changed with the reference, 2 or 3 or more: the order in blocks of fewest pulls.")
    private Optional<Integer> changes = Optional.empty();

    @Option(
            names = "--change-cost",
            paramLabel = "PULLS",
            description =
                    "What a change-over costs, in pulls, beside the one that flushes: the order in blocks that costs least.")
    private Optional<Double> changeCost = Optional.empty();

    @Option(
            names = "--swept",
            description =
                    "Each label has its own sweep before, as on a day of candidates, which tells its repeatability"
                            + " once more: fewer pulls then do.")
    private boolean swept;

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
        List<String> names = names();
        require(
                names.size() >= 2
                        && names.size() <= MOST_LABELS
                        && Set.copyOf(names).size() == names.size(),
                "--labels is 2 to " + MOST_LABELS + " different labels: " + String.join(",", labels));
        Scatter known = Optional.ofNullable(from.measured)
                .map(measured -> DayOptions.PlanAndLogs.read(measured.plan, measured.logs))
                .or(() -> Optional.ofNullable(from.session)
                        .map(id -> Program.usable(DayReader.session(notebook.access(), id))))
                .map(PlanPullsCommand::measured)
                .orElseGet(this::given);
        PullAdvice advice = PullAdvice.of(
                known,
                swept ? OptionalDouble.of(SurfaceKnowledge.SWEEP_FREEDOM) : OptionalDouble.empty(),
                new PullPlan.Wish(difference, power / 100),
                names,
                changeOvers());
        console.out()
                .println(
                        output.isJson()
                                ? CompareJson.planPulls(advice, known)
                                : new PullAdviceText().text(advice, known, difference));
        return ExitCodes.DONE;
    }

    /** The names, or the first letters for their number. */
    private List<String> names() {
        if (labels.size() > 1 || !labels.get(0).matches("[0-9]{1,2}")) {
            return labels;
        }
        return IntStream.range(0, Integer.parseInt(labels.get(0)))
                .mapToObj(label -> String.valueOf((char) ('A' + label)))
                .toList();
    }

    private Optional<PullAdvice.ChangeCost> changeOvers() {
        changes.ifPresent(number -> require(
                number >= 2 && number <= MOST_CHANGES,
                "--changes is 2 to " + MOST_CHANGES
                        + ", since after one change-over drift looks like a gain: "
                        + number));
        changeCost.ifPresent(
                pulls -> require(pulls >= 0 && pulls <= MOST_COST, "--change-cost is 0 to 1000 pulls: " + pulls));
        return changes.isEmpty() && changeCost.isEmpty()
                ? Optional.empty()
                : Optional.of(new PullAdvice.ChangeCost(
                        changes.map(OptionalInt::of).orElse(OptionalInt.empty()), changeCost.orElse(0.0)));
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
