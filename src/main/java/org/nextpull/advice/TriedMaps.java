package org.nextpull.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import org.nextpull.channel.SparkMap;
import org.nextpull.plan.Band;
import org.nextpull.plan.Limit;
import org.nextpull.response.Figures;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.SparkTakenOut;
import org.nextpull.unit.Advance;
import org.nextpull.unit.SpeedBand;

/**
 * What pulls of maps tell of how far the engine may go. A pull that gives no torque clears nothing, but keeps its knock and its limits,
 * unless the operator lifted them.
 */
final class TriedMaps {
    /** Pulls that are in no plan's band may have reached any speed. */
    private static final SpeedBand ANY_SPEED = new SpeedBand(0, 100_000);

    /** Events this near to each other are one flag. */
    private static final double ONE_FLAG_RPM = 25;

    /** A row that a cell beside it feeds with less than this says too little of the cell. */
    private static final double LEAST_SHARE = 0.25;

    private final DayView view;
    private final Ignition ignition;
    private final SparkGrid grid;
    private final Optional<SparkMap> present;

    TriedMaps(DayView view, DayReadings day) {
        this.view = view;
        ignition = day.ignition();
        grid = day.grid();
        present = day.present();
    }

    List<TriedPull> of(List<MeasuredPull> pulls) {
        List<TriedPull> tried = new ArrayList<>();
        Optional<SparkMap> last = present;
        for (MeasuredPull pull : pulls) {
            List<Figures.AtSpeed> rows = ignition.isMap()
                    ? pull.figures().map(Figures::rows).orElse(List.of()).stream()
                            .filter(row -> row.advance().isPresent())
                            .toList()
                    : List.of();
            Optional<SparkMap> spark = !ignition.isMap()
                    ? ignition.number(pull)
                            .map(number -> SparkMap.flat(Advance.ofDeg(grid.meant(number.deg()))))
                            .or(lastOf(last))
                    : rows.isEmpty() ? guessed(pull, last) : Optional.of(withCellsBeside(logged(rows, grid)));
            spark.map(map -> pull.isHeld() && !rows.isEmpty()
                            ? heldIn(map, rows.get(0).rpm())
                            : map)
                    .ifPresent(map -> tried.add(tried(pull, map, rows)));
            last = rows.isEmpty() && ignition.isMap() ? last : spark;
        }
        return List.copyOf(tried);
    }

    private static Supplier<Optional<SparkMap>> lastOf(Optional<SparkMap> last) {
        return () -> last;
    }

    private TriedPull tried(MeasuredPull pull, SparkMap spark, List<Figures.AtSpeed> rows) {
        boolean isLifted = view.day().lifted().contains(pull.number());
        boolean metLimit = !isLifted && !pull.limitsMet().isEmpty();
        boolean isKnock = !isLifted && pull.knock().isHeard();
        // where the spark stands, only the mixture answers knock
        boolean answers = ignition != Ignition.STANDING;
        return new TriedPull(
                spark,
                DayReadings.lambda(pull),
                pull.isHeld() && ignition.isMap()
                        ? around(rows)
                        : rows.size() < 2
                                ? view.day().plan().band().map(Band::speeds).orElse(ANY_SPEED)
                                : new SpeedBand(
                                        spark.cells().get(0).rpm(),
                                        spark.cells()
                                                .get(spark.cells().size() - 1)
                                                .rpm()),
                !isKnock || !answers ? List.of() : flags(pull.knock()),
                metLimit || !pull.isUsed() || (isKnock && !answers),
                metLimit
                        && pull.isUsed()
                        && answers
                        && view.mixture().isEmpty()
                        && pull.limitsMet().stream().allMatch(met -> met.limit() == Limit.EXHAUST));
    }

    /** A brake that holds a speed clears it and no other. */
    private static SpeedBand around(List<Figures.AtSpeed> rows) {
        double rpm = rows.stream().mapToDouble(Figures.AtSpeed::rpm).findFirst().orElse(0);
        return TriedPull.aroundHeld(rpm);
    }

    private List<TriedPull.KnockFlag> flags(KnockHeard knock) {
        return ignition.isMap() ? bySpeed(knock) : List.of(TriedPull.KnockFlag.somewhere());
    }

