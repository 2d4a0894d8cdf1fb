package org.nextpull.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Recording;
import org.nextpull.channel.ResultTable;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fit.Experience;
import org.nextpull.intake.SampleMemory;
import org.nextpull.intake.SourceFinder;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.Inputs;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.intake.csv.SettingsFile;
import org.nextpull.notebook.KeptSession;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.JoinedDay;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SourcePulls;

/** Reads a day: logs and tables under a plan, sessions of the notebook, or both one after the other. Not for the event thread. */
public final class DayReader {
    private final NotebookAccess notebook;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Path> files = new ArrayList<>();
    private final Map<String, String> labels = new HashMap<>();

    private DayReader(NotebookAccess notebook) {
        this.notebook = notebook;
        this.files.add(notebook.file());
    }

    /** A session as it was kept. */
    public static Outcome<DayInput> session(NotebookAccess notebook, long id) {
        return notebook.session(id).map(kept -> of(notebook, kept));
    }

    /** A session that was read already. */
    public static DayInput of(NotebookAccess notebook, KeptSession kept) {
        return new DayInput(
                kept.input(), kept.sources(), Map.of(), Optional.of(kept.summary()), List.of(notebook.file()));
    }

    /**
     * Logs and sessions in the order in which they are named, some with a label; failed where none of them holds anything.
     *
     * @param planName the plan; without one, that of the first session
     */
    public static Outcome<DayInput> day(NotebookAccess notebook, Optional<String> planName, List<LabelledLog> named) {
        return new DayReader(notebook).read(planName, named);
    }

    /** What somebody named, and the session where it is one. */
    private record Named(LabelledLog log, Optional<KeptSession> kept) {}

    private Outcome<DayInput> read(Optional<String> planName, List<LabelledLog> logs) {
        List<Named> named = new ArrayList<>();
        for (LabelledLog log : logs) {
            Optional<Outcome<KeptSession>> kept = log.session().map(notebook::session);
            if (kept.isPresent() && kept.get().isFailed()) {
                return Outcome.failed(kept.get().findings());
            }
            named.add(new Named(log, kept.flatMap(Outcome::value)));
        }
        Optional<Outcome<PlanFile>> file = planName.map(PlanFile::read);
        file.ifPresent(read -> findings.addAll(read.findings()));
        if (file.isPresent() && file.get().isFailed()) {
            return Outcome.failed(findings);
        }
        Optional<PlanFile> planFile = file.flatMap(Outcome::value);
        return planFile.map(PlanFile::plan)
                .or(() -> named.stream()
                        .flatMap(one -> one.kept().stream())
                        .map(kept -> kept.input().plan())
                        .findFirst())
                .map(plan -> join(plan, named, planFile))
                .orElseGet(() -> Outcome.failed(Finding.error(FindingCode.COMPARE_WITHOUT_PLAN, Place.nowhere())));
    }

    private Outcome<DayInput> join(SweepPlan plan, List<Named> named, Optional<PlanFile> file) {
        LogsOfDay logs = new LogsOfDay(plan);
        boolean needNames = named.size() > 1 && !haveOwnLabels(named);
        List<JoinedDay.Part> parts = named.stream()
                .map(one -> one.kept()
                        .map(kept -> session(one.log(), kept, needNames))
                        .orElseGet(() -> logs.part(one.log())))
                .toList();
        if (parts.stream()
                .allMatch(part ->
                        part.sources().isEmpty() && part.input().tables().isEmpty())) {
            return Outcome.failed(findings);
        }
        if (named.stream().anyMatch(one -> one.kept().isPresent()) && parts.size() > 1) {
            findings.add(Finding.warning(
                    FindingCode.COMPARE_ACROSS_SESSIONS, Place.nowhere(), Detail.of("parts", parts.size())));
        }
        JoinedDay joined = JoinedDay.of(plan, parts);
        file.ifPresent(known -> files.add(known.path()));
        Outcome<List<AskedSetting>> asked = file.map(this::settings).orElseGet(() -> Outcome.of(List.of()));
        findings.addAll(asked.findings());
        List<AskedSetting> settings = new ArrayList<>(joined.input().settings());
        settings.addAll(asked.value().orElse(List.of()));
        return asked.isFailed()
                ? Outcome.failed(findings)
                : Outcome.of(new DayInput(
                        joined.input().withSettings(settings).withFound(findings),
                        joined.sources(),
                        labels,
                        Optional.empty(),
                        files));
    }

