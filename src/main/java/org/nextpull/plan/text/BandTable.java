package org.nextpull.plan.text;

import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.plan.Band;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.SpeedBand;
import org.nextpull.unit.Unit;

/** Table {@code [band]}. */
final class BandTable {
    static final PlanKey<Double> TO = PlanKey.of("to_rpm", KeyFormat.number(Unit.RPM, Range.RPM))
            .needed("needed")
            .said("To", "Highest engine speed of the average; not above the speed limit.");

    /** The widest step between two rows, rpm. */
    static final double MOST_ROW_RPM = 5000;

    private static final PlanKey<Double> FROM = PlanKey.of("from_rpm", KeyFormat.number(Unit.RPM, Range.RPM))
            .needed("needed")
            .said("From", "Lowest engine speed of the average. Leave out what the brake cannot hold steady.");
    static final PlanKey<Integer> ROWS = PlanKey.of(
                    "rows_every_rpm",
                    KeyFormat.whole(new Range(10, MOST_ROW_RPM)).in(Unit.RPM))
            .usual(Band.ROWS_EVERY_RPM)
            .said("Table step", "Step between the rows of the tables by speed.");

    static final PlanTable<Band> TABLE = PlanTable.of(
            "band",
            Presence.SWITCHED,
            "Speed band",
            "The speeds that the answer is for. Logs need it; a table of results does not.",
            keys -> keys.key(FROM, Band::fromRpm).key(TO, Band::toRpm).key(ROWS, Band::rowsEveryRpm));

    private BandTable() {}

    static Optional<Band> read(TableReader table) {
        if (!table.isPresent()) {
            return Optional.empty();
        }
        int rows = table.get(ROWS);
        Optional<Double> from = table.need(FROM);
        Optional<Double> to = table.need(TO);
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        if (from.get() >= to.get()) {
            table.problems().order(Finding.Severity.ERROR, table.spot(FROM), "below", table.spot(TO));
            return Optional.empty();
        }
        return Optional.of(new Band(new SpeedBand(from.get(), to.get()), rows));
    }
}
