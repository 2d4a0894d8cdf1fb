package org.nextpull.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.plan.Limit;
import org.nextpull.plan.TimingPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * What holds at each speed of a day of a map beside the planner's own limits: shorter steps where nothing listens, no retard below an
 * exhaust that was too hot, nothing that way while nobody watches what guards it, and a start below what knock forbade elsewhere.
 */
final class MapLimits {
    private static final double NOTHING = 1e-9;
    private static final double HALF = 0.5;

    private final DayView view;
    private final MapDay maps;
    private final TimingPlan timing;
    private final Guards guards;

    MapLimits(DayView view, MapDay maps) {
        this.view = view;
        this.maps = maps;
        timing = view.day().plan().timing().orElseThrow();
        guards = view.guards();
    }

    MapRules rules() {
        return new MapRules(
                spark(),
                maps.sweepsMixture() ? view.mixture().map(this::mixture) : Optional.empty(),
                MapEnding.usual(
                        view.day().plan().goal().nearBestPercent(),
                        view.day().plan().goal().maxPulls()),
                view.day().plan().limits().looksAgain());
    }

    SparkRules spark() {
        double largest = timing.step().largest();
        double share = guards.shareOfStep(Guards.Way.ADVANCE) < 1 || isFarUnheard() ? HALF : 1;
        double step = Math.max(largest * share, Math.min(largest, timing.step().resolution()));
        return new SparkRules(
                timing.least().deg(),
                timing.most().deg(),
                step,
                timing.step().resolution(),
                view.day().plan().limits().knockMarginDeg());
    }

    /** Whether nothing measures knock and a whole step would lead, at some speed, further from the first pull than may be gone so. */
    private boolean isFarUnheard() {
        List<MeasuredPull> here = view.here();
        List<TriedPull> tried = maps.tried();
        if (tried.isEmpty() || here.get(here.size() - 1).knock().isMeasured()) {
            return false;
        }
        return Arrays.stream(maps.rows()).anyMatch(rpm -> {
            double highest = tried.stream()
                    .mapToDouble(pull -> pull.spark().degAt(rpm))
                    .max()
                    .orElseThrow();
            return highest + timing.step().largest() > tried.get(0).spark().degAt(rpm) + Reach.UNHEARD_DEG + NOTHING;
        });
    }

    private MixtureRules mixture(Axis axis) {
        OptionalDouble ban = view.bans().leanCeilingOfLimits(view.fuel());
        double leanest = ban.isPresent()
                ? Math.min(axis.allowed().high(), axis.below(ban.getAsDouble()))
                : axis.allowed().high();
        return new MixtureRules(
                Lambda.of(axis.allowed().low()),
                Lambda.of(Math.max(axis.allowed().low(), leanest)),
                axis.step().largest() * guards.shareOfStep(Guards.Way.LEAN),
                axis.step().resolution());
    }

    Optional<Lambda> startLambda() {
        OptionalDouble start = view.mixture().isPresent() ? view.sweepMixture() : OptionalDouble.empty();
        return start.isPresent() ? Optional.of(Lambda.of(start.getAsDouble())) : Optional.empty();
    }

    /** How far the first pull lies from the present map, degrees; a start that the plan meant for one number is none. */
    double startShiftDeg() {
        return timing.sets() == TimingPlan.Sets.MAP ? timing.start().deg() : 0;
    }

    /** The map of the first pull, within the plan, and below what knock forbade so far. */
    SparkMap first(SparkMap present) {
        return below(present.shiftedBy(startShiftDeg()));
    }

    /** The present map, lowered as knock asks. */
    SparkMap retreat(SparkMap present) {
        return below(first(present));
    }

    private SparkMap below(SparkMap map) {
        double resolution = timing.step().resolution();
        double margin = view.day().plan().limits().knockMarginDeg();
        double[] speeds = map.cells().stream().mapToDouble(SparkMap.Cell::rpm).toArray();
        Exclusions here = exclusions(maps.tried(), speeds);
        Exclusions elsewhere = exclusions(maps.triedElsewhere(), speeds);
        List<SparkMap.Cell> cells = new ArrayList<>();
        for (SparkMap.Cell cell : map.cells()) {
            double most = Math.min(
                    timing.most().deg(),
                    Math.min(
                            here.banDeg(cell.rpm(), Optional.empty()),
                            elsewhere.banDeg(cell.rpm(), Optional.empty()) - margin));
            double deg =
                    Math.min(most, Math.max(timing.least().deg(), cell.advance().deg()));
            cells.add(
                    new SparkMap.Cell(cell.rpm(), Advance.ofDeg(Math.floor(deg / resolution + NOTHING) * resolution)));
        }
        return new SparkMap(cells);
    }

    private Exclusions exclusions(List<TriedPull> tried, double[] speeds) {
        return new Exclusions(tried, spark(), speeds, maps.looks(tried));
    }

