package org.nextpull.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.plan.TimingPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * What holds at each speed of a day beside the planner's own limits: shorter steps where nothing listens, no retard below an
 * exhaust that was too hot, nothing that way while nobody watches what guards it, and a start below what knock forbade elsewhere.
 */
final class AllowedSettings {
    private static final double NOTHING = 1e-9;
    private static final double HALF = 0.5;
    /** Where nothing measures knock, steps are whole up to this far above the first pull, degrees. */
    private static final double UNHEARD_DEG = 6;

    private final DayView view;
    private final DayReadings maps;
    private final PlannerRules.Spark plan;
    private final Guards guards;

    AllowedSettings(DayView view, DayReadings maps) {
        this.view = view;
        this.maps = maps;
        plan = maps.plan();
        guards = view.guards();
    }

    PlannerRules rules() {
        return new PlannerRules(
                spark(),
                maps.sweepsMixture() ? view.mixture().map(this::mixture) : Optional.empty(),
                maps.ignition() == Ignition.STANDING ? ending().ofMixtureAlone() : ending(),
                view.day().plan().limits().looksAgain());
    }

    private PlannerRules.Ending ending() {
        return PlannerRules.Ending.usual(
                view.day().plan().goal().nearBestPercent(),
                view.day().plan().goal().maxPulls());
    }

    PlannerRules.Spark spark() {
        double largest = plan.largestStepDeg();
        double share = guards.shareOfStep(Guards.Way.ADVANCE) < 1 || isFarUnheard() ? HALF : 1;
        return new PlannerRules.Spark(
                plan.leastDeg(),
                plan.mostDeg(),
                Math.max(largest * share, Math.min(largest, plan.resolutionDeg())),
                plan.resolutionDeg(),
                plan.knockMarginDeg());
    }

    /** Whether nothing measures knock and a whole step would lead, at some speed, further from the first pull than may be gone so. */
    private boolean isFarUnheard() {
        List<MeasuredPull> here = view.here();
        List<TriedPull> tried = maps.tried();
        if (tried.isEmpty()
                || here.isEmpty()
                || here.get(here.size() - 1).knock().isMeasured()) {
            return false;
        }
        return Arrays.stream(maps.rows()).anyMatch(rpm -> {
            double highest = tried.stream()
                    .mapToDouble(pull -> pull.spark().degAt(rpm))
                    .max()
                    .orElseThrow();
            return highest + plan.largestStepDeg() > tried.get(0).spark().degAt(rpm) + UNHEARD_DEG + NOTHING;
        });
    }

    private PlannerRules.Mixture mixture(Axis axis) {
        OptionalDouble ban = maps.ignition() == Ignition.STANDING
                ? view.blocks().leanCeiling(view.fuel(), OptionalDouble.empty())
                : view.blocks().leanCeilingOfLimits(view.fuel());
        double leanest = ban.isPresent()
                ? Math.min(axis.allowed().high(), axis.below(ban.getAsDouble()))
                : axis.allowed().high();
        OptionalDouble rich = richFirst(axis);
        leanest = rich.isPresent() ? Math.min(leanest, rich.getAsDouble()) : leanest;
        return new PlannerRules.Mixture(
                Lambda.of(axis.allowed().low()),
                Lambda.of(Math.max(axis.allowed().low(), leanest)),
                axis.step().largest() * guards.shareOfStep(Guards.Way.LEAN),
                axis.step().resolution());
    }

    /**
     * The leanest mixture of a bracket at a spark that stands, which nothing backs off: what was run clean, until a clean pull was run
     * half a step richer than the first; empty after that.
     */
    private OptionalDouble richFirst(Axis axis) {
        double[] clean = maps.tried().stream()
                .filter(TriedPull::isClean)
                .flatMap(pull -> pull.lambda().stream())
                .mapToDouble(Lambda::value)
                .toArray();
        if (maps.ignition() != Ignition.STANDING || clean.length == 0) {
            return OptionalDouble.empty();
        }
        double richest = Arrays.stream(clean).min().orElseThrow();
        double leanest = Arrays.stream(clean).max().orElseThrow();
        double wanted =
                Math.max(axis.allowed().low(), clean[0] - HALF * axis.step().largest());
        return richest <= wanted + axis.sameSetting() ? OptionalDouble.empty() : OptionalDouble.of(axis.round(leanest));
    }

    Optional<Lambda> startLambda() {
        OptionalDouble start = view.mixture().isPresent() ? view.sweepMixture() : OptionalDouble.empty();
        return start.isPresent() ? Optional.of(Lambda.of(start.getAsDouble())) : Optional.empty();
    }

