package org.nextpull.plan.text;

import java.util.List;
import java.util.Optional;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.plan.AirFacts;
import org.nextpull.unit.Unit;

/** Table {@code [air]}. */
final class AirTable {
    private AirTable() {}

    /** The standard that a key names. */
    static Optional<CorrectionStandard> standard(TableReader table, String key) {
        List<String> ids =
                CorrectionStandard.all().stream().map(CorrectionStandard::id).toList();
        return table.oneOf(key, ids)
                .flatMap(id -> CorrectionStandard.all().stream()
                        .filter(standard -> standard.id().equals(id))
                        .findFirst());
    }

    static AirFacts read(TableReader table) {
        return new AirFacts(
                standard(table, "standard").orElse(AirFacts.defaults().standard()),
                Si.kilopascals(table.number("baro_kpa", new Range(30, 120))),
                Si.celsius(table.number("air_c", new Range(-60, 80))),
                Si.of(Unit.PERCENT, table.number("humidity_percent", new Range(0, 100))));
    }

    static String write(AirFacts air) {
        TableWriter table = new TableWriter("[air]");
        table.text("standard", Optional.of(air.standard().id()));
        table.quantity("baro_kpa", Unit.KILOPASCAL, Si.pascals(air.baro()));
        table.quantity("air_c", Unit.CELSIUS, Si.kelvins(air.air()));
        table.quantity("humidity_percent", Unit.PERCENT, air.humidity());
        return table.written();
    }
}
