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
import org.nextpull.plan.Gearing;

/** Table {@code [dyno]}. */
final class DynoTable {
    private static final String KIND = "kind";
    private static final String TORQUE_AT = "torque_at";
    private static final String ENGINE_SIDE = "engine_side_inertia_kg_m2";
    private static final String ROLLER_INERTIA = "roller_inertia_kg_m2";
    private static final String ROLLER_RADIUS = "roller_radius_m";
    private static final String GEARING = "engine_rev_per_roller_rev";
    private static final String IN_LOG = "inertia_in_log";

    private DynoTable() {}

    static DynoFacts read(TableReader table) {
        Kind kind = table.word(KIND, Kind.ENGINE_BRAKE);
        Shaft torqueAt = table.word(TORQUE_AT, kind.usualShaft());
        DynoFacts dyno = new DynoFacts(
                kind,
                torqueAt,
                new Inertia(
                        table.number(ENGINE_SIDE, new Range(1e-4, 50)),
                        table.number(ROLLER_INERTIA, new Range(0.01, 5000)),
                        inertiaInLog(table.flag(IN_LOG))),
                new Gearing(
                        table.number(ROLLER_RADIUS, new Range(0.02, 3)), table.number(GEARING, new Range(0.05, 50))));
        checkRoller(table, kind);
        checkShaft(table, dyno);
        checkInertia(table, dyno);
        return dyno;
    }

    private static InertiaInLog inertiaInLog(Optional<Boolean> written) {
        return written.map(yes -> yes ? InertiaInLog.YES : InertiaInLog.NO).orElse(InertiaInLog.UNSTATED);
    }

    private static void checkRoller(TableReader table, Kind kind) {
        if (!kind.isChassis()) {
            Stream.of(ROLLER_INERTIA, ROLLER_RADIUS, GEARING)
                    .filter(table::has)
                    .forEach(key -> table.problems()
                            .conflict(FindingCode.PLAN_KEY_MEANINGLESS, table.spot(key), kindSpot(table)));
        }
    }

    private static void checkShaft(TableReader table, DynoFacts dyno) {
        boolean atCrank = dyno.torqueAt() == Shaft.CRANK;
        Spot shaft = table.spot(TORQUE_AT, Shown.text(dyno.torqueAt().id()));
        if (dyno.kind() == Kind.ENGINE_BRAKE && !atCrank) {
            table.problems().conflict(FindingCode.PLAN_KEYS_CONFLICT, shaft, kindSpot(table));
        } else if (dyno.kind().isChassis() && atCrank) {
            table.problems().warning(FindingCode.PLAN_CRANK_ON_CHASSIS, shaft);
        }
    }

    private static void checkInertia(TableReader table, DynoFacts dyno) {
        boolean stated = table.has(IN_LOG);
        List<String> inertias =
                Stream.of(ENGINE_SIDE, ROLLER_INERTIA).filter(table::has).toList();
        if (!stated && !inertias.isEmpty() && dyno.kind() != Kind.CHASSIS_INERTIA) {
            table.problems().conflict(FindingCode.PLAN_KEY_NEEDED, table.spot(IN_LOG), table.spot(inertias.get(0)));
        }
        if (dyno.kind() == Kind.CHASSIS_INERTIA
                && dyno.inertia().inLog() != InertiaInLog.YES
                && !table.has(ROLLER_INERTIA)) {
            table.problems().conflict(FindingCode.PLAN_KEY_NEEDED, table.spot(ROLLER_INERTIA), kindSpot(table));
        }
        if (dyno.inertia().inLog() == InertiaInLog.NO && inertias.isEmpty() && dyno.kind() != Kind.CHASSIS_INERTIA) {
            table.problems().conflict(FindingCode.PLAN_KEY_NEEDED, table.spot(ENGINE_SIDE), table.spot(IN_LOG));
        }
    }

    private static Spot kindSpot(TableReader table) {
        return table.spot(KIND, Shown.text(Shown.word(Kind.ENGINE_BRAKE)));
    }

    static String write(DynoFacts dyno) {
        TableWriter table = new TableWriter("[dyno]");
        table.word(KIND, dyno.kind());
        table.word(TORQUE_AT, dyno.torqueAt());
        table.number(ENGINE_SIDE, dyno.inertia().engineSideKgM2());
        table.number(ROLLER_INERTIA, dyno.inertia().rollerKgM2());
        table.number(ROLLER_RADIUS, dyno.gearing().rollerRadiusM());
        table.number(GEARING, dyno.gearing().engineRevPerRollerRev());
        if (dyno.inertia().inLog() != InertiaInLog.UNSTATED) {
            table.raw(IN_LOG, String.valueOf(dyno.inertia().inLog() == InertiaInLog.YES));
        }
        return table.written();
    }
}