    /** How far the first pull lies from the present map, degrees; a start that the plan meant for one number is none. */
    double startShiftDeg() {
        return view.day()
                .plan()
                .timing()
                .filter(timing -> timing.sets() == TimingPlan.Sets.MAP)
                .map(timing -> timing.start().deg())
                .orElse(0.0);
    }

    /** The map of the first pull, within the plan, and below what knock forbade so far. */
    SparkMap first(SparkMap present) {
        return below(present.shiftedBy(startShiftDeg()));
    }

    /** Whether a pull was run no more advanced than where the day starts again after knock on another fuel or with other parts. */
    boolean hasStartedLow() {
        SparkMap start = first(maps.present().orElseThrow());
        boolean isElsewhere =
                maps.triedElsewhere().stream().anyMatch(pull -> !pull.flags().isEmpty());
        double half = HALF * plan.resolutionDeg();
        return !isElsewhere
                || maps.tried().stream()
                        .anyMatch(pull -> Arrays.stream(maps.rows())
                                .allMatch(rpm -> pull.spark().degAt(rpm) <= start.degAt(rpm) + half));
    }

    /** The present map, lowered as knock asks. */
    SparkMap retreat(SparkMap present) {
        return below(first(present));
    }

    private SparkMap below(SparkMap map) {
        double[] speeds = map.cells().stream().mapToDouble(SparkMap.Cell::rpm).toArray();
        Exclusions here = exclusions(maps.tried(), speeds);
        Exclusions elsewhere = exclusions(maps.triedElsewhere(), speeds);
        List<SparkMap.Cell> cells = new ArrayList<>();
        for (SparkMap.Cell cell : map.cells()) {
            double most = Math.min(
                    plan.mostDeg(),
                    Math.min(
                            here.banDeg(cell.rpm(), Optional.empty()),
                            SparkGrid.toHundredths(
                                    elsewhere.banDeg(cell.rpm(), Optional.empty()) - plan.knockMarginDeg())));
            double deg = Math.min(most, Math.max(plan.leastDeg(), cell.advance().deg()));
            cells.add(new SparkMap.Cell(cell.rpm(), Advance.ofDeg(maps.grid().down(deg))));
        }
        return new SparkMap(cells);
    }

    private Exclusions exclusions(List<TriedPull> tried, double[] speeds) {
        return new Exclusions(tried, spark(), speeds, maps.looks(tried));
    }

    boolean isWithinPlan(SparkMap map) {
        return map.cells().stream().allMatch(cell -> cell.advance().deg() >= plan.leastDeg() - NOTHING);
    }

    /** Whether a pull was run within the plan, as far as a setting can be made that way. */
    boolean isWithinPlan(TriedPull pull) {
        boolean isSpark = Arrays.stream(maps.rows())
                .map(pull.spark()::degAt)
                .allMatch(deg -> deg >= plan.leastDeg() - HALF * plan.resolutionDeg()
                        && deg <= plan.mostDeg() + HALF * plan.resolutionDeg());
        return isSpark
                && view.mixture()
                        .flatMap(axis -> pull.lambda()
                                .map(lambda -> lambda.value() >= axis.allowed().low() - axis.sameSetting()
                                        && lambda.value() <= axis.allowed().high() + axis.sameSetting()))
                        .orElse(true);
    }

    /** The setting as far as steps and knock allow it at its mixture; empty where they leave less than the plan's least advance. */
    Optional<EngineSetting> held(EngineSetting wanted) {
        SparkMap map = wanted.spark().orElseThrow();
        SparkMap made = made(map.degAt(maps.rows()), wanted.lambda());
        return Optional.of(made).filter(this::isWithinPlan).map(found -> EngineSetting.of(found, wanted.lambda()));
    }

    private SparkMap made(double[] deg, Optional<Lambda> lambda) {
        SettingGrid grid = new SettingGrid(maps.rows(), maps.present().orElseThrow(), plan.resolutionDeg());
        return grid.map(deg, limit(lambda)::deg);
    }

    private StepLimit limit(Optional<Lambda> lambda) {
        return new StepLimit(
                exclusions(maps.tried(), maps.rows()),
                spark(),
                rpm -> Double.POSITIVE_INFINITY,
                maps.sweepsMixture() ? lambda : Optional.empty());
    }

