package org.nextpull.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.app.DayInput;
import org.nextpull.app.DayReader;
import org.nextpull.app.LabelledLog;
import org.nextpull.compare.ComparisonRequest;
import org.nextpull.compare.InterimLooks;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.finding.Finding;
import org.nextpull.plan.Goal;
import org.nextpull.report.json.CompareJson;
import org.nextpull.report.text.CompareText;
import org.nextpull.session.ComparedDay;
import org.nextpull.session.SessionResult;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code compare}: is each label different from the reference. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description = {
            "Tells the gain or loss of each label against a reference, drift removed.",
            "The difference with its 95 %% CI, over the band and by speed, and a verdict in words."
        })
final class CompareCommand implements Callable<Integer> {
    private static final int LEAST_PLANNED = 4;

    private final Console console;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--plan",
            paramLabel = "PLAN",
            description = "Sweep plan (TOML); without one, that of the first session named.")
    private Optional<String> plan = Optional.empty();

    @Option(names = "--against", required = true, paramLabel = "LABEL", description = "Label of the reference.")
    private String against = "";

    @Parameters(
            arity = "1..*",
            paramLabel = "[LABEL=]LOG",
            description =
                    "Logs, tables of results, or session:ID for a session of the notebook; a label before it names its pulls, "
                            + "else the log, the settings file or the session does.")
    private List<String> logs = List.of();

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    @Option(
            names = "--worth",
            paramLabel = "PERCENT",
            description = "Smallest difference that matters, in place of worth_percent of the plan.")
    private Optional<Double> worth = Optional.empty();

    @Option(
            names = "--charts",
            paramLabel = "DIR",
            description = "Also write the mean curves and the differences over speed as PNG into this folder.")
    private Optional<String> charts = Optional.empty();

    @ArgGroup
    private Looking looking = new Looking();

    @Mixin
    private OutputOptions output = new OutputOptions();

    /** How often the pulls are looked at. */
    static final class Looking {
        @ArgGroup(exclusive = false)
        private Counted counted = new Counted();

        @Option(
                names = "--each-block",
                description = "The pulls are compared after each A-B-B-A block, six blocks at most.")
        private boolean eachBlock;
    }

    /** Looks that are counted. */
    static final class Counted {
        @Option(
                names = "--planned",
                paramLabel = "N",
                description =
                        "Pulls of all labels together that were planned; before they are all run the verdict is marked "
                                + "not final. At least 4.")
        private Optional<Integer> planned = Optional.empty();

        @Option(
                names = "--looks-before",
                paramLabel = "K",
                description = "How often these pulls were compared before, as the last comparison said.")
        private int before;
    }

    CompareCommand(Console console, CommandSpec spec) {
        this.spec = spec;
        this.console = console;
    }

    @Override
    public Integer call() {
        List<LabelledLog> named = logs.stream().map(LabelledLog::parse).toList();
        if (plan.isEmpty() && named.stream().allMatch(log -> log.session().isEmpty())) {
            throw new ParameterException(spec.commandLine(), "Missing required option: '--plan=PLAN'");
        }
        DayInput input = Program.usable(DayReader.day(notebook.access(), plan, named));
        SessionResult result = input.result();
        ComparisonRequest request =
                new ComparisonRequest(against, worthPercent(result), looks(), ComparisonRequest.SEED);
        ComparedDay day = ComparedDay.of(result, input.labels(), request);
        List<Finding> findings = new ArrayList<>(input.findings());
        if (day.outcome().isFailed()) {
            findings.addAll(result.findings());
            findings.addAll(day.outcome().findings());
            throw new Program.BadInput(findings);
        }
        MeasuredComparison both = day.outcome().value().orElseThrow();
        findings.addAll(day.outcome().findings());
        Goal.Response response = result.plan().goal().response();
        output.print(
                console.out(),
                () -> new CompareJson().document(day, both, response, findings),
                () -> new CompareText(output.shown()).text(day, both, response));
        console.print(findings);
        charts.ifPresent(folder -> new ChartFiles(folder, input.files(), console)
                .write(result, both, output.shown().units()));
        return input.someFailed() ? ExitCodes.BAD_INPUT : ExitCodes.DONE;
    }

    private double worthPercent(SessionResult result) {
        if (worth.isPresent() && !(worth.get() > 0 && worth.get() < 50)) {
            throw new ParameterException(
                    spec.commandLine(), "--worth must be above 0 and below 50 percent: " + worth.get());
        }
        return worth.orElse(result.plan().goal().worthPercent());
    }

    private InterimLooks looks() {
        Counted counted = looking.counted;
        if (counted.before < 0) {
            throw new ParameterException(spec.commandLine(), "--looks-before is not negative: " + counted.before);
        }
        if (looking.eachBlock) {
            return new InterimLooks.EachBlock();
        }
        if (counted.planned.isEmpty()) {
            return new InterimLooks.Open(counted.before);
        }
        int planned = counted.planned.get();
        if (planned < LEAST_PLANNED) {
            throw new ParameterException(spec.commandLine(), "--planned is at least " + LEAST_PLANNED + ": " + planned);
        }
        return new InterimLooks.Planned(planned, counted.before);
    }
}
