package org.nextpull.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.app.DayInput;
import org.nextpull.app.DayReader;
import org.nextpull.app.LabelledLog;
import org.nextpull.app.PlanFile;
import org.nextpull.app.WrittenFiles;
import org.nextpull.channel.Recording;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.SampleMemory;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.Inputs;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanDraft;
import org.nextpull.pull.Candidate;
import org.nextpull.report.text.FirstPlanText;
import org.nextpull.report.text.PlanCheckText;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;
import org.nextpull.session.SourcePulls;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code plan}: a first plan from logs, or what a plan watches and what it does not. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = {
            "Writes a first plan from logs, or checks one.",
            "A check says which limits the plan watches, and whether a log has the channels that they need."
        })
final class PlanCommand implements Callable<Integer> {
    private static final String STANDARD_OUTPUT = "-";

    private final Console console;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..*", paramLabel = "LOG", description = "CSV logs, gz or zip of them, folders, globs.")
    private List<String> logs = List.of();

    @Option(names = "--out", paramLabel = "FILE", description = "Write the plan into this file; - is standard output.")
    private String out = STANDARD_OUTPUT;

    @Option(names = "--check", paramLabel = "PLAN", description = "Check this plan instead; with a log, against it.")
    private Optional<String> checked = Optional.empty();

    @Option(
            names = "--plan",
            paramLabel = "PLAN",
            description = "Read the logs with the table [log] of this plan, and write that into the new one.")
    private Optional<String> known = Optional.empty();

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    PlanCommand(Console console, CommandSpec spec) {
        this.console = console;
        this.spec = spec;
    }

    @Override
    public Integer call() {
        if (checked.isEmpty() && logs.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "Name a log to make a plan from, or a plan with --check.");
        }
        if (checked.isPresent() && known.isPresent()) {
            throw new ParameterException(
                    spec.commandLine(), "--plan goes with a new plan; a check reads the checked one.");
        }
        return checked.isPresent() ? check(checked.get()) : write();
    }

    private int write() {
        SweepPlan.LogFacts told = known.map(
                        name -> Program.usable(PlanFile.read(name)).plan().log())
                .orElse(SweepPlan.LogFacts.defaults());
        SweepPlan rules = SweepPlan.defaults().withLog(told);
        Inputs inputs = new LogFiles(rules.log().hints()).read(logs);
        List<Recording> recordings =
                inputs.logs().stream().map(Input.Log::recording).toList();
        SampleMemory memory = new SampleMemory();
        List<SourcePulls> sources = Session.read(
                SessionInput.of(rules, recordings, List.of()),
                List.of(),
                SampleMemory.most(),
                pull -> pull.kept(memory::keep));
        List<Finding> findings = new ArrayList<>(inputs.findings());
        inputs.tables().forEach(table -> findings.addAll(table.findings()));
        sources.forEach(source -> findings.addAll(source.findings()));
        if (sources.stream().flatMap(source -> source.candidates().stream()).noneMatch(Candidate::isUsable)) {
            findings.add(Finding.error(FindingCode.PLAN_WITHOUT_PULL, Place.inFile(logs.get(0))));
            throw new Program.BadInput(findings);
        }
        String text = new FirstPlanText(sources, told).text();
        if (out.equals(STANDARD_OUTPUT)) {
            console.out().print(text);
        } else {
            Path file = TextFile.path(out);
            TextFile.require(WrittenFiles.of(file), inputs.files());
            if (Files.exists(file)) {
                throw new Program.BadInput(List.of(Finding.error(FindingCode.PLAN_THERE_ALREADY, Place.inFile(out))));
            }
            TextFile.write(file, text, console);
        }
        console.print(findings);
        return inputs.someFailed() ? ExitCodes.BAD_INPUT : ExitCodes.DONE;
    }

    private int check(String name) {
        PlanFile file = console.said(PlanFile.read(name));
        PlanDraft draft = Program.usable(PlanDraft.of(file.text(), name));
        Optional<DayInput> day = logs.isEmpty()
                ? Optional.empty()
                : Optional.of(Program.usable(DayReader.day(
                        notebook.access(),
                        Optional.of(name),
                        logs.stream().map(LabelledLog::unlabelled).toList())));
        Optional<SessionResult> result = day.map(DayInput::result);
        console.out().println(name + ": no error.\n");
        console.out().print(PlanCheckText.of(file.plan(), draft, result));
        PlanCheckText.open(file.plan()).ifPresent(open -> console.out().println("\n" + open));
        day.ifPresent(read -> console.print(read.findings()));
        return result.filter(each -> each.pulls().isEmpty()).isPresent()
                        || day.filter(DayInput::someFailed).isPresent()
                ? ExitCodes.BAD_INPUT
                : ExitCodes.DONE;
    }
}