    /**
     * The setting, no further retarded anywhere than an exhaust that was too hot allows, and than half a step where nobody watches the
     * exhaust; empty where knock leaves less than the hot exhaust asks for.
     */
    Optional<EngineSetting> hotEnough(EngineSetting wanted) {
        double[] rows = maps.rows();
        double[] deg = wanted.spark().orElseThrow().degAt(rows);
        RetardFloor floors = new RetardFloor(view, maps);
        double[] hot = floors.hot(rows, wanted.lambda());
        double[] unwatched = floors.unwatched(exclusions(maps.tried(), rows), rows);
        boolean isBelow = false;
        for (int r = 0; r < rows.length; r++) {
            double floor = Math.max(hot[r], unwatched[r]);
            if (deg[r] < floor - NOTHING) {
                isBelow = true;
                deg[r] = maps.grid().up(floor);
            }
        }
        if (!isBelow) {
            return Optional.of(wanted);
        }
        SparkMap made = made(deg, wanted.lambda());
        for (int r = 0; r < rows.length; r++) {
            if (made.degAt(rows[r]) < hot[r] - NOTHING) {
                return Optional.empty();
            }
        }
        return Optional.of(EngineSetting.of(made, wanted.lambda()));
    }

    /** Why a setting is not asked for yet; empty when it may be. */
    Optional<Reason.NotWatched> held(EngineSetting setting, boolean searchesMixture) {
        return guards.held(ways(setting), searchesMixture);
    }

    /** The ways that a setting goes, at any speed, beyond what was run clean. Knock may force retard. */
    private List<Guards.Way> ways(EngineSetting setting) {
        double same = plan.resolutionDeg() * HALF;
        SparkMap map = setting.spark().orElseThrow();
        List<Guards.Way> ways = new ArrayList<>();
        Exclusions exclusions = exclusions(maps.tried(), maps.rows());
        boolean beyond = false;
        boolean below = false;
        for (double rpm : maps.rows()) {
            double[] clean = exclusions.cleanDeg(rpm);
            beyond |= clean.length > 0 && map.degAt(rpm) > clean[clean.length - 1] + same;
            below |= clean.length > 0 && map.degAt(rpm) < clean[0] - same;
        }
        if (beyond) {
            ways.add(Guards.Way.ADVANCE);
        }
        if (below && !view.blocks().hasKnock(view.fuel())) {
            ways.add(Guards.Way.RETARD);
        }
        OptionalDouble leanest = maps.tried().stream()
                .filter(TriedPull::isClean)
                .flatMap(pull -> pull.lambda().stream())
                .mapToDouble(Lambda::value)
                .max();
        if (maps.sweepsMixture()
                && leanest.isPresent()
                && setting.lambda()
                        .filter(lambda -> lambda.value() > leanest.getAsDouble() + NOTHING)
                        .isPresent()) {
            ways.add(Guards.Way.LEAN);
        }
        return ways;
    }

    /** Whether a setting goes toward advance or lean beyond what was run clean. */
    boolean isDaring(SparkMap map, Optional<Lambda> lambda) {
        List<Guards.Way> ways = ways(EngineSetting.of(map, lambda));
        return ways.contains(Guards.Way.ADVANCE) || ways.contains(Guards.Way.LEAN);
    }

    /** The setting to run instead of one that is held: at each speed no further than what was run clean, and no leaner. */
    EngineSetting proven(EngineSetting setting) {
        Exclusions exclusions = exclusions(maps.tried(), maps.rows());
        double[] deg = setting.spark().orElseThrow().degAt(maps.rows());
        for (int r = 0; r < deg.length; r++) {
            double[] clean = exclusions.cleanDeg(maps.rows()[r]);
            if (clean.length > 0) {
                deg[r] = Math.max(clean[0], Math.min(clean[clean.length - 1], deg[r]));
            }
        }
        Optional<Lambda> leanest = maps.tried().stream()
                .filter(TriedPull::isClean)
                .flatMap(pull -> pull.lambda().stream())
                .reduce((one, other) -> one.value() >= other.value() ? one : other);
        Optional<Lambda> lambda = setting.lambda()
                .map(wanted ->
                        leanest.filter(most -> most.value() < wanted.value()).orElse(wanted));
        return EngineSetting.of(made(deg, lambda), lambda);
    }

    /** A setting as it is asked for, or left. */
    EngineSetting proposal(EngineSetting setting) {
        return maps.ignition()
                .setting(
                        setting.spark().orElseThrow(),
                        view.day().plan().mixture().isPresent()
                                ? setting.lambda().or(this::startLambda)
                                : Optional.empty());
    }
}
