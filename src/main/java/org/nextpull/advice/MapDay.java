package org.nextpull.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.nextpull.channel.SparkMap;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.fit.Experience;
import org.nextpull.fit.KnockLevels;
import org.nextpull.fit.MixturePrior;
import org.nextpull.fit.SpeedRows;
import org.nextpull.fit.Surface;
import org.nextpull.fit.SurfacePriors;
import org.nextpull.fit.SurfacePull;
import org.nextpull.fit.SurfaceReading;
import org.nextpull.plan.MixturePlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.RowFigure;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** A day whose ignition holds a map, read off its pulls: each row of each pull with the advance that was logged there. */
final class MapDay {
    /** A pull whose rows stay within this of one number was run flat, degrees. */
    private static final double FLAT_DEG = 1;
    /** But for this share of them: an ignition that takes out advance where it hears knock does so at a few speeds. */
    private static final double FEW_ROWS = 0.25;
    /** The best is looked for this far above the present map: an operator starts 6 to 10 deg on the retarded side, or from a fair map. */
    private static final double BEST_ABOVE_PRESENT_DEG = 6;
    /** A logged advance that repeats to this at every speed was not set anew, or is no reading. */
    private static final double STUCK_DEG = 0.01;
    /** An advance that differs by more than this between speeds this near is no map; more than an ignition takes out for knock. */
    private static final double JUMP_DEG = 15;

    private static final double JUMP_OVER_RPM = 1000;
    /** Mixtures that differ by more than this over a day move torque by what the spark does not explain. */
    private static final double ONE_MIXTURE = 0.01;

    private static final double PERCENT = 100;

    private static final Function<MeasuredPull, Integer> DAY =
            pull -> pull.origin().day();

    private final DayView view;
    private final TimingPlan timing;
    private final List<MeasuredPull> used;
    private final double[] rows;

