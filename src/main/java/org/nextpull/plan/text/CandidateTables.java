package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.FuelChoice;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;

/** The list of tables {@code [[candidate]]}. */
final class CandidateTables {
    private static final PlanKey<String> LABEL = PlanKey.of("label", KeyFormat.text())
            .needed("needed")
            .said("Label", "How log and settings call its pulls; no two the same.");
    private static final PlanKey<String> FUEL = PlanKey.of(
                    "fuel",
                    KeyFormat.text()
                            .allowing("a listed fuel or one of the plan's own")
                            .choosing(BlendTables::names))
            .said("Fuel", "What it runs on; the plan's fuel where left out.");
    private static final PlanKey<String> NOTE =
            PlanKey.of("note", KeyFormat.text()).said("Note", "Parts and fuel, in your words.");
    private static final PlanKey<Double> PRICE = PlanKey.of("price_per_l", KeyFormat.number(new Range(0, 100_000)))
            .said(
                    "Price",
                    "What a litre of its fuel costs, in one currency for all; the answer then says what the fuel costs.");

    static final PlanTable<SweepPlan.Candidate> TABLE = PlanTable.of(
            "candidate",
            Presence.LISTED,
            "Candidate",
            "A fuel or part between which the day decides; the first is the reference.",
            keys -> keys.key(LABEL, SweepPlan.Candidate::label)
                    .maybe(FUEL, SweepPlan.Candidate::fuel)
                    .maybe(NOTE, SweepPlan.Candidate::note)
                    .number(PRICE, SweepPlan.Candidate::pricePerLitre));

    private CandidateTables() {}

    static List<SweepPlan.Candidate> read(List<TableReader> tables, FuelChoice fuels) {
        List<SweepPlan.Candidate> candidates = new ArrayList<>();
        Set<String> labels = new HashSet<>();
        for (TableReader table : tables) {
            Optional<String> fuel = table.find(FUEL);
            fuel.ifPresent(name -> fuels.blends()
                    .value()
                    .ifPresent(known -> table.problems()
                            .addAll(known.find(name, table.problems().place(table.spot(FUEL)))
                                    .findings())));
            Optional<String> label = table.need(LABEL);
            if (label.isPresent() && !labels.add(label.get())) {
                table.problems().error(FindingCode.PLAN_NAME_TWICE, table.spot(LABEL));
            }
            Optional<String> note = table.find(NOTE);
            OptionalDouble price = table.number(PRICE);
            label.ifPresent(name -> candidates.add(new SweepPlan.Candidate(name, fuel, note, price)));
        }
        if (tables.size() == 1) {
            tables.get(0)
                    .problems()
                    .error(FindingCode.PLAN_ONE_CANDIDATE, tables.get(0).spot());
        }
        return candidates;
    }
}
