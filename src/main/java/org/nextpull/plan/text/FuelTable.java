package org.nextpull.plan.text;

import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Place;
import org.nextpull.plan.FuelChoice;

/** Tables {@code [fuel]} and {@code [[blend]]}. */
final class FuelTable {
    private FuelTable() {}

    static FuelChoice read(TableReader fuel, List<TableReader> blends) {
        BlendTables own = BlendTables.read(blends);
        Optional<String> blend = fuel.text("blend");
        if (own.isComplete()) {
            Place place = fuel.problems().place(fuel.spot("blend"));
            blend.ifPresent(
                    name -> fuel.problems().addAll(own.known().find(name, place).findings()));
        }
        return new FuelChoice(blend, own.blends());
    }

    static String write(FuelChoice fuel) {
        TableWriter table = new TableWriter("[fuel]");
        table.text("blend", fuel.blend());
        StringBuilder all = new StringBuilder(table.written());
        fuel.own().forEach(blend -> all.append(BlendTables.write(blend)));
        return all.toString();
    }
}
