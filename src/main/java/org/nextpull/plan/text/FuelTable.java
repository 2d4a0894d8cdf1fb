package org.nextpull.plan.text;

import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Place;
import org.nextpull.plan.FuelChoice;
import org.nextpull.plan.text.PlanTable.Presence;

/** Table {@code [fuel]}. */
final class FuelTable {
    private static final PlanKey<String> BLEND = PlanKey.of(
                    "blend",
                    KeyFormat.text()
                            .allowing("a listed fuel or one of the plan's own")
                            .choosing(BlendTables::names))
            .said(
                    "Blend",
                    "What is in the tank; lambda, energy and knock blocks go with it. `nextpull fuel` lists the fuels.");

    static final PlanTable<FuelChoice> TABLE = PlanTable.of(
            "fuel", Presence.ALWAYS, "Fuel", "What is in the tank.", keys -> keys.maybe(BLEND, FuelChoice::blend));

    private FuelTable() {}

    static FuelChoice read(TableReader fuel, List<TableReader> blends) {
        BlendTables own = BlendTables.read(blends);
        Optional<String> blend = fuel.find(BLEND);
        if (own.isComplete()) {
            Place place = fuel.problems().place(fuel.spot(BLEND));
            blend.ifPresent(
                    name -> fuel.problems().addAll(own.known().find(name, place).findings()));
        }
        return new FuelChoice(blend, own.blends());
    }
}
