package org.nextpull.cli;

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
import org.nextpull.intake.FoundSources;
import org.nextpull.intake.SampleMemory;
import org.nextpull.intake.SourceFinder;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.Inputs;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.intake.csv.SettingsFile;
import org.nextpull.notebook.KeptSession;
import org.nextpull.plan.SweepPlan;
import org.nextpull.session.DayPart;
import org.nextpull.session.JoinedDay;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SourcePulls;

/** Reads a day: logs and tables under a plan, sessions of the notebook, or both one after the other. */
final class DayReader {
    private final NotebookOption notebook;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Path> files = new ArrayList<>();
    private final Map<String, String> labels = new HashMap<>();

    DayReader(NotebookOption notebook) {
        this.notebook = notebook;
    }

    /** A session as it was kept. */
    DayInput session(long id) {
        KeptSession kept = notebook.reading(book -> book.session(id));
        return new DayInput(kept.input(), kept.sources(), Map.of(), List.of(), List.of(notebook.file()));
    }

    /**
     * Logs and sessions in the order in which they are named, some with a label.
     *
     * @param planName the plan; without one, that of the first session
     */
    DayInput day(Optional<String> planName, List<LabelledLog> named) {
        files.add(notebook.file());
        List<Named> all = named.stream().map(this::look).toList();
        Optional<PlanFile> file = planName.map(PlanFile::read);
        file.ifPresent(plan -> {
            findings.addAll(plan.findings());
            files.add(plan.path());
        });
        SweepPlan plan = file.map(PlanFile::plan)
                .or(() -> all.stream()
                        .flatMap(one -> one.kept().stream())
                        .map(kept -> kept.input().plan())
                        .findFirst())
                .orElseThrow(() -> new IllegalArgumentException("a day has a plan or a session"));
        LogsOfDay logs = new LogsOfDay(plan);
        List<DayPart> parts = all.stream()
                .map(one -> one.kept().map(kept -> part(one.log(), kept)).orElseGet(() -> logs.part(one.log())))
                .toList();
        if (parts.stream()
                .allMatch(part ->
                        part.sources().isEmpty() && part.input().tables().isEmpty())) {
            throw new Program.BadInput(findings);
        }
        boolean isKept = all.stream().anyMatch(one -> one.kept().isPresent());
        if (isKept && parts.size() > 1) {
            findings.add(Finding.warning(
                    FindingCode.COMPARE_ACROSS_SESSIONS, Place.nowhere(), Detail.of("parts", parts.size())));
        }
        JoinedDay joined = JoinedDay.of(plan, parts);
        List<AskedSetting> settings = new ArrayList<>(joined.input().settings());
        file.ifPresent(known -> settings.addAll(settings(known)));
        return new DayInput(joined.input().withSettings(settings), joined.sources(), labels, findings, files);
    }

    /** What somebody named, and the session where it is one. */
    private record Named(LabelledLog log, Optional<KeptSession> kept) {}

    private Named look(LabelledLog log) {
        return new Named(log, log.session().map(id -> notebook.reading(book -> book.session(id))));
    }

    /** The day with what earlier days in the notebook teach, where there is one and the plan wants it. */
    DayInput learned(DayInput day) {
        SweepPlan plan = day.session().plan();
        if (!plan.wantsEarlierDays() || !(notebook.isNamed() || notebook.isThere())) {
            return day;
        }
        try {
            Optional<Experience> known = notebook.reading(book -> book.experience(plan, day.sources()));
            return known.map(experience -> day.with(day.session().withExperience(experience)))
                    .orElse(day);
        } catch (Program.BadInput unreadable) {
            if (notebook.isNamed()) {
                throw unreadable;
            }
            // nobody asked for it by name: the day stands without it, and says so
            return day.with(
                    unreadable.findings().stream().map(Finding::asWarning).toList());
        }
    }

    private DayPart part(LabelledLog log, KeptSession session) {
        DayPart part = new DayPart(session.input(), session.sources()).named(log.log());
        log.label().ifPresent(label -> label(part, label));
        return part;
    }

    private void label(DayPart part, String label) {
        part.sources().forEach(source -> labels.put(source.name(), label));
        part.input().tables().forEach(table -> labels.put(table.description().name(), label));
    }

    private List<AskedSetting> settings(PlanFile plan) {
        return plan.plan()
                .log()
                .settings()
                .map(name -> settings(plan.resolve(name).toString()))
                .orElse(List.of());
    }

    private List<AskedSetting> settings(String path) {
        FoundSources found = SourceFinder.find(List.of(path));
        findings.addAll(found.findings());
        files.addAll(found.files());
        if (found.sources().isEmpty()) {
            throw new Program.BadInput(found.findings());
        }
        Outcome<List<AskedSetting>> outcome = SettingsFile.read(found.sources().get(0));
        findings.addAll(outcome.findings());
        return outcome.value().orElseThrow(() -> new Program.BadInput(outcome.findings()));
    }

    /** Reads the logs of a day one after the other; the pulls thrown away at its start are counted over all of them. */
    private final class LogsOfDay {
        private final SweepPlan plan;
        private final LogFiles reader;
        private final List<SourcePulls> before = new ArrayList<>();

        LogsOfDay(SweepPlan plan) {
            this.plan = plan;
            this.reader = new LogFiles(plan.log().hints());
        }

        DayPart part(LabelledLog log) {
            Inputs inputs = reader.read(List.of(log.log()));
            files.addAll(inputs.files());
            findings.addAll(inputs.findings());
            inputs.tables().forEach(table -> findings.addAll(table.findings()));
            List<Recording> recordings =
                    inputs.logs().stream().map(Input.Log::recording).toList();
            List<ResultTable> tables =
                    inputs.tables().stream().map(Input.Table::table).toList();
            SessionInput input = SessionInput.of(plan, recordings, tables);
            List<SourcePulls> sources = Session.read(input, before, SampleMemory.most());
            before.addAll(sources);
            sources.forEach(source ->
                    source.findings().stream().filter(Finding::isError).forEach(findings::add));
            log.label().ifPresent(label -> inputs.good().forEach(good -> labels.put(good.name(), label)));
            return new DayPart(input, sources);
        }
    }
}
