package org.nextpull.session;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.ResultTable;
import org.nextpull.plan.SweepPlan;

/**
 * Several days one after the other as one, under one plan: logs beside kept sessions. Pulls are numbered over all logs first and all
 * tables then, as everywhere; what was done by hand in a part follows its pulls. A pull that stands in several
 * of them counts once.
 *
 * @param input what the result is made from
 * @param sources the logs of all parts in order
 */
public record JoinedDay(SessionInput input, List<SourcePulls> sources) {
    public JoinedDay {
        sources = List.copyOf(sources);
    }

    public static JoinedDay of(SweepPlan plan, List<DayPart> parts) {
        List<SourcePulls> sources = new ArrayList<>();
        List<ResultTable> tables = new ArrayList<>();
        List<AskedSetting> settings = new ArrayList<>();
        Amendments amendments = Amendments.none();
        int candidates = parts.stream().mapToInt(DayPart::candidates).sum();
        int candidatesBefore = 0;
        int rowsBefore = 0;
        for (DayPart part : parts) {
            int own = part.candidates();
            int intoCandidates = candidatesBefore;
            int intoRows = candidates + rowsBefore - own;
            amendments = amendments.with(part.input()
                    .amendments()
                    .renumbered(pull -> pull <= own ? pull + intoCandidates : pull + intoRows));
            sources.addAll(part.sources());
            tables.addAll(part.input().tables());
            settings.addAll(part.input().settings());
            candidatesBefore += own;
            rowsBefore += part.rows();
        }
        SessionInput input =
                SessionInput.of(plan, List.of(), tables).withSettings(settings).withAmendments(amendments);
        return new JoinedDay(input, DuplicatePulls.in(sources, input.amendments()));
    }
}
