package org.nextpull.plan.text;

import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanTable.Presence;

/** Table {@code [sheet]}. */
final class SheetTable {
    private static final PlanKey<String> CUSTOMER = text("customer", "Customer", "Whom the sheet is for.");
    private static final PlanKey<String> VEHICLE = text("vehicle", "Vehicle", "What was on the dyno.");
    private static final PlanKey<String> PLACE = text("place", "Place", "Where it was run.");
    private static final PlanKey<String> OPERATOR = text("operator", "Operator", "Who ran it.");
    private static final PlanKey<String> REFERENCE = text("reference", "Reference", "The number of the order.");

    static final PlanTable<SweepPlan.SheetFacts> TABLE = PlanTable.of(
            "sheet",
            Presence.ALWAYS,
            "Sheet",
            "Words for the job on the printed sheet; all may be left empty.",
            keys -> keys.maybe(CUSTOMER, SweepPlan.SheetFacts::customer)
                    .maybe(VEHICLE, SweepPlan.SheetFacts::vehicle)
                    .maybe(PLACE, SweepPlan.SheetFacts::place)
                    .maybe(OPERATOR, SweepPlan.SheetFacts::operator)
                    .maybe(REFERENCE, SweepPlan.SheetFacts::reference));

    private SheetTable() {}

    private static PlanKey<String> text(String name, String label, String help) {
        return PlanKey.of(name, KeyFormat.text()).said(label, help);
    }

    static SweepPlan.SheetFacts read(TableReader table) {
        return new SweepPlan.SheetFacts(
                table.find(CUSTOMER),
                table.find(VEHICLE),
                table.find(PLACE),
                table.find(OPERATOR),
                table.find(REFERENCE));
    }
}
