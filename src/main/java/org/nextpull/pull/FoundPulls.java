package org.nextpull.pull;

import java.util.List;
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
}
