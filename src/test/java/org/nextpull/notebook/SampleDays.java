package org.nextpull.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.ResultTable;
import org.nextpull.intake.SourceFinder;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.Inputs;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.intake.csv.SettingsFile;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.PullRules;
import org.nextpull.session.LogReading;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;
import org.nextpull.session.SourcePulls;

/** Days out of the logs that come with the program, and tables of results, kept in a notebook. */
final class SampleDays {
    static final Instant MORNING = Instant.parse("2026-05-09T08:00:00Z");
    static final List<String> NAMES = List.of(
            "hillclimb-e10-timing",
            "hillclimb-e10-mixture",
            "hillclimb-knock",
            "hillclimb-manifold",
            "hatchback-roller-mixture");

    private SampleDays() {}

    /** A day as a live session has it: read once, then evaluated from what was read. */
    record Day(SessionStart start, SessionInput input, List<SourcePulls> sources) {
        SessionResult result() {
            return Session.evaluate(input, sources);
        }

        /** The day as it stood after so many candidates of its only log. */
        Day first(int candidates) {
            SourcePulls whole = sources.get(0);
            SourcePulls part = new SourcePulls(
                    whole.name(),
                    whole.description(),
                    whole.rowCount(),
                    whole.candidates().subList(0, candidates),
                    whole.alarms(),
                    whole.findings(),
                    whole.thrownAway());
            return new Day(start, input, List.of(part));
        }

        Day with(SessionInput newInput) {
            return new Day(start, newInput, sources);
        }
    }

    static Day of(String name) throws IOException {
        Path file = Path.of("sweep-plans", name + ".toml");
        return of(Files.readString(file), file.toString(), "sample-logs/" + name + ".csv");
    }

    static Day of(String planText, String planName, String log) {
        SessionStart start = new SessionStart(MORNING, "test", planName, planText, Optional.empty());
        SweepPlan plan = start.plan().value().orElseThrow();
        Inputs inputs = new LogFiles(plan.log().hints()).read(List.of(log));
        assertThat(inputs.good()).as(inputs.findings().toString()).isNotEmpty();
        List<SourcePulls> sources = inputs.logs().stream()
                .map(Input.Log::recording)
                .map(recording -> LogReading.read(recording, PullRules.of(plan), AlarmWatch.Rules.of(plan)))
                .toList();
        List<ResultTable> tables =
                inputs.tables().stream().map(Input.Table::table).toList();
        List<AskedSetting> settings = plan.log()
                .settings()
                .map(settingsFile -> SettingsFile.read(SourceFinder.find(List.of("sweep-plans/" + settingsFile))
                                .sources()
                                .get(0))
                        .value()
                        .orElseThrow())
                .orElse(List.of());
        return new Day(start, SessionInput.of(plan, List.of(), tables).withSettings(settings), sources);
    }

    /** Keeps a day whole, as one that was over. */
    static long keep(Notebook notebook, Day day) throws IOException {
        long id = notebook.begin(day.start());
        notebook.keepPull(id, MORNING.plusSeconds(3600), day.input(), day.result());
        notebook.close(id, MORNING.plusSeconds(7200));
        return id;
    }
}
