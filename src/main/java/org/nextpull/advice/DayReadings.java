package org.nextpull.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.KnockLevels;
import org.nextpull.fit.SpeedRows;
import org.nextpull.plan.TimingPlan;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Torque;

/** A day as its pulls have it: each row of each pull with the advance that was logged there, or that of the pull. */
final class DayReadings {
    /** One figure a pull stands at this speed where no band is known. */
    private static final double ANY_RPM = 4000;

    /** Two settings no further apart than this are one remade, in resolutions. */
    private static final double SAME_SETTING = 0.6;

    private final DayView view;
    private final Ignition ignition;
    private final PlannerRules.Spark plan;
    private final SparkGrid grid;
    private final List<MeasuredPull> used;
    private final boolean ofRows;
    private final double[] rows;
    private Optional<Optional<SparkMap>> present = Optional.empty();
    private Optional<List<MeasuredPull>> counting = Optional.empty();
    private Optional<List<TriedPull>> tried = Optional.empty();

    DayReadings(DayView view) {
        this.view = view;
        ignition = Ignition.of(view.day());
        plan = ignition.rules(view.day().plan());
        grid = ignition.grid(view.day().plan());
        ofRows = view.used().stream().anyMatch(pull -> !rowsOf(pull).isEmpty());
        used = SurfacePulls.newest(view.used(), this::isReadable);
        TreeSet<Double> speeds = new TreeSet<>();
        used.forEach(pull -> readRows(pull).forEach(row -> speeds.add(row.rpm())));
        rows = speeds.stream().mapToDouble(Double::doubleValue).toArray();
    }

    Ignition ignition() {
        return ignition;
    }

    /** What the plan lets the spark do. */
    PlannerRules.Spark plan() {
        return plan;
    }

    SparkGrid grid() {
        return grid;
    }

    static List<Figures.AtSpeed> rowsOf(MeasuredPull pull) {
        return pull.figures().map(Figures::rows).orElse(List.of());
    }

    /**
     * The rows of a pull that have a torque and an advance: the logged one, else that of the whole pull. A pull of one figure, or of a
     * day of such pulls, is one row.
     */
    List<Figures.AtSpeed> readRows(MeasuredPull pull) {
        return read(pull).toList();
    }

    private boolean isReadable(MeasuredPull pull) {
        return read(pull).findFirst().isPresent();
    }

    private Stream<Figures.AtSpeed> read(MeasuredPull pull) {
        Optional<Advance> whole = ignition.number(pull);
        return (isOfRows() ? rowsOf(pull) : oneRow(pull))
                .stream()
                        .filter(row -> row.torque().newtonMetres() > 0)
                        .map(row ->
                                row.withAdvance(isLoggedByRow() ? row.advance().or(() -> whole) : whole))
                        .filter(row -> row.advance().isPresent());
    }

    /** Whether rows are counted in what the log shows of each; degrees on an unknown map and a spark that stands are not logged. */
    private boolean isLoggedByRow() {
        return ignition == Ignition.MAP || ignition == Ignition.FLAT;
    }

    boolean isOfRows() {
        return ofRows;
    }

    /** The figure of the whole pull; a power stands for a torque, since only its changes count. */
    private List<Figures.AtSpeed> oneRow(MeasuredPull pull) {
        double rpm = view.day()
                .plan()
                .band()
                .map(band -> (band.speeds().fromRpm() + band.speeds().toRpm()) / 2)
                .orElse(ANY_RPM);
        return Reading.of(List.of(pull), view.day().plan().goal().response()).stream()
                .map(reading -> new Figures.AtSpeed(rpm, Torque.ofNewtonMetres(reading.value()), Optional.empty()))
                .toList();
    }

    /** How many of the pulls that were tried use nothing of the budget: those of days before, and plateaus after the first of a stretch. */
    int earlier() {
        List<MeasuredPull> pulls = counting();
        int today = SurfacePulls.dayOf(pulls.get(pulls.size() - 1));
        List<MeasuredPull> usedToday =
                used.stream().filter(pull -> SurfacePulls.dayOf(pull) == today).toList();
        long before =
                pulls.stream().filter(pull -> SurfacePulls.dayOf(pull) != today).count();
        return (int) before
                + usedToday.size()
                - new SurfacePulls(this::readRows).stretches(usedToday).size();
    }

    /** Whether any pull of the present configuration gave torque. */
    boolean hasReadings() {
        return !used.isEmpty();
    }

    /** How many old pulls are left out. */
    int leftOut() {
        return (int) view.used().stream().filter(this::isReadable).count() - used.size();
    }

    double[] rows() {
        return rows.clone();
    }

    /** The mixture is swept where the plan says so and it is known of every pull. */
    boolean sweepsMixture() {
        return view.day().plan().mixture().isPresent()
                && used.stream().allMatch(pull -> DayView.mixtureOf(pull).isPresent());
    }

    static Optional<Lambda> lambda(MeasuredPull pull) {
        OptionalDouble lambda = DayView.mixtureOf(pull);
        return lambda.isPresent() ? Optional.of(Lambda.of(lambda.getAsDouble())) : Optional.empty();
    }

