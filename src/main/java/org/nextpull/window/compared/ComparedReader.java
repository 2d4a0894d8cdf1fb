package org.nextpull.window.compared;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.FoundSources;
import org.nextpull.intake.SampleMemory;
import org.nextpull.intake.SourceFinder;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.Inputs;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.intake.csv.SettingsFile;
import org.nextpull.notebook.KeptSession;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.DayPart;
import org.nextpull.session.JoinedDay;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SourcePulls;
import org.nextpull.window.past.Shelf;
import org.nextpull.window.start.PlanFiles;

/** Reads what is to be compared: sessions of the notebook, logs under a plan, or both. Not for the event thread. */
final class ComparedReader {
    private final Shelf shelf;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, String> labels = new HashMap<>();
    private final List<SourcePulls> before = new ArrayList<>();

    private ComparedReader(Shelf shelf) {
        this.shelf = shelf;
    }

    /** A contender, with its session where it is one. */
    private record Read(Contender contender, Optional<KeptSession> session) {}

    /**
     * Reads all of it.
     *
     * @param planFile the plan that logs are read by; blank takes that of the first session
     */
    static Outcome<ComparedInput> read(List<Contender> contenders, String planFile, Shelf shelf) {
        return new ComparedReader(shelf).read(contenders, planFile);
    }

    private Outcome<ComparedInput> read(List<Contender> contenders, String planFile) {
        List<Read> read = new ArrayList<>();
        for (Contender contender : contenders) {
            Optional<KeptSession> session = Optional.empty();
            if (contender.session().isPresent()) {
                Outcome<KeptSession> kept = shelf.session(contender.session().getAsLong());
                if (kept.isFailed()) {
                    return Outcome.failed(kept.findings());
                }
                session = kept.value();
            }
            read.add(new Read(contender, session));
        }
        return plan(read, planFile).map(found -> input(read, found)).then(input -> withSettings(input, planFile));
    }

    /** Adds what the settings file says that a plan names. */
    private static Outcome<ComparedInput> withSettings(ComparedInput input, String planFile) {
        Optional<String> name = planFile.isBlank()
                ? Optional.empty()
                : input.day().input().plan().log().settings();
        if (name.isEmpty()) {
            return Outcome.of(input);
        }
        Path file = Path.of(planFile.strip()).resolveSibling(name.get());
        FoundSources found = SourceFinder.find(List.of(file.toString()));
        if (found.sources().isEmpty()) {
            return Outcome.failed(found.findings());
        }
        return SettingsFile.read(found.sources().get(0)).map(input::with);
    }

    private static Outcome<SweepPlan> plan(List<Read> read, String planFile) {
        if (!planFile.isBlank()) {
            return PlanFiles.plan(planFile);
        }
        return read.stream()
                .flatMap(one -> one.session().stream())
                .findFirst()
                .map(session -> Outcome.of(session.input().plan()))
                .orElseGet(() -> Outcome.failed(Finding.error(FindingCode.COMPARE_WITHOUT_PLAN, Place.nowhere())));
    }

    private ComparedInput input(List<Read> read, SweepPlan plan) {
        List<DayPart> parts = read.stream()
                .map(one -> one.session()
                        .map(session -> session(one.contender(), session, read))
                        .orElseGet(() -> logs(one.contender(), plan)))
                .toList();
        if (read.stream().anyMatch(one -> one.session().isPresent()) && parts.size() > 1) {
            findings.add(Finding.warning(
                    FindingCode.COMPARE_ACROSS_SESSIONS, Place.nowhere(), Detail.of("parts", parts.size())));
        }
        return new ComparedInput(JoinedDay.of(plan, parts), labels, findings);
    }

    private DayPart session(Contender contender, KeptSession session, List<Read> all) {
        DayPart part = new DayPart(session.input(), session.sources()).named(contender.what());
        String label =
                contender.label().isEmpty() && !haveOwnLabels(all) ? "session " + session.id() : contender.label();
        if (!label.isEmpty()) {
            part.sources().forEach(source -> labels.put(source.name(), label));
            part.input()
                    .tables()
                    .forEach(table -> labels.put(table.description().name(), label));
        }
        return part;
    }

    /** Whether the labels that the pulls carry tell at least two configurations apart, and no pull is without one. */
    private static boolean haveOwnLabels(List<Read> all) {
        List<MeasuredPull> used = all.stream()
                .flatMap(one -> one.session().stream())
                .flatMap(session -> session.result().pulls().stream())
                .filter(MeasuredPull::isUsed)
                .toList();
        return used.stream().allMatch(pull -> pull.setting().label().isPresent())
                && used.stream().map(pull -> pull.setting().label()).distinct().count() > 1;
    }

    /** Logs; the pulls thrown away at the start are counted over all of them. */
    private DayPart logs(Contender contender, SweepPlan plan) {
        Inputs inputs = new LogFiles(plan.log().hints()).read(List.of(contender.what()));
        findings.addAll(inputs.findings());
        inputs.tables().forEach(table -> findings.addAll(table.findings()));
        SessionInput input = SessionInput.of(
                plan,
                inputs.logs().stream().map(Input.Log::recording).toList(),
                inputs.tables().stream().map(Input.Table::table).toList());
        List<SourcePulls> sources = Session.read(input, before, SampleMemory.most());
        before.addAll(sources);
        sources.forEach(
                source -> source.findings().stream().filter(Finding::isError).forEach(findings::add));
        if (!contender.label().isEmpty()) {
            inputs.good().forEach(good -> labels.put(good.name(), contender.label()));
        }
        return new DayPart(input, sources);
    }
}
