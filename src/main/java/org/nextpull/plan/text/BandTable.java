package org.nextpull.plan.text;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.finding.Severity;
import org.nextpull.plan.Band;
import org.nextpull.unit.SpeedBand;

/** Table {@code [band]}. */
final class BandTable {
    private BandTable() {}

    static Optional<Band> read(TableReader table) {
        int rows = table.whole("rows_every_rpm", new Range(10, 5000), Band.ROWS_EVERY_RPM);
        table.know(List.of("from_rpm", "to_rpm"));
        if (!table.isPresent()) {
            return Optional.empty();
        }
        OptionalDouble from = table.neededNumber("from_rpm", Range.RPM);
        OptionalDouble to = table.neededNumber("to_rpm", Range.RPM);
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        if (from.getAsDouble() >= to.getAsDouble()) {
            table.problems().order(Severity.ERROR, table.spot("from_rpm"), "below", table.spot("to_rpm"));
            return Optional.empty();
        }
        return Optional.of(new Band(new SpeedBand(from.getAsDouble(), to.getAsDouble()), rows));
    }

    static String write(Band band) {
        TableWriter table = new TableWriter("[band]");
        table.number("from_rpm", band.fromRpm());
        table.number("to_rpm", band.toRpm());
        table.number("rows_every_rpm", band.rowsEveryRpm());
        return table.written();
    }
}