    /** Knock at each speed where it was heard; where nobody knows the speed, everywhere. */
    private static List<TriedPull.KnockFlag> bySpeed(KnockHeard knock) {
        List<TriedPull.KnockFlag> flags = DoubleStream.concat(
                        knock.at().stream().flatMapToDouble(at -> at.rpm().stream()),
                        knock.takenOut().stream().mapToDouble(SparkTakenOut::rpm))
                .map(rpm -> Math.rint(rpm / ONE_FLAG_RPM) * ONE_FLAG_RPM)
                .distinct()
                .mapToObj(TriedPull.KnockFlag::atRpm)
                .toList();
        boolean isAnySpeedUnknown = knock.at().stream().anyMatch(at -> at.rpm().isEmpty());
        return flags.isEmpty() || isAnySpeedUnknown ? List.of(TriedPull.KnockFlag.somewhere()) : flags;
    }

    /**
     * The map of a pull without rows: the last one known, moved so that its mean is what the pull averaged. A pull that was cut short
     * averages over its lower speeds alone, so where advance rises with speed this lies on the retarded side.
     */
    private static Optional<SparkMap> guessed(MeasuredPull pull, Optional<SparkMap> last) {
        Optional<Advance> mean = pull.setting().advance();
        return last.map(map -> mean.map(deg -> map.shiftedBy(deg.deg()
                                - map.cells().stream()
                                        .mapToDouble(cell -> cell.advance().deg())
                                        .average()
                                        .orElseThrow()))
                        .orElse(map))
                .or(() -> mean.map(SparkMap::flat));
    }

    /**
     * The map with the next cell on either side of its rows, where that feeds them: the line from the last cell inside through the last
     * row leads to it. A pull that ran through the row counts as having reached it, since it decides the advance that was run there.
     */
    private SparkMap withCellsBeside(SparkMap rows) {
        List<SparkMap.Cell> cells = new ArrayList<>(rows.cells());
        double first = cells.get(0).rpm();
        double last = cells.get(cells.size() - 1).rpm();
        double[] known = present.map(map ->
                        map.cells().stream().mapToDouble(SparkMap.Cell::rpm).toArray())
                .orElse(new double[0]);
        for (int i = 0; i + 1 < known.length; i++) {
            if (known[i] < first && first < known[i + 1]) {
                beside(rows, known[i], first, known[i + 1]).ifPresent(cell -> cells.add(0, cell));
            }
            if (known[i] < last && last < known[i + 1]) {
                beside(rows, known[i + 1], last, known[i]).ifPresent(cells::add);
            }
        }
        return new SparkMap(cells);
    }

    /** What a held speed ran, as far around it as knock there would forbid; further off stands what stood before the day. */
    private SparkMap heldIn(SparkMap run, double rpm) {
        double from = rpm - Exclusions.AROUND_RPM;
        double to = rpm + Exclusions.AROUND_RPM;
        List<SparkMap.Cell> cells = new ArrayList<>();
        for (double speed : new double[] {Math.max(0, from), rpm, to}) {
            cells.add(new SparkMap.Cell(speed, Advance.ofDeg(run.degAt(rpm))));
        }
        present.stream()
                .flatMap(map -> map.cells().stream())
                .filter(cell -> cell.rpm() < from || cell.rpm() > to)
                .forEach(cells::add);
        cells.sort(Comparator.comparingDouble(SparkMap.Cell::rpm));
        return new SparkMap(cells);
    }

    private Optional<SparkMap.Cell> beside(SparkMap rows, double cell, double row, double inner) {
        double share = (row - inner) / (cell - inner);
        if (share < LEAST_SHARE) {
            return Optional.empty();
        }
        double atInner = rows.degAt(inner);
        double deg = atInner + (rows.degAt(row) - atInner) / share;
        return Optional.of(new SparkMap.Cell(cell, Advance.ofDeg(grid.near(deg))));
    }

    /** Rows as a map: a value that is all but one that can be set was meant to be that. */
    static SparkMap logged(List<Figures.AtSpeed> rows, SparkGrid grid) {
        return new SparkMap(rows.stream()
                .map(row -> new SparkMap.Cell(
                        row.rpm(),
                        Advance.ofDeg(grid.meant(row.advance().orElseThrow().deg()))))
                .toList());
    }
}
