package org.nextpull.session;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.AlarmEvent;
import org.nextpull.alarm.AlarmRules;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Recording;
import org.nextpull.channel.RowCount;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.PullFinder;
import org.nextpull.pull.PullRules;

/** Reads a recording from its start to its end, once, and keeps only the pulls in it. */
public final class LogReading {
    private LogReading() {}

    /** The pulls of a recording; one that cannot be read gives a finding, and the pulls before the fault. */
    public static SourcePulls read(Recording recording, PullRules rules, AlarmRules limits) {
        AlarmWatch watch = new AlarmWatch(limits);
        List<Alarm> alarms = new ArrayList<>();
        List<Candidate> candidates = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        try (BlockReader reader = recording.open()) {
            PullFinder finder = new PullFinder(recording.name(), rules, PullFinder.survey(recording, rules));
            Optional<Block> block = reader.next();
            while (block.isPresent()) {
                candidates.addAll(finder.accept(block.get()));
                ended(watch.take(block.get().samples()), alarms);
                block = reader.next();
            }
            candidates.addAll(finder.finish());
            alarms.addAll(watch.sounding());
            findings.addAll(reader.findings());
            findings.addAll(finder.findings());
            return new SourcePulls(
                    recording.name(),
                    Optional.of(reader.description()),
                    reader.rowCount(),
                    candidates,
                    alarms,
                    findings,
                    finder.thrownAway());
        } catch (IOException fault) {
            findings.add(Finding.error(
                    FindingCode.FILE_UNREADABLE,
                    Place.inFile(recording.name()),
                    Detail.of("why", String.valueOf(fault.getMessage()))));
            return new SourcePulls(
                    recording.name(), Optional.empty(), new RowCount(0, 0), candidates, alarms, findings, 0);
        }
    }

    private static void ended(List<AlarmEvent> events, List<Alarm> alarms) {
        events.stream()
                .filter(event -> event.kind() == AlarmEvent.Kind.CLEARED)
                .map(AlarmEvent::alarm)
                .forEach(alarms::add);
    }
}
