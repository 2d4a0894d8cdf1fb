package org.nextpull.live;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Recording;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.ByteSource;
import org.nextpull.intake.SampleMemory;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.Fingerprint;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.PullRules;
import org.nextpull.session.LogReading;
import org.nextpull.session.SourcePulls;

/**
 * The pulls in the files of a folder, each file read as any log is once it is complete. Numbers of pulls never change: what a file gains
 * after it was taken comes behind all that was taken before, and a file that was written anew is another one.
 */
final class FolderPulls implements DayPulls {
    private static final int BUFFER_BYTES = 1 << 16;

    private final FileBytes bytes;
    private final SampleMemory memory = new SampleMemory();
    private final LogFiles logs;
    private final PullRules rules;
    private final Map<String, Taken> taken = new HashMap<>();
    private final List<SourcePulls> pulls = new ArrayList<>();
    private final List<Finding> news = new ArrayList<>();
    private AlarmWatch.Rules limits;
    private int count;
    private int thrownAway;

    /**
     * A file that was taken.
     *
     * @param name name of its present content
     * @param times how often it was taken with other content
     * @param candidates how many of its candidates were taken
     * @param throwAway how many good pulls were still to be thrown away when its first was looked for
     * @param print its content
     */
    private record Taken(String name, int times, int candidates, int throwAway, Fingerprint print) {}

    FolderPulls(Path folder, LogHints hints, PullRules rules, AlarmWatch.Rules limits) {
        this.bytes = new FileBytes(
                folder, FileBytes.usualMostBytes(Runtime.getRuntime().maxMemory()));
        this.logs = new LogFiles(hints);
        this.rules = rules;
        this.limits = limits;
    }

    @Override
    public void see(Arrival arrival) {
        bytes.see(arrival);
    }

    @Override
    public void complete(Arrival.FileComplete file) {
        try {
            Optional<ByteSource> source = bytes.of(file);
            if (source.isEmpty()) {
                news.add(Finding.error(FindingCode.LIVE_FILE_CHANGED, Place.inFile(file.file())));
                return;
            }
            Optional<Taken> before = Optional.ofNullable(taken.get(file.file()));
            Taken now = before.isPresent() && begins(source.get(), before.get().print())
                    ? before.get()
                    : fresh(file, before.map(Taken::times).orElse(0) + 1);
            Outcome<Input> outcome = logs.read(new Named(now.name(), source.get()));
            news.addAll(outcome.findings());
            outcome.value().ifPresent(input -> take(input, file, now));
        } catch (IOException fault) {
            news.add(Finding.error(
                    FindingCode.FILE_UNREADABLE,
                    Place.inFile(file.file()),
                    Detail.of("why", String.valueOf(fault.getMessage()))));
        }
    }

    /** Whether a file begins with what was taken of it before. */
    private static boolean begins(ByteSource source, Fingerprint before) throws IOException {
        MessageDigest digest = Fingerprint.digest();
        byte[] buffer = new byte[BUFFER_BYTES];
        long left = before.length();
        try (InputStream in = source.open()) {
            while (left > 0) {
                int count = in.read(buffer, 0, (int) Math.min(buffer.length, left));
                if (count < 0) {
                    return false;
                }
                digest.update(buffer, 0, count);
                left -= count;
            }
        }
        return Fingerprint.of(before.length(), digest).equals(before);
    }

    private Taken fresh(Arrival.FileComplete file, int times) {
        String name = times == 1 ? file.file() : file.file() + " (" + times + ")";
        return new Taken(name, times, 0, rules.throwAwayFirst() - thrownAway, file.print());
    }

    private record Named(String name, ByteSource source) implements ByteSource {
        @Override
        public InputStream open() throws IOException {
            return source.open();
        }
    }

    private void take(Input input, Arrival.FileComplete file, Taken now) {
        if (input instanceof Input.Log log) {
            take(log.recording(), file, now);
        } else {
            news.add(Finding.warning(FindingCode.LIVE_TABLE_IN_FOLDER, Place.inFile(file.file())));
        }
    }

    private void take(Recording recording, Arrival.FileComplete file, Taken now) {
        SourcePulls all = LogReading.read(
                recording,
                rules.withThrowAwayFirst(now.throwAway()),
                limits,
                SampleMemory.most(),
                pull -> pull.kept(memory::keep));
        List<Candidate> more = all.candidates().stream()
                .filter(candidate -> candidate.number() > now.candidates())
                .toList();
        taken.put(
                file.file(),
                new Taken(now.name(), now.times(), all.candidates().size(), now.throwAway(), file.print()));
        if (now.candidates() == 0) {
            thrownAway += all.thrownAway();
        }
        news.addAll(all.findings());
        count += more.size();
        pulls.add(new SourcePulls(
                all.name(),
                all.description(),
                all.rowCount(),
                more,
                all.alarms(),
                all.findings(),
                now.candidates() == 0 ? all.thrownAway() : 0));
    }

    @Override
    public List<Finding> takeNews() {
        List<Finding> result = List.copyOf(news);
        news.clear();
        return result;
    }

    @Override
    public List<SourcePulls> pulls() {
        return List.copyOf(pulls);
    }

    @Override
    public int count() {
        return count;
    }

    @Override
    public int whole() {
        return count;
    }

    @Override
    public OptionalDouble loadedSinceS() {
        return OptionalDouble.empty();
    }

    @Override
    public void limits(AlarmWatch.Rules newLimits) {
        limits = newLimits;
    }
}