    /** The pulls of the present configuration, and what else knocked on its fuel, in order. */
    List<MeasuredPull> counting() {
        List<MeasuredPull> found = counting.orElseGet(() -> view.day().pulls().stream()
                .filter(pull -> view.isHere(pull) || isKnockBesides(pull))
                .toList());
        counting = Optional.of(found);
        return found;
    }

    private boolean isKnockBesides(MeasuredPull stretch) {
        return !stretch.isPull()
                && stretch.knock().isHeard()
                && stretch.setting().isOnFuel(view.fuel());
    }

    /** The same as far as they tell how far the engine may go. */
    List<TriedPull> tried() {
        List<TriedPull> found = tried.orElseGet(() -> new TriedMaps(view, this).of(counting()));
        tried = Optional.of(found);
        return found;
    }

    /** What became of the flags in those pulls. */
    FlagLooks looks(List<TriedPull> tried) {
        return new FlagLooks(tried, view.day().plan().limits().looksAgain());
    }

    /** Pulls of other configurations, whose knock makes this one start lower. */
    List<TriedPull> triedElsewhere() {
        List<MeasuredPull> here = counting();
        return new TriedMaps(view, this)
                .of(view.day().pulls().stream()
                        .filter(pull -> pull.knock().isHeard() && !here.contains(pull))
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
            SparkMap spark = TriedMaps.logged(readRows(pull), grid);
            pull.knock().levels().stream()
                    .filter(level -> level.level() > 0 && !view.day().lifted().contains(pull.number()))
                    .forEach(level -> levels.add(new KnockLevels.Level(
                            speeds.nearest(level.rpm()),
                            spark.degAt(level.rpm()),
                            Math.log(level.level() / limit.getAsDouble()))));
        }
        return levels.isEmpty() ? Optional.empty() : Optional.of(new KnockLevels(speeds, levels));
    }

    /**
     * What stood in the engine before the day. Of a map the plan's, else what the first pull logged; its breakpoints are the cells. Of
     * one number where the plan starts.
     */
    Optional<SparkMap> present() {
        Optional<SparkMap> found = present.orElseGet(this::findPresent);
        present = Optional.of(found);
        return found;
    }

    private Optional<SparkMap> findPresent() {
        if (!ignition.isMap()) {
            double start = view.day()
                    .plan()
                    .timing()
                    .map(timing -> timing.start().deg())
                    .orElse(0.0);
            return Optional.of(SparkMap.flat(Advance.ofDeg(start)));
        }
        Optional<SparkMap> said = timing().map().present();
        if (said.isPresent()) {
            return said.map(map ->
                    onCells(map, map.cells().stream().map(SparkMap.Cell::rpm).toList()));
        }
        return used.stream()
                .findFirst()
                .map(pull -> onCells(
                        TriedMaps.logged(pull.isHeld() ? firstOfEachSpeed() : readRows(pull), grid),
                        Arrays.stream(rows).boxed().toList()));
    }

    /** Of held speeds each begins with what stood there. */
    private List<Figures.AtSpeed> firstOfEachSpeed() {
        return Arrays.stream(rows)
                .mapToObj(rpm -> used.stream()
                        .flatMap(pull -> readRows(pull).stream())
                        .filter(row -> row.rpm() == rpm)
                        .findFirst()
                        .orElseThrow())
                .toList();
    }

    private TimingPlan timing() {
        return view.day().plan().timing().orElseThrow();
    }

    private SparkMap onCells(SparkMap map, List<Double> usual) {
        List<Double> speeds = timing().map().breakpointsRpm().isEmpty()
                ? usual
                : timing().map().breakpointsRpm();
        double[] rpm = speeds.stream().mapToDouble(Double::doubleValue).toArray();
        return grid.near(SparkMap.of(rpm, map.degAt(rpm)));
    }

    /** What a pull ran, at the breakpoints of the ignition. */
    SparkMap atCells(SparkMap run) {
        double[] rpm = present().orElseThrow().cells().stream()
                .mapToDouble(SparkMap.Cell::rpm)
                .toArray();
        return grid.near(SparkMap.of(rpm, run.degAt(rpm)));
    }

    /** Whether a measured spark was set to another one, at every speed. */
    boolean isSame(SparkMap wanted, SparkMap run) {
        double same = SAME_SETTING * grid.resolutionDeg();
        return Arrays.stream(rows).allMatch(rpm -> Math.abs(wanted.degAt(rpm) - run.degAt(rpm)) <= same);
    }

    /** Whether two pulls were run with one spark. */
    boolean isSameSpark(MeasuredPull one, MeasuredPull other) {
        List<TriedPull> both = new TriedMaps(view, this).of(List.of(one, other));
        return ignition == Ignition.STANDING
                || both.size() < 2
                || isSame(both.get(0).spark(), both.get(1).spark());
    }

    /** Whether two mixtures are one setting; one that is not known is any. */
    boolean isSameMixture(Optional<Lambda> one, Optional<Lambda> other) {
        double same = view.mixture().map(Axis::sameSetting).orElse(0.0);
        return one.isEmpty()
                || other.isEmpty()
                || Math.abs(one.get().value() - other.get().value()) <= same;
    }

    /** The pulls that gave torque, plateaus of one stretch under load together. */
    List<List<MeasuredPull>> stretches() {
        return new SurfacePulls(this::readRows).stretches(used);
    }

    /** The pulls that gave torque. */
    List<MeasuredPull> used() {
        return used;
    }
}
