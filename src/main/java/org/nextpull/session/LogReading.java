package org.nextpull.session;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Recording;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.pull.Aside;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.PullFinder;
import org.nextpull.pull.PullRules;

/** Reads a recording from its start to its end, once, and keeps only the pulls in it. */
public final class LogReading {
    /** How often the rows of a stretch at full load are there while they become a pull: gathered, taken over, cut out. */
    private static final int COPIES = 3;

    /** Years of a dyno; a log with more is one whose load comes and goes with each row, and would fill any memory. */
    private static final int MOST_PULLS = 20_000;

    private LogReading() {}

    /** The pulls of a recording, none where there are more than any log holds; one that cannot be read gives a finding, and the pulls before the fault. */
    public static SourcePulls read(Recording recording, PullRules rules, AlarmWatch.Rules limits) {
        return read(recording, rules, limits, Long.MAX_VALUE, UnaryOperator.identity());
    }

    /** The same without alarms and without the rows of its pulls, so that a log of any length fits, and of too many pulls the first ones. */
    public static SourcePulls readFigures(Recording recording, PullRules rules, long mostBytes, Aside aside) {
        return read(recording, rules, Optional.empty(), mostBytes, Candidate::withoutSamples, Optional.of(aside));
    }

    /**
     * The same in a small memory.
     *
     * @param mostBytes how much the samples of one stretch at full load may fill; a log with a longer one gives an error and no pull
     * @param keeper gives each pull with its rows where they are to be kept
     */
    public static SourcePulls read(
            Recording recording,
            PullRules rules,
            AlarmWatch.Rules limits,
            long mostBytes,
            UnaryOperator<Candidate> keeper) {
        return read(recording, rules, Optional.of(new AlarmWatch(limits)), mostBytes, keeper, Optional.empty());
    }

    private static SourcePulls read(
            Recording recording,
            PullRules rules,
            Optional<AlarmWatch> watch,
            long mostBytes,
            UnaryOperator<Candidate> keeper,
            Optional<Aside> aside) {
        List<Alarm> alarms = new ArrayList<>();
        List<Candidate> candidates = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        try (BlockReader reader = recording.open()) {
            PullFinder finder = new PullFinder(recording.name(), rules, PullFinder.survey(recording, rules), aside);
            Optional<Block> block = reader.next();
            while (block.isPresent() && candidates.size() < MOST_PULLS) {
                Samples samples = block.get().samples();
                finder.accept(block.get()).forEach(found -> candidates.add(keeper.apply(found)));
                int channels = samples.channels().size();
                if (mostBytes < COPIES * heldBytes(finder.heldRows(), channels)) {
                    return tooLarge(recording, reader, block.get(), mostBytes);
                }
                watch.ifPresent(limits -> ended(limits.take(samples), alarms));
                block = reader.next();
            }
            if (candidates.size() >= MOST_PULLS) {
                findings.add(tooMany(candidates));
                if (watch.isPresent()) {
                    // to go through a day of so many would take many minutes, for what is no day
                    candidates.clear();
                    alarms.clear();
                }
            } else {
                finder.finish().forEach(found -> candidates.add(keeper.apply(found)));
            }
            watch.ifPresent(limits -> alarms.addAll(limits.sounding()));
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
                    recording.name(),
                    Optional.empty(),
                    new BlockReader.RowCount(0, 0),
                    candidates,
                    alarms,
                    findings,
                    0);
        }
    }

    /** A number a channel; a line, two words and a share of what marks gaps a row. */
    private static long heldBytes(long rows, int channels) {
        return rows * (8L * channels + 24);
    }

    private static SourcePulls tooLarge(Recording recording, BlockReader reader, Block block, long mostBytes) {
        long line = block.samples().line(block.samples().rows() - 1);
        Finding finding = Finding.error(
                FindingCode.LOG_TOO_LARGE_FOR_MEMORY,
                Place.inFile(recording.name()),
                Detail.of("line", (double) line),
                Detail.of("megabytes", Math.max(0, Math.rint(mostBytes / 1e6))));
        return new SourcePulls(
                recording.name(),
                Optional.of(reader.description()),
                reader.rowCount(),
                List.of(),
                List.of(),
                List.of(finding),
                0);
    }

    private static Finding tooMany(List<Candidate> candidates) {
        Candidate last = candidates.get(candidates.size() - 1);
        return Finding.error(
                FindingCode.LOG_WITH_TOO_MANY_PULLS,
                Place.inFile(last.source()),
                Detail.of("line", (double) last.lastLine()),
                Detail.of("count", candidates.size()));
    }

    private static void ended(List<Alarm.Event> events, List<Alarm> alarms) {
        events.stream()
                .filter(event -> event.kind() == Alarm.Event.Kind.CLEARED)
                .map(Alarm.Event::alarm)
                .forEach(alarms::add);
    }
}
