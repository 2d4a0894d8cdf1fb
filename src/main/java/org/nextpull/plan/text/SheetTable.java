package org.nextpull.plan.text;

import org.nextpull.plan.SheetFacts;
import org.nextpull.plan.text.PlanTable.Presence;

/** Table {@code [sheet]}. */
final class SheetTable {
    private static final PlanKey<String> CUSTOMER = text("customer", "Customer", "Whom the sheet is for.");
    private static final PlanKey<String> VEHICLE = text("vehicle", "Vehicle", "What was on the dyno.");
    private static final PlanKey<String> PLACE = text("place", "Place", "Where it was run.");
    private static final PlanKey<String> OPERATOR = text("operator", "Operator", "Who ran it.");
    private static final PlanKey<String> REFERENCE = text("reference", "Reference", "The number of the order.");

    static final PlanTable<SheetFacts> TABLE = PlanTable.<SheetFacts>of(
                    "sheet", Presence.ALWAYS, "Sheet", "Words for the job on the printed sheet; all may be left empty.")
            .maybe(CUSTOMER, SheetFacts::customer)
            .maybe(VEHICLE, SheetFacts::vehicle)
            .maybe(PLACE, SheetFacts::place)
            .maybe(OPERATOR, SheetFacts::operator)
            .maybe(REFERENCE, SheetFacts::reference);

    private SheetTable() {}

    private static PlanKey<String> text(String name, String label, String help) {
        return PlanKey.of(name, KeyFormat.text()).said(label, help);
    }

    static SheetFacts read(TableReader table) {
        return new SheetFacts(
                table.find(CUSTOMER),
                table.find(VEHICLE),
                table.find(PLACE),
                table.find(OPERATOR),
                table.find(REFERENCE));
    }
}
