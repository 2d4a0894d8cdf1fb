package org.nextpull.notebook;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A session in a list.
 *
 * @param id number in the notebook
 * @param started when it began
 * @param closed when it ended in order; empty while it runs and after a power cut
 * @param engine name of the engine
 * @param fuel fuel of the plan
 * @param planName name of the plan file
 * @param labels configurations that were run
 * @param pulls pulls kept, refused ones included
 * @param used pulls that count
 * @param version version of the program
 * @param lastAdvice what was advised last
 */
public record SessionSummary(
        long id,
        Instant started,
        Optional<Instant> closed,
        Optional<String> engine,
        Optional<String> fuel,
        String planName,
        List<String> labels,
        int pulls,
        int used,
        String version,
        Optional<String> lastAdvice) {
    public SessionSummary {
        labels = List.copyOf(labels);
    }
}
