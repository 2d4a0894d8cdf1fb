package org.nextpull.live;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.pull.Candidate;
import org.nextpull.session.SourcePulls;

/** The first pulls of a day, in the order of their numbers. */
final class FirstPulls {
    private FirstPulls() {}

    static List<Candidate> candidates(List<SourcePulls> sources) {
        return sources.stream().flatMap(source -> source.candidates().stream()).toList();
    }

    /** The day as it was after so many pulls. */
    static List<SourcePulls> of(List<SourcePulls> sources, int count) {
        List<SourcePulls> first = new ArrayList<>();
        int left = count;
        for (SourcePulls source : sources) {
            int some = Math.min(left, source.candidates().size());
            left -= some;
            first.add(new SourcePulls(
                    source.name(),
                    source.description(),
                    source.rowCount(),
                    source.candidates().subList(0, some),
                    source.alarms(),
                    source.findings(),
                    source.thrownAway()));
        }
        return first;
    }
}
