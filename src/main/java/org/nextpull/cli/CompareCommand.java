package org.nextpull.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.nextpull.compare.ComparisonRequest;
import org.nextpull.compare.Looks;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.finding.Finding;
import org.nextpull.plan.Goal;
import org.nextpull.report.json.CompareJson;
import org.nextpull.report.text.CompareText;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.ComparedDay;
import org.nextpull.session.Session;
import org.nextpull.session.SessionResult;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code compare}: is each label different from the reference. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description =
                "Says of each label whether it differs from the reference: difference with its interval over the band and by "
                        + "speed, drift of the day taken out, and a verdict in words.")
final class CompareCommand implements Callable<Integer> {
    /** Any fixed number will do: the draws for bands must be the same each time. */
    private static final long SEED = 20_260_101;

    private static final int LEAST_PLANNED = 4;

    private final Console console;

    @Option(names = "--plan", required = true, paramLabel = "PLAN", description = "Sweep plan (TOML).")
    private String plan = "";

    @Option(names = "--against", required = true, paramLabel = "LABEL", description = "Label of the reference.")
    private String against = "";

    @Parameters(
            arity = "1..*",
            paramLabel = "[LABEL=]LOG",
            description =
                    "Logs or tables of results; a label before the file names its pulls, else the log or the settings file does.")
    private List<String> logs = List.of();

    @ArgGroup
    private Looking looking = new Looking();

    @Mixin
    private OutputOptions output = new OutputOptions();

    /** How often the pulls are looked at. */
    static final class Looking {
        @Option(
                names = "--planned",
                paramLabel = "N",
                description =
                        "Pulls that were planned for the day; before they are all run the verdict is marked not final.")
        private int planned;

        @Option(
                names = "--looks-before",
                paramLabel = "K",
                description = "How often these pulls were compared before, with no number planned.")
        private int before;

        @Option(
                names = "--each-block",
                description = "The pulls are compared after each block there and back, six blocks at most.")
        private boolean eachBlock;
    }

    CompareCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        DayInput input =
                DayInput.labelled(plan, logs.stream().map(LabelledLog::parse).toList());
        SessionResult result = Session.evaluate(input.session());
        long used = result.pulls().stream().filter(MeasuredPull::isUsed).count();
        ComparisonRequest request =
                new ComparisonRequest(against, result.plan().goal().worthPercent(), looks((int) used), SEED);
        ComparedDay day = ComparedDay.of(input.session(), result, input.labels(), request);
        List<Finding> findings = new ArrayList<>(input.findings());
        if (day.outcome().isFailed()) {
            findings.addAll(result.findings());
            findings.addAll(day.outcome().findings());
            throw new Program.BadInput(findings);
        }
        MeasuredComparison both = day.outcome().value().orElseThrow();
        findings.addAll(day.outcome().findings());
        Goal.Response response = result.plan().goal().response();
        if (output.isJson()) {
            console.out().println(new CompareJson().document(day, both, response, findings));
        } else {
            console.out().print(new CompareText(output.shown()).text(day, both, response));
        }
        Messages.print(console.err(), findings);
        return input.someFailed() ? ExitCodes.BAD_INPUT : ExitCodes.DONE;
    }

    private Looks looks(int pulls) {
        if (looking.eachBlock) {
            return new Looks.EachBlock();
        }
        if (looking.before > 0) {
            return new Looks.Open(looking.before);
        }
        OptionalInt planned = looking.planned > 0 ? OptionalInt.of(looking.planned) : OptionalInt.empty();
        return new Looks.Planned(Math.max(LEAST_PLANNED, planned.orElse(pulls)));
    }
}