    MapDay(DayView view) {
        this.view = view;
        timing = view.day().plan().timing().orElseThrow();
        used = view.used().stream().filter(pull -> !readRows(pull).isEmpty()).toList();
        TreeSet<Double> speeds = new TreeSet<>();
        used.forEach(pull -> readRows(pull).forEach(row -> speeds.add(row.rpm())));
        rows = speeds.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Whether the ignition of a day holds a map: the plan says so, or says nothing else and the log shows it. */
    static boolean isOf(Day day) {
        return day.plan()
                .timing()
                .filter(timing -> timing.sets() == TimingPlan.Sets.MAP || isToldByLog(day))
                .isPresent();
    }

    private static boolean isToldByLog(Day day) {
        return day.plan().timing().orElseThrow().sets() == TimingPlan.Sets.FLAT
                && day.pulls().stream().filter(MeasuredPull::isUsed).anyMatch(MapDay::isMapped);
    }

    private static boolean isMapped(MeasuredPull pull) {
        double[] deg = rowsOf(pull).stream()
                .flatMap(row -> row.advance().stream())
                .mapToDouble(Advance::deg)
                .sorted()
                .toArray();
        if (deg.length == 0) {
            return false;
        }
        double middle = deg[deg.length / 2];
        long off = Arrays.stream(deg)
                .filter(value -> Math.abs(value - middle) > FLAT_DEG)
                .count();
        return off > FEW_ROWS * deg.length;
    }

    private static List<RowFigure> rowsOf(MeasuredPull pull) {
        return pull.figures().map(Figures::rows).orElse(List.of());
    }

    /** The rows of a pull that have a torque and an advance: the logged one, else the one that was asked for the whole pull. */
    private static List<RowFigure> readRows(MeasuredPull pull) {
        Optional<Advance> asked = pull.setting().advance();
        return rowsOf(pull).stream()
                .filter(row -> row.torque().newtonMetres() > 0)
                .map(row -> row.withAdvance(row.advance().or(() -> asked)))
                .filter(row -> row.advance().isPresent())
                .toList();
    }

    /** Why no map can be proposed; empty where one can. */
    Optional<Finding> hindrance() {
        List<MeasuredPull> counted = view.used();
        if (!counted.isEmpty() && used.isEmpty()) {
            return Optional.of(Finding.error(FindingCode.MAP_WITHOUT_ADVANCE, Place.nowhere()));
        }
        if (used.size() > 1 && !isAnyRowShared()) {
            return Optional.of(Finding.error(FindingCode.MAP_SPEEDS_NOT_SHARED, Place.nowhere()));
        }
        Optional<Finding> jump =
                used.stream().flatMap(pull -> jump(pull).stream()).findFirst();
        if (jump.isPresent()) {
            return jump;
        }
        return stuckAt()
                .map(deg -> Finding.error(FindingCode.MAP_ADVANCE_STUCK, Place.nowhere(), Detail.of("deg", deg)));
    }

    /** An advance that no map has from one speed to the next but one. */
    private Optional<Finding> jump(MeasuredPull pull) {
        List<RowFigure> logged = rowsOf(pull).stream()
                .filter(row -> row.advance().isPresent() && row.heldAtS().isEmpty())
                .toList();
        for (int i = 1; i < logged.size(); i++) {
            RowFigure from = logged.get(Math.max(0, i - 2));
            RowFigure to = logged.get(i);
            double deg = to.advance().orElseThrow().deg()
                    - from.advance().orElseThrow().deg();
            if (Math.abs(deg) > JUMP_DEG && to.rpm() - from.rpm() <= JUMP_OVER_RPM) {
                return Optional.of(Finding.error(
                        FindingCode.MAP_ADVANCE_JUMPS,
                        Place.inFile(pull.origin().source()).withPull(pull.number()),
                        Detail.of("deg", Math.abs(deg)),
                        Detail.of("low", from.rpm()),
                        Detail.of("high", to.rpm())));
            }
        }
        return Optional.empty();
    }

    private boolean isAnyRowShared() {
        return Arrays.stream(rows)
                .anyMatch(rpm -> used.stream()
                                .filter(pull -> readRows(pull).stream().anyMatch(row -> row.rpm() == rpm))
                                .count()
                        > 1);
    }

    /** The one advance that all rows of all of several pulls were logged with. */
    private Optional<Double> stuckAt() {
        double[] deg = used.stream()
                .flatMap(pull -> readRows(pull).stream())
                .flatMap(row -> row.advance().stream())
                .mapToDouble(Advance::deg)
                .sorted()
                .toArray();
        return used.size() > 1 && deg[deg.length - 1] - deg[0] < STUCK_DEG ? Optional.of(deg[0]) : Optional.empty();
    }

    /** How many of the pulls that were tried were run on days before the present one. */
    int earlier() {
        List<MeasuredPull> pulls = counting();
        int today = DAY.apply(pulls.get(pulls.size() - 1));
        return (int) pulls.stream().filter(pull -> DAY.apply(pull) != today).count();
    }

    /** What is worth saying of the day as a whole. */
    List<Finding> findings() {
        return timing.sets() == TimingPlan.Sets.MAP
                ? List.of()
                : List.of(Finding.warning(FindingCode.MAP_TOLD_BY_LOG, Place.nowhere()));
    }

    /** Whether any pull of the present configuration gave torque. */
    boolean hasReadings() {
        return !used.isEmpty();
    }

    double[] rows() {
        return rows.clone();
    }

    /** The mixture is swept where the plan says so and it is known of every pull. */
    boolean sweepsMixture() {
        return view.day().plan().mixture().isPresent()
                && used.stream().allMatch(pull -> DayView.mixtureOf(pull).isPresent());
    }

    /** Torque over speed, advance and, where it moved, mixture. */
    Surface surface() {
        SpeedRows speeds = SpeedRows.ofRpm(rows);
        List<SurfacePull> pulls = new ArrayList<>();
        List<Integer> days = used.stream().map(DAY).distinct().toList();
        Map<Integer, Double> begins = used.stream().collect(Collectors.toMap(DAY, MeasuredPull::order, Math::min));
        for (MeasuredPull pull : used) {
            Optional<Lambda> lambda = lambda(pull);
            List<SurfaceReading> readings = readRows(pull).stream()
                    .map(row -> new SurfaceReading(
                            speeds.nearest(row.rpm()),
                            row.advance().orElseThrow(),
                            row.lambda().or(() -> lambda),
                            PERCENT * Math.log(row.torque().newtonMetres()),
                            0))
                    .toList();
            int day = DAY.apply(pull);
            pulls.add(new SurfacePull(days.indexOf(day), pull.order() - begins.get(day), false, readings));
        }
        return new Surface(speeds, pulls, priors());
    }

    private SurfacePriors priors() {
        double most = timing.most().deg();
        SparkMap present = present().orElseThrow();
        List<SparkMap.Cell> guess = present.cells().stream()
                .map(cell -> new SparkMap.Cell(
                        cell.rpm(), Advance.ofDeg(Math.min(most, cell.advance().deg() + BEST_ABOVE_PRESENT_DEG))))
                .toList();
        SurfacePriors usual = SurfacePriors.usual(new SparkMap(guess)).withMixture(mixturePrior());
        return view.day()
                .experience()
                .flatMap(Experience::lnTimingCurvature)
                .map(usual::withLnCurvature)
                .orElse(usual);
    }

    private Optional<MixturePrior> mixturePrior() {
        double[] lambdas = used.stream()
                .flatMap(pull -> lambda(pull).stream())
                .mapToDouble(Lambda::value)
                .sorted()
                .toArray();
        if (lambdas.length < used.size()) {
            return Optional.empty();
        }
        boolean moved = lambdas[lambdas.length - 1] - lambdas[0] > ONE_MIXTURE;
        return sweepsMixture() || moved
                ? Optional.of(MixturePrior.ofGuess(view.day()
                        .plan()
                        .mixture()
                        .map(MixturePlan::start)
                        .orElse(Lambda.of(lambdas[lambdas.length / 2]))))
                : Optional.empty();
    }

    static Optional<Lambda> lambda(MeasuredPull pull) {
        OptionalDouble lambda = DayView.mixtureOf(pull);
        return lambda.isPresent() ? Optional.of(Lambda.of(lambda.getAsDouble())) : Optional.empty();
    }

    /** The pulls of the present configuration, and what else knocked on its fuel, in order. */
    List<MeasuredPull> counting() {
        return view.day().pulls().stream()
                .filter(pull -> view.here().contains(pull) || isKnockBesides(pull))
                .toList();
    }

    private boolean isKnockBesides(MeasuredPull stretch) {
        return !stretch.isPull()
                && stretch.knock().isHeard()
                && stretch.setting().isOnFuel(view.fuel());
    }

    /** The same as far as they tell how far the engine may go. */
    List<TriedPull> tried() {
        return new TriedMaps(view, timing, present()).of(counting());
    }

    /** What became of the flags in those pulls. */
    FlagLooks looks(List<TriedPull> tried) {
        return new FlagLooks(tried, view.day().plan().limits().looksAgain());
    }

    /** Pulls of other configurations, whose knock makes this one start lower. */
    List<TriedPull> triedElsewhere() {
        List<MeasuredPull> here = counting();
        return new TriedMaps(view, timing, present())
                .of(view.day().pulls().stream()
                        .filter(pull -> !here.contains(pull) && pull.knock().isHeard())
                        .toList());
    }

    /** How a graded knock level grows at each speed; empty where the plan has no limit of it or no pull a level. */
    Optional<KnockLevels> levels() {
        OptionalDouble limit = view.day().plan().limits().knockLevel();
        if (limit.isEmpty()) {
            return Optional.empty();
        }
        SpeedRows speeds = SpeedRows.ofRpm(rows);
        List<KnockLevels.Level> levels = new ArrayList<>();
        for (MeasuredPull pull : used) {
            SparkMap spark = TriedMaps.logged(readRows(pull), timing);
            pull.knock().levels().stream()
                    .filter(level -> level.level() > 0 && !view.day().lifted().contains(pull.number()))
                    .forEach(level -> levels.add(new KnockLevels.Level(
                            speeds.nearest(level.rpm()),
                            spark.degAt(level.rpm()),
                            Math.log(level.level() / limit.getAsDouble()))));
        }
        return levels.isEmpty() ? Optional.empty() : Optional.of(new KnockLevels(speeds, levels));
    }

    /** The map that stood in the engine before the day: the plan's, else what the first pull logged. Its breakpoints are the cells. */
    Optional<SparkMap> present() {
        List<SparkMap.Cell> said = timing.map().present().stream()
                .map(cell -> new SparkMap.Cell(cell.rpm(), cell.advance()))
                .toList();
        if (!said.isEmpty()) {
            return Optional.of(onCells(
                    new SparkMap(said), said.stream().map(SparkMap.Cell::rpm).toList()));
        }
        return used.stream()
                .findFirst()
                .map(pull -> onCells(
                        TriedMaps.logged(readRows(pull), timing),
                        Arrays.stream(rows).boxed().toList()));
    }

    private SparkMap onCells(SparkMap map, List<Double> usual) {
        List<Double> speeds =
                timing.map().breakpointsRpm().isEmpty() ? usual : timing.map().breakpointsRpm();
        double[] rpm = speeds.stream().mapToDouble(Double::doubleValue).toArray();
        return set(SparkMap.of(rpm, map.degAt(rpm)));
    }

    /** A map that was run, at the nearest values that can be set. */
    SparkMap set(SparkMap run) {
        double resolution = timing.step().resolution();
        return new SparkMap(run.cells().stream()
                .map(cell -> new SparkMap.Cell(
                        cell.rpm(), Advance.ofDeg(Math.rint(cell.advance().deg() / resolution) * resolution)))
                .toList());
    }

    /** What a pull ran, at the breakpoints of the ignition. */
    SparkMap atCells(SparkMap run) {
        double[] rpm = present().orElseThrow().cells().stream()
                .mapToDouble(SparkMap.Cell::rpm)
                .toArray();
        return set(SparkMap.of(rpm, run.degAt(rpm)));
    }
}
