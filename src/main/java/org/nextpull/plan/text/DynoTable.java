package org.nextpull.plan.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.DynoFacts;
import org.nextpull.plan.DynoFacts.Inertia;
import org.nextpull.plan.DynoFacts.InertiaInLog;
import org.nextpull.plan.DynoFacts.Kind;
import org.nextpull.plan.DynoFacts.Shaft;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Unit;

/** Table {@code [dyno]}. */
final class DynoTable {
    private static final PlanKey<Kind> KIND = PlanKey.of("kind", KeyFormat.word(Kind.class))
            .usual(Kind.ENGINE_BRAKE)
            .said("Kind", "An engine dyno, a braked chassis dyno, or an inertia chassis dyno.");
    private static final PlanKey<Shaft> TORQUE_AT = PlanKey.of("torque_at", KeyFormat.word(Shaft.class))
            .usual(table -> table.peek(KIND).orElse(Kind.ENGINE_BRAKE).usualShaft())
            .said(
                    "Torque at",
                    "The shaft that the logged torque is of; `wheel` is the default of the two chassis kinds. Nothing is"
                            + " added for losses that were not measured.");
    private static final PlanKey<Double> ENGINE_SIDE = PlanKey.of(
                    "engine_side_inertia_kg_m2", KeyFormat.number(Unit.KILOGRAM_SQUARE_METRE, new Range(1e-4, 50)))
            .said(
                    "Inertia, engine",
                    "Of all that turns with the engine; torque of a fast pull is wrong without it, unless the log holds"
                            + " it.");
    private static final PlanKey<Double> ROLLER_INERTIA = PlanKey.of(
                    "roller_inertia_kg_m2", KeyFormat.number(Unit.KILOGRAM_SQUARE_METRE, new Range(0.01, 5000)))
            .said(
                    "Inertia, roller",
                    "Of all that turns with the roller; an inertia roller measures nothing without it.");
    private static final PlanKey<Double> ROLLER_RADIUS = PlanKey.of(
                    "roller_radius_m", KeyFormat.number(Unit.METRE, new Range(0.02, 3)))
            .said("Roller radius", "Turns road speed into roller speed.");
    private static final PlanKey<Double> GEARING = PlanKey.of(
                    "engine_rev_per_roller_rev", KeyFormat.number(new Range(0.05, 50)))
            .said(
                    "Engine rev per roller rev",
                    "In the gear of the pull; gives engine speed where only the roller's is logged.");
    private static final PlanKey<InertiaInLog> IN_LOG = PlanKey.of(
                    "inertia_in_log",
                    KeyFormat.flag()
                            .as(yes -> yes ? InertiaInLog.YES : InertiaInLog.NO, inLog -> inLog == InertiaInLog.YES))
            .said(
                    "Inertia in the log",
                    "Whether the logged torque already holds what speeding up takes; needed with an inertia, since many"
                            + " brakes add it, and added twice it is wrong.");

    static final PlanTable<DynoFacts> TABLE = PlanTable.of(
            "dyno",
            Presence.ALWAYS,
            "Dyno",
            "Kind of dyno, and where torque is stated.",
            keys -> keys.key(KIND, DynoFacts::kind)
                    .key(TORQUE_AT, DynoFacts::torqueAt)
                    .number(ENGINE_SIDE, dyno -> dyno.inertia().engineSideKgM2())
                    .number(ROLLER_INERTIA, dyno -> dyno.inertia().rollerKgM2())
                    .number(ROLLER_RADIUS, dyno -> dyno.gearing().rollerRadiusM())
                    .number(GEARING, dyno -> dyno.gearing().engineRevPerRollerRev())
                    .maybe(
                            IN_LOG,
                            dyno -> Optional.of(dyno.inertia().inLog()).filter(said -> said != InertiaInLog.UNSTATED)));

    private DynoTable() {}

    static DynoFacts read(TableReader table) {
        DynoFacts dyno = new DynoFacts(
                table.get(KIND),
                table.get(TORQUE_AT),
                new Inertia(
                        table.number(ENGINE_SIDE),
                        table.number(ROLLER_INERTIA),
                        table.find(IN_LOG).orElse(InertiaInLog.UNSTATED)),
                new DynoFacts.Gearing(table.number(ROLLER_RADIUS), table.number(GEARING)));
        checkRoller(table, dyno.kind());
        checkShaft(table, dyno);
        checkInertia(table, dyno);
        return dyno;
    }

    private static void checkRoller(TableReader table, Kind kind) {
        if (!kind.isChassis()) {
            Stream.of(ROLLER_INERTIA, ROLLER_RADIUS, GEARING)
                    .filter(table::has)
                    .forEach(key -> table.problems()
                            .conflict(FindingCode.PLAN_KEY_MEANINGLESS, table.spot(key), table.spot(KIND)));
        }
    }

    private static void checkShaft(TableReader table, DynoFacts dyno) {
        boolean atCrank = dyno.torqueAt() == Shaft.CRANK;
        if (dyno.kind() == Kind.ENGINE_BRAKE && !atCrank) {
            table.problems().conflict(FindingCode.PLAN_KEYS_CONFLICT, table.spot(TORQUE_AT), table.spot(KIND));
        } else if (dyno.kind().isChassis() && atCrank) {
            table.problems().warning(FindingCode.PLAN_CRANK_ON_CHASSIS, table.spot(TORQUE_AT));
        }
    }

    private static void checkInertia(TableReader table, DynoFacts dyno) {
        List<PlanKey<Double>> inertias =
                Stream.of(ENGINE_SIDE, ROLLER_INERTIA).filter(table::has).toList();
        boolean speedsUpOnly = dyno.kind() == Kind.CHASSIS_INERTIA;
        InertiaInLog inLog = dyno.inertia().inLog();
        if (!table.has(IN_LOG) && !inertias.isEmpty() && !speedsUpOnly) {
            table.problems().conflict(FindingCode.PLAN_KEY_NEEDED, table.spot(IN_LOG), table.spot(inertias.get(0)));
        }
        if (speedsUpOnly && inLog != InertiaInLog.YES && !table.has(ROLLER_INERTIA)) {
            table.problems().conflict(FindingCode.PLAN_KEY_NEEDED, table.spot(ROLLER_INERTIA), table.spot(KIND));
        }
        if (inLog == InertiaInLog.NO && inertias.isEmpty() && !speedsUpOnly) {
            table.problems().conflict(FindingCode.PLAN_KEY_NEEDED, table.spot(ENGINE_SIDE), table.spot(IN_LOG));
        }
    }
}
