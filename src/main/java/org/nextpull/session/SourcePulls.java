package org.nextpull.session;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Finding;
import org.nextpull.pull.Candidate;

/**
 * What a log holds.
 *
 * @param name as the user gave it
 * @param description how it was understood; empty when it could not be opened
 * @param rowCount rows read and skipped
 * @param candidates the pulls found in it, refused ones included
 * @param alarms every stretch in which a limit of the plan was passed, by its first row
 * @param findings what is wrong or worth saying of the file
 * @param thrownAway how many good candidates were refused as the first ones, which warm the engine
 */
public record SourcePulls(
        String name,
        Optional<SourceDescription> description,
        BlockReader.RowCount rowCount,
        List<Candidate> candidates,
        List<Alarm> alarms,
        List<Finding> findings,
        int thrownAway) {
    public SourcePulls {
        candidates = List.copyOf(candidates);
        alarms = List.copyOf(alarms);
        findings = List.copyOf(findings);
    }

    /** The same with other candidates. */
    public SourcePulls withCandidates(List<Candidate> newCandidates) {
        return new SourcePulls(name, description, rowCount, newCandidates, alarms, findings, thrownAway);
    }

    /** Rows a second inside the pulls, by the middle one of them; empty without a pull. */
    public OptionalDouble sampleHz() {
        double[] steps = candidates.stream()
                .mapToDouble(candidate -> candidate.lines().stepS())
                .filter(step -> step > 0)
                .sorted()
                .toArray();
        return steps.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(1 / steps[steps.length / 2]);
    }

    /** The alarms of a candidate: those within it and its knock just beside it, and after one that was broken off those up to the next, which may be the reason. */
    List<Alarm> alarmsOf(Candidate candidate) {
        Samples knock = candidate.knock();
        boolean isHeard = knock.rows() > 0;
        long first = Math.min(candidate.firstLine(), isHeard ? knock.line(0) : Long.MAX_VALUE);
        long end = candidate.isUsable()
                ? Math.max(candidate.lastLine(), isHeard ? knock.line(knock.rows() - 1) : 0)
                : candidates.stream()
                        .filter(next -> next.number() > candidate.number())
                        .mapToLong(Candidate::firstLine)
                        .min()
                        .orElse(Long.MAX_VALUE);
        return alarms.stream()
                .filter(alarm -> alarm.since().line() <= end && alarm.until().line() >= first)
                .toList();
    }
}
