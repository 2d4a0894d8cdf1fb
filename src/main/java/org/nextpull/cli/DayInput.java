package org.nextpull.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Recording;
import org.nextpull.channel.ResultTable;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.FoundSources;
import org.nextpull.intake.SourceFinder;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.Inputs;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.intake.csv.SettingsFile;
import org.nextpull.session.SessionInput;

/**
 * Plan, logs, tables and settings of a day, read from files.
 *
 * @param session what the session is made from
 * @param labels label of each source that was named with one
 * @param findings files that could not be used, and what is worth saying of the others
 */
record DayInput(SessionInput session, Map<String, String> labels, List<Finding> findings) {
    DayInput {
        labels = Map.copyOf(labels);
        findings = List.copyOf(findings);
    }

    /** Whether some of the files could not be used. */
    boolean someFailed() {
        return findings.stream().anyMatch(Finding::isError);
    }

    static DayInput read(String planName, List<String> logs) {
        PlanFile plan = PlanFile.read(planName);
        Inputs inputs = new LogFiles(plan.plan().log().hints()).read(logs);
        return of(plan, inputs, Map.of());
    }

    /** Reads logs of which some carry a label, in the order in which they are named. */
    static DayInput labelled(String planName, List<LabelledLog> logs) {
        PlanFile plan = PlanFile.read(planName);
        LogFiles files = new LogFiles(plan.plan().log().hints());
        List<Input> good = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        Map<String, String> labels = new HashMap<>();
        for (LabelledLog log : logs) {
            Inputs inputs = files.read(List.of(log.log()));
            good.addAll(inputs.good());
            findings.addAll(inputs.findings());
            log.label().ifPresent(label -> inputs.good().forEach(input -> labels.put(input.name(), label)));
        }
        return of(plan, new Inputs(good, findings), labels);
    }

    private static DayInput of(PlanFile plan, Inputs inputs, Map<String, String> labels) {
        List<Finding> findings = new ArrayList<>(plan.findings());
        findings.addAll(inputs.findings());
        inputs.tables().forEach(table -> findings.addAll(table.findings()));
        if (inputs.good().isEmpty()) {
            throw new Program.BadInput(findings);
        }
        List<Recording> recordings =
                inputs.logs().stream().map(Input.Log::recording).toList();
        List<ResultTable> tables =
                inputs.tables().stream().map(Input.Table::table).toList();
        List<AskedSetting> settings = settings(plan, findings);
        return new DayInput(SessionInput.of(plan.plan(), recordings, tables).withSettings(settings), labels, findings);
    }

    private static List<AskedSetting> settings(PlanFile plan, List<Finding> findings) {
        return plan.plan()
                .log()
                .settings()
                .map(name -> settings(plan.resolve(name).toString(), findings))
                .orElse(List.of());
    }

    private static List<AskedSetting> settings(String path, List<Finding> findings) {
        FoundSources found = SourceFinder.find(List.of(path));
        findings.addAll(found.findings());
        if (found.sources().isEmpty()) {
            throw new Program.BadInput(found.findings());
        }
        Outcome<List<AskedSetting>> outcome = SettingsFile.read(found.sources().get(0));
        findings.addAll(outcome.findings());
        return outcome.value().orElseThrow(() -> new Program.BadInput(outcome.findings()));
    }
}
