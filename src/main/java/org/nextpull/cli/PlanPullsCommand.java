package org.nextpull.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.nextpull.compare.PullAdvice;
import org.nextpull.compare.PullPlan;
import org.nextpull.report.json.PullAdviceJson;
import org.nextpull.report.text.PullAdviceText;
import org.nextpull.scatter.Scatter;
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
                        + "from pull to pull. Drift is fitted in any case.")
final class PlanPullsCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--scatter",
            required = true,
            paramLabel = "PERCENT",
            description = "Scatter from pull to pull, one standard deviation in percent.")
    private double scatter;

    @Option(
            names = "--scatter-df",
            paramLabel = "N",
            defaultValue = "12",
            description = "Degrees of freedom behind the scatter: repeats less settings (default: ${DEFAULT-VALUE}).")
    private double degreesOfFreedom = 12;

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
    private OutputOptions output = new OutputOptions();

    PlanPullsCommand(Console console, CommandSpec spec) {
        this.console = console;
        this.spec = spec;
    }

    @Override
    public Integer call() {
        require(scatter > 0 && scatter < 50, "--scatter must be above 0 and below 50 percent: " + scatter);
        require(difference > 0 && difference < 50, "--difference must be above 0 and below 50 percent: " + difference);
        require(power >= 50 && power < 100, "--power must be at least 50 and below 100 percent: " + power);
        require(
                degreesOfFreedom >= 1 && degreesOfFreedom < 1e6,
                "--scatter-df must be at least 1: " + degreesOfFreedom);
        require(labels.size() == 2 && !labels.get(0).equals(labels.get(1)), "--labels names two different labels");
        Scatter known = new Scatter(scatter, degreesOfFreedom);
        PullAdvice advice = PullAdvice.of(known, new PullPlan.Wish(difference, power / 100), labels);
        console.out()
                .println(
                        output.isJson()
                                ? new PullAdviceJson().document(advice, known)
                                : new PullAdviceText().text(advice, known, difference));
        return ExitCodes.DONE;
    }

    private void require(boolean holds, String message) {
        if (!holds) {
            throw new ParameterException(spec.commandLine(), message);
        }
    }
}