    /** Whether the labels that the pulls of sessions carry tell at least two configurations apart, and no pull is without one. */
    private static boolean haveOwnLabels(List<Named> all) {
        List<Optional<String>> used = all.stream()
                .flatMap(one -> one.kept().stream())
                .flatMap(session -> session.result().pulls().stream())
                .filter(MeasuredPull::isUsed)
                .map(pull -> pull.setting().label())
                .toList();
        return used.stream().allMatch(Optional::isPresent)
                && used.stream().distinct().count() > 1;
    }

    private JoinedDay.Part session(LabelledLog log, KeptSession session, boolean needsName) {
        JoinedDay.Part part = new JoinedDay.Part(session.input(), session.sources()).named(log.log());
        log.label()
                .or(() -> needsName ? Optional.of("session " + session.id()) : Optional.empty())
                .ifPresent(label -> label(part, label));
        return part;
    }

    private void label(JoinedDay.Part part, String label) {
        part.sources().forEach(source -> labels.put(source.name(), label));
        part.input().tables().forEach(table -> labels.put(table.description().name(), label));
    }

    /** What the settings file says that a plan names. */
    private Outcome<List<AskedSetting>> settings(PlanFile plan) {
        Optional<String> name = plan.plan().log().settings();
        if (name.isEmpty()) {
            return Outcome.of(List.of());
        }
        SourceFinder.Found found =
                SourceFinder.find(List.of(plan.resolve(name.get()).toString()));
        files.addAll(found.files());
        return found.sources().isEmpty()
                ? Outcome.failed(found.findings())
                : Outcome.of(true, found.findings())
                        .then(read -> SettingsFile.read(found.sources().get(0)));
    }

    /** The day with what earlier days in the notebook teach, where there is one and the plan wants it. */
    public static Outcome<DayInput> learned(NotebookAccess notebook, DayInput day) {
        SweepPlan plan = day.session().plan();
        if (!plan.wantsEarlierDays() || !(notebook.isNamed() || notebook.isThere())) {
            return Outcome.of(day);
        }
        Outcome<Optional<Experience>> known = notebook.read(book -> book.experience(plan, day.sources()));
        if (known.isFailed() && notebook.isNamed()) {
            return Outcome.failed(known.findings());
        }
        // nobody asked for it by name: the day stands without it, and says so
        List<Finding> found = new ArrayList<>(day.findings());
        known.findings().forEach(finding -> found.add(finding.asWarning()));
        SessionInput input = day.session().withFound(found);
        return Outcome.of(day.with(known.value()
                .flatMap(experience -> experience)
                .map(input::withExperience)
                .orElse(input)));
    }

    /** Reads the logs of a day one after the other; the pulls thrown away at its start are counted over all of them. */
    private final class LogsOfDay {
        private final SweepPlan plan;
        private final LogFiles reader;
        private final SampleMemory memory = new SampleMemory();
        private final List<SourcePulls> before = new ArrayList<>();

        LogsOfDay(SweepPlan plan) {
            this.plan = plan;
            this.reader = new LogFiles(plan.log().hints());
        }

        JoinedDay.Part part(LabelledLog log) {
            Inputs inputs = reader.read(List.of(log.log()));
            files.addAll(inputs.files());
            findings.addAll(inputs.findings());
            inputs.tables().forEach(table -> findings.addAll(table.findings()));
            List<Recording> recordings =
                    inputs.logs().stream().map(Input.Log::recording).toList();
            List<ResultTable> tables =
                    inputs.tables().stream().map(Input.Table::table).toList();
            SessionInput input = SessionInput.of(plan, recordings, tables);
            List<SourcePulls> sources =
                    Session.read(input, before, SampleMemory.most(), pull -> pull.kept(memory::keep));
            before.addAll(sources);
            sources.forEach(source ->
                    source.findings().stream().filter(Finding::isError).forEach(findings::add));
            log.label().ifPresent(label -> inputs.good().forEach(good -> labels.put(good.name(), label)));
            return new JoinedDay.Part(input, sources);
        }
    }
}
