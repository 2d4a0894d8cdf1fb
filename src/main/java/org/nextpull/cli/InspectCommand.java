package org.nextpull.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.nextpull.alarm.AlarmRules;
import org.nextpull.app.PlanFile;
import org.nextpull.channel.Hints;
import org.nextpull.finding.Finding;
import org.nextpull.intake.SampleMemory;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.Inputs;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.PullRules;
import org.nextpull.report.json.InspectJson;
import org.nextpull.report.text.InspectText;
import org.nextpull.session.LogReading;
import org.nextpull.session.SourcePulls;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code inspect}: what is in a log and how it was understood. */
@Command(
        name = "inspect",
        mixinStandardHelpOptions = true,
        description = "Shows how each log was understood: columns, units, sample rate, the pulls found and refused, "
                + "and what is wrong with the data.")
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

    @Option(names = "--lines", description = "With --json: one object a file, a line each.")
    private boolean lines;

    InspectCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        SweepPlan rules = plan.isEmpty()
                ? SweepPlan.defaults()
                : Program.usable(PlanFile.read(plan)).plan();
        Hints hints = rules.log().hints();
        Inputs inputs = new LogFiles(hints).read(logs);
        if (inputs.good().isEmpty()) {
            throw new Program.BadInput(inputs.findings());
        }
        List<SourcePulls> sources = new ArrayList<>();
        for (Input.Log log : inputs.logs()) {
            long room = SampleMemory.most()
                    - sources.stream().mapToLong(SourcePulls::heldBytes).sum();
            sources.add(LogReading.read(log.recording(), PullRules.of(rules), AlarmRules.of(rules), room));
        }
        if (output.isJson()) {
            json(inputs, sources);
        } else {
            text(inputs, sources);
        }
        Messages.print(console.err(), inputs.findings());
        boolean noPull = inputs.tables().isEmpty()
                && sources.stream().allMatch(source -> source.candidates().isEmpty());
        boolean someFailed = inputs.someFailed()
                || sources.stream()
                        .flatMap(source -> source.findings().stream())
                        .anyMatch(Finding::isError);
        return someFailed || noPull ? ExitCodes.BAD_INPUT : ExitCodes.DONE;
    }

    private void json(Inputs inputs, List<SourcePulls> sources) {
        InspectJson document = new InspectJson();
        sources.forEach(document::add);
        inputs.tables().forEach(table -> document.add(table.table(), table.findings()));
        if (lines) {
            document.lines().forEach(console.out()::println);
        } else {
            console.out().println(document.document(inputs.findings()));
        }
    }

    private void text(Inputs inputs, List<SourcePulls> sources) {
        InspectText text = new InspectText(output.shown());
        sources.forEach(source -> console.out().println(text.log(source)));
        for (Input.Table table : inputs.tables()) {
            console.out().println(text.table(table.table()));
            Messages.print(console.err(), table.findings());
        }
    }
}
