package org.nextpull.api;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Recording;
import org.nextpull.channel.ResultTable;
import org.nextpull.compare.ComparisonRequest;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.PlainText;
import org.nextpull.intake.SampleMemory;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.Inputs;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.intake.csv.SettingsFile;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.session.ComparedDay;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;

/**
 * A day on the dyno: a plan, and the logs in the order in which they were run. What is advised and compared is what the program itself
 * says of them, but for earlier days, which are read from no notebook. Immutable.
 */
public final class LoggedDay {
    private final SessionInput input;
    private final Map<String, String> labels;

    private LoggedDay(SessionInput input, Map<String, String> labels) {
        this.input = input;
        this.labels = Map.copyOf(labels);
    }

    /** A day under a plan, from the text of the plan; without a value where that is not good, and then the findings say why. */
    public static Outcome<LoggedDay> ofPlan(String text) {
        return PlanText.read(text, "plan").map(LoggedDay::under);
    }

    /** A day under a plan, with the settings of the file that the plan names; without a value where either is not good. */
    public static Outcome<LoggedDay> ofPlanFile(Path plan) {
        return PlainText.read(plan.toString(), PlanText.MOST_BYTES)
                .then(text -> PlanText.read(text, plan.toString()))
                .then(read -> settings(read, plan).map(asked -> under(read).withSettings(asked)));
    }

    private static LoggedDay under(SweepPlan plan) {
        return new LoggedDay(SessionInput.of(plan, List.of(), List.of()), Map.of());
    }

    private static Outcome<List<AskedSetting>> settings(SweepPlan plan, Path file) {
        return plan.log()
                .settings()
                .map(name -> SettingsFile.read(file.resolveSibling(name).toString()))
                .orElse(Outcome.of(List.of()));
    }

    /** The day with what the operator set for its pulls, where the logs do not hold it. */
    public LoggedDay withSettings(List<AskedSetting> settings) {
        return new LoggedDay(input.withSettings(settings), labels);
    }

    /** The day with one log more, such as a {@link SampledLog}. */
    public LoggedDay withLog(Recording log) {
        List<Recording> logs = new ArrayList<>(input.recordings());
        logs.add(log);
        return new LoggedDay(input.withSources(logs, input.tables()), labels);
    }

    /** The day with one log more, all of whose pulls carry a label. */
    public LoggedDay withLog(Recording log, String label) {
        Map<String, String> more = new HashMap<>(labels);
        more.put(log.name(), label);
        return new LoggedDay(withLog(log).input, more);
    }

    /** The day with files more, logs or tables of results; one that cannot be used is left out, and a finding of the answer says so. */
    public LoggedDay withFiles(Path... files) {
        Inputs read = new LogFiles(input.plan().log().hints())
                .read(Arrays.stream(files).map(Path::toString).toList());
        List<Recording> logs = new ArrayList<>(input.recordings());
        read.logs().stream().map(Input.Log::recording).forEach(logs::add);
        List<ResultTable> tables = new ArrayList<>(input.tables());
        read.tables().stream().map(Input.Table::table).forEach(tables::add);
        List<Finding> found = new ArrayList<>(input.found());
        found.addAll(read.findings());
        read.tables().forEach(table -> found.addAll(table.findings()));
        return new LoggedDay(input.withSources(logs, tables).withFound(found), labels);
    }

    /** The pulls of the day, what to do next and why. */
    public DayAnswer answer() {
        return DayAnswer.of(result());
    }

    private SessionResult result() {
        SampleMemory memory = new SampleMemory();
        return Session.evaluate(
                input, Session.read(input, List.of(), SampleMemory.most(), pull -> pull.kept(memory::keep)));
    }

    /**
     * The labels of the day against one of them, looked at once; pulls carry the label that their log or the settings give.
     *
     * @param reference the label that the others are held against
     * @return one a label, the highest first, by the response of the plan; without a value where the pulls cannot carry a comparison
     */
    public Outcome<List<LabelDifference>> compare(String reference) {
        SessionResult result = result();
        ComparisonRequest request =
                ComparisonRequest.once(reference, result.plan().goal().worthPercent());
        return ComparedDay.of(result, labels, request)
                .outcome()
                .map(both -> LabelDifference.all(both.by(result.plan().goal().response())));
    }
}