    boolean isWithinPlan(SparkMap map) {
        return map.cells().stream()
                .allMatch(cell -> cell.advance().deg() >= timing.least().deg() - NOTHING);
    }

    /** The setting as far as steps and knock allow it at its mixture; empty where they leave less than the plan's least advance. */
    Optional<EngineSetting> held(EngineSetting wanted) {
        SparkMap map = wanted.map().orElseThrow();
        SparkMap made = made(map.degAt(maps.rows()), wanted.lambda());
        return Optional.of(made).filter(this::isWithinPlan).map(found -> EngineSetting.of(found, wanted.lambda()));
    }

    private SparkMap made(double[] deg, Optional<Lambda> lambda) {
        SparkRules rules = spark();
        StepLimit limit = new StepLimit(
                exclusions(maps.tried(), maps.rows()),
                rules,
                rpm -> Double.POSITIVE_INFINITY,
                maps.sweepsMixture() ? lambda : Optional.empty());
        SettingGrid grid = new SettingGrid(maps.rows(), maps.present().orElseThrow(), rules.resolutionDeg());
        return grid.map(deg, limit::deg);
    }

    /**
     * The setting, no further retarded anywhere than an exhaust that was too hot allows, and than half a step where nobody watches the
     * exhaust; empty where knock leaves less than the hot exhaust asks for.
     */
    Optional<EngineSetting> hotEnough(EngineSetting wanted) {
        double[] rows = maps.rows();
        double[] deg = wanted.map().orElseThrow().degAt(rows);
        double[] hot = hotFloor(rows, wanted.lambda());
        double[] unwatched = unwatchedFloor(rows);
        double resolution = timing.step().resolution();
        boolean isBelow = false;
        for (int r = 0; r < rows.length; r++) {
            double floor = Math.max(hot[r], unwatched[r]);
            if (deg[r] < floor - NOTHING) {
                isBelow = true;
                deg[r] = Math.ceil(floor / resolution - NOTHING) * resolution;
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

    private double[] unwatchedFloor(double[] rows) {
        Exclusions exclusions = exclusions(maps.tried(), rows);
        boolean isWatched = guards.unwatched(Guards.Way.RETARD).isEmpty();
        return Arrays.stream(rows)
                .map(rpm -> {
                    double[] clean = exclusions.cleanDeg(rpm);
                    return isWatched || clean.length == 0
                            ? Double.NEGATIVE_INFINITY
                            : clean[0] - HALF * timing.step().largest();
                })
                .toArray();
    }

    /** The least advance at each row that pulls whose exhaust was too hot leave, but for what clean pulls as lean have proven. */
    private double[] hotFloor(double[] rows, Optional<Lambda> lambda) {
        List<TriedPull> tried = maps.tried();
        double[] floor = new double[rows.length];
        Arrays.fill(floor, Double.NEGATIVE_INFINITY);
        for (int i = 0; i < tried.size(); i++) {
            SparkMap hot = tried.get(i).spark();
            if (wasHot(maps.counting().get(i))
                    && isNoRicher(lambda, tried.get(i).lambda())) {
                for (int r = 0; r < rows.length; r++) {
                    double rpm = rows[r];
                    boolean isProven = tried.stream()
                            .anyMatch(pull -> pull.isClean()
                                    && pull.spark().degAt(rpm) < hot.degAt(rpm) - NOTHING
                                    && isNoRicher(pull.lambda(), lambda));
                    floor[r] = isProven ? floor[r] : Math.max(floor[r], hot.degAt(rpm));
                }
            }
        }
        return floor;
    }

    private boolean wasHot(MeasuredPull pull) {
        return !view.day().lifted().contains(pull.number())
                && pull.limitsMet().stream().anyMatch(met -> met.limit() == Limit.EXHAUST);
    }

    /** Whether a mixture lies less than a step on the rich side of another; one that is not known does. */
    private boolean isNoRicher(Optional<Lambda> mixture, Optional<Lambda> of) {
        double step = view.mixture().map(axis -> axis.step().largest()).orElse(0.0);
        return mixture.isEmpty()
                || of.isEmpty()
                || mixture.get().value() > of.get().value() - step + NOTHING;
    }

    /** Why a setting is not asked for yet; empty when it may be. */
    Optional<Reason.NotWatched> held(EngineSetting setting, boolean searchesMixture) {
        return guards.held(ways(setting), searchesMixture);
    }

    /** The ways that a setting goes, at any speed, beyond what was run clean. Knock may force retard. */
    private List<Guards.Way> ways(EngineSetting setting) {
        double same = timing.step().resolution() * HALF;
        SparkMap map = setting.map().orElseThrow();
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
        if (below && !view.bans().hasKnock(view.fuel())) {
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

    /** The setting to run instead of one that is held: at each speed no more daring than what was run clean, and no leaner. */
    EngineSetting proven(EngineSetting setting) {
        Exclusions exclusions = exclusions(maps.tried(), maps.rows());
        double[] deg = setting.map().orElseThrow().degAt(maps.rows());
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
}
