package org.nextpull.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.unit.Unit;

/** Columns whose values hardly go with the unit that their header names. The values stay as they are; the doubt is said. */
final class UnitDoubts {
    private UnitDoubts() {}

    static List<Finding> of(ColumnTable table, List<ColumnDraft> drafts) {
        List<Finding> findings = new ArrayList<>();
        for (ColumnDraft draft : drafts) {
            ProbeColumn probe = table.probes().get(draft.index());
            if (draft.unit().isPresent() && probe.count() > 0) {
                doubt(table, draft, probe.median()).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static Optional<Finding> doubt(ColumnTable table, ColumnDraft draft, double written) {
        Unit named = draft.unit().orElseThrow();
        Optional<ValueRange> usual = Expected.usual(draft.role());
        if (usual.isEmpty() || usual.get().holds(named.toSi(written))) {
            return Optional.empty();
        }
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.quantity() == named.quantity())
                .filter(unit -> usual.get().holds(unit.toSi(written)))
                .findFirst()
                .map(likely -> Finding.warning(
                        FindingCode.COLUMN_UNIT_DOUBTFUL,
                        Place.atLine(table.name(), table.headerLine()).withKey(draft.header()),
                        Detail.of("header", draft.header()),
                        Detail.of("channel", draft.role().id()),
                        Detail.of("unit", named.symbol()),
                        Detail.of("likely_unit", likely.symbol()),
                        Detail.of("middle", written)));
    }
}
