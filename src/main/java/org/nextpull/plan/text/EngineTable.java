package org.nextpull.plan.text;

import org.nextpull.plan.EngineFacts;
import org.nextpull.plan.EngineFacts.Induction;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Unit;

/** Table {@code [engine]}. */
final class EngineTable {
    private static final PlanKey<Induction> INDUCTION = PlanKey.of("induction", KeyFormat.word(Induction.class))
            .usual(Induction.NATURAL)
            .said("Induction", "A boosted engine gets smaller spark steps, since knock comes suddenly there.");

    private static final PlanKey<String> NAME = PlanKey.of("name", KeyFormat.text())
            .said("Name", "What you call the engine; sessions of the same name teach each other.");
    private static final PlanKey<Double> DISPLACEMENT = PlanKey.of(
                    "displacement_l", KeyFormat.number(Unit.LITRE, new Range(0.01, 100)))
            .said("Displacement", "Displacement of all cylinders; a check on fuel flow and torque.");
    private static final PlanKey<Integer> CYLINDERS = PlanKey.of("cylinders", KeyFormat.whole(new Range(1, 48)))
            .said("Cylinders", "How many; a check on knock counts and injectors.");
    private static final PlanKey<Double> COMPRESSION = PlanKey.of(
                    "compression_ratio", KeyFormat.number(new Range(2, 40)))
            .said("Compression", "Geometric; kept with the session, so that days can be told apart.");

    static final PlanTable<EngineFacts> TABLE = PlanTable.of(
            "engine",
            Presence.ALWAYS,
            "Engine",
            "Engine under test.",
            keys -> keys.maybe(NAME, EngineFacts::name)
                    .number(DISPLACEMENT, EngineFacts::displacementM3)
                    .maybe(
                            CYLINDERS,
                            engine -> engine.cylinders().stream().boxed().findFirst())
                    .number(COMPRESSION, EngineFacts::compressionRatio)
                    .key(INDUCTION, EngineFacts::induction));

    private EngineTable() {}

    /** How the engine of a plan breathes, asked from another of its tables. */
    static Induction induction(TableReader other) {
        return other.beside("engine").peek(INDUCTION).orElse(Induction.NATURAL);
    }

    static EngineFacts read(TableReader table) {
        return new EngineFacts(
                table.find(NAME),
                table.number(DISPLACEMENT),
                table.find(CYLINDERS).stream().mapToInt(Integer::intValue).findFirst(),
                table.number(COMPRESSION),
                table.get(INDUCTION));
    }
}
