package org.nextpull.plan.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.channel.SparkMap;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.SweepStep;
import org.nextpull.plan.TimingPlan;
import org.nextpull.plan.TimingPlan.Sets;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Unit;

/** Table {@code [timing]}. */
final class TimingTable {
    private static final PlanKey<Sets> SETS = PlanKey.of("sets", KeyFormat.word(Sets.class))
            .usual(Sets.FLAT)
            .said(
                    "You set",
                    "One advance for the whole pull, an advance in each cell of a map over speed, or degrees added everywhere to a map"
                            + " that no log shows. A log whose advance varies over speed within a pull is taken as a map.");
    private static final Bounds.Keys<Advance> BOUNDS = new Bounds.Keys<>(
            PlanKey.of("start_deg", KeyFormat.advance())
                    .needed("needed; `0` with `sets = \"map\"`")
                    .said(
                            "Start",
                            "Where the sweep starts: on the retarded side, where the engine is known to run clean. For a map, how far the"
                                    + " first pull lies from the present map."),
            PlanKey.of("least_deg", KeyFormat.advance())
                    .needed("needed")
                    .said("Min advance", "Never less advance: retard heats the exhaust."),
            PlanKey.of("most_deg", KeyFormat.advance())
                    .needed("needed")
                    .said("Max advance", "Never more advance, whatever the curve says."));
    private static final Bounds.StepKeys STEP = new Bounds.StepKeys(
            PlanKey.of("largest_step_deg", KeyFormat.number(Unit.DEGREE, new Range(0.05, 15)))
                    .usual(table -> TimingPlan.defaultLargestStepDeg(EngineTable.induction(table)))
                    .said(
                            "Max step",
                            "Never further beyond the most advanced clean pull; `1` when `induction = \"boosted\"`."),
            PlanKey.of("resolution_deg", KeyFormat.number(Unit.DEGREE, new Range(0.01, 5)))
                    .usual(TimingPlan.RESOLUTION_DEG)
                    .said(
                            "Resolution",
                            "What the ignition can be set to; proposals are rounded to it, toward retard."));

    private static final PlanKey<List<Double>> MAP_RPM = PlanKey.of("map_rpm", KeyFormat.speeds())
            .said("Map speeds", "Speeds of the cells of the ignition's map; the rows of the band where left out.");
    private static final PlanKey<SparkMap> PRESENT_MAP = PlanKey.of("present_map", KeyFormat.cells())
            .in("rpm: deg")
            .said(
                    "Present map",
                    "What the ignition's map holds before the sweep; it covers the band. What the first pull logged where left out.");

    static final PlanTable<TimingPlan> TABLE = PlanTable.of(
            "timing",
            Presence.SWITCHED,
            "Spark timing",
            "The spark sweep. Off where spark stays as it is.",
            keys -> keys.key(SETS, TimingPlan::sets)
                    .key(BOUNDS.start(), TimingPlan::start)
                    .key(BOUNDS.low(), TimingPlan::least)
                    .key(BOUNDS.high(), TimingPlan::most)
                    .key(STEP.largest(), timing -> timing.step().largest())
                    .key(STEP.resolution(), timing -> timing.step().resolution())
                    .maybe(MAP_RPM, timing -> some(timing.map().breakpointsRpm()))
                    .maybe(PRESENT_MAP, timing -> timing.map().present()));

    private TimingTable() {}

    private static <T> Optional<List<T>> some(List<T> values) {
        return values.isEmpty() ? Optional.empty() : Optional.of(values);
    }

    static Optional<TimingPlan> read(TableReader table) {
        if (!table.isPresent()) {
            return Optional.empty();
        }
        Sets sets = table.get(SETS);
        TimingPlan.MapFacts map = map(table, sets);
        Optional<SweepStep> step = STEP.read(table);
        Optional<Bounds<Advance>> bounds =
                sets == Sets.MAP ? Bounds.readLimits(table, BOUNDS, Advance.ofDeg(0)) : Bounds.read(table, BOUNDS);
        return bounds.flatMap(
                deg -> step.map(steps -> new TimingPlan(sets, deg.start(), deg.low(), deg.high(), steps, map)));
    }

    private static TimingPlan.MapFacts map(TableReader table, Sets sets) {
        if (sets == Sets.FLAT && table.has(SETS)) {
            Stream.of(MAP_RPM, PRESENT_MAP)
                    .filter(table::has)
                    .forEach(key -> table.problems()
                            .conflict(FindingCode.PLAN_KEY_MEANINGLESS, table.spot(key), table.spot(SETS)));
        }
        return new TimingPlan.MapFacts(table.find(MAP_RPM).orElse(List.of()), table.find(PRESENT_MAP));
    }

    static PlanProblems.Spot presentMap(TableReader table) {
        return table.spot(PRESENT_MAP);
    }
}
