package org.nextpull.plan.text;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;

/** The one list of all that a plan can say, in the order of the handbook. */
public final class PlanKeys {
    private static final List<PlanTable<?>> TABLES = List.of(
            EngineTable.TABLE,
            FuelTable.TABLE,
            BlendTables.TABLE,
            CandidateTables.TABLE,
            DynoTable.TABLE,
            AirTable.TABLE,
            BandTable.TABLE,
            PullTable.TABLE,
            TimingTable.TABLE,
            MixtureTable.TABLE,
            LimitsTable.TABLE,
            StartTable.TABLE,
            SheetTable.TABLE,
            GoalTable.TABLE,
            LogTable.TABLE,
            WireTables.TABLE);

    private PlanKeys() {}

    public static List<PlanTable<?>> tables() {
        return TABLES;
    }

    /** The key of the table {@code [limits]} that sets a limit. */
    public static PlanKey<?> of(Limit limit) {
        return Objects.requireNonNull(LimitsTable.KEYS.get(limit));
    }

    /** The limit that a key of the table {@code [limits]} sets; empty for one that only says more of another. */
    public static Optional<Limit> limitOf(PlanKey<?> key) {
        return Arrays.stream(Limit.values())
                .filter(limit -> of(limit).name().equals(key.name()))
                .findFirst();
    }

    /** The line of the table {@code [log]} that names the column of a role. */
    public static String column(String role, String header) {
        return LogTable.column(role, header);
    }

    /** The table {@code [log]} without its header, each column and each unit in a line of its own, so that others can be written below. */
    public static List<String> lines(SweepPlan.LogFacts log) {
        return LogTable.lines(log);
    }

    static List<String> tableNames() {
        return TABLES.stream().map(PlanTable::name).toList();
    }
}
