package org.nextpull.pull;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Recording;
import org.nextpull.finding.Finding;

/**
 * All that was found in one recording.
 *
 * @param candidates pulls and refused candidates in order of time
 * @param thrownAway how many good ones were refused as warming pulls
 * @param findings what is to be said about the recording as a whole
 */
public record FoundPulls(List<Candidate> candidates, int thrownAway, List<Finding> findings) {
    public FoundPulls {
        candidates = List.copyOf(candidates);
        findings = List.copyOf(findings);
    }

    /** The candidates that are pulls. */
    public List<Candidate> usable() {
        return candidates.stream().filter(Candidate::isUsable).toList();
    }

    /**
     * All pulls of a recording; it is read twice where no throttle is logged.
     *
     * @throws IOException when the recording cannot be opened or read to its end
     */
    public static FoundPulls find(Recording recording, PullRules rules) throws IOException {
        PullFinder finder = new PullFinder(
                recording.name(), rules, PullFinder.survey(recording, rules), Optional.of(FoundPulls::aside));
        List<Candidate> candidates = new ArrayList<>();
        try (BlockReader reader = recording.open()) {
            for (Optional<Block> block = reader.next(); block.isPresent(); block = reader.next()) {
                candidates.addAll(finder.accept(block.get()));
            }
        }
        candidates.addAll(finder.finish());
        return new FoundPulls(candidates, finder.thrownAway(), finder.findings());
    }

    private static Runnable aside(Runnable work) {
        return CompletableFuture.runAsync(work)::join;
    }
}
