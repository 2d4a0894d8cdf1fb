package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.SparkMap;
import org.nextpull.plan.Band;
import org.nextpull.plan.TimingPlan;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.RowFigure;
import org.nextpull.unit.Advance;
import org.nextpull.unit.SpeedBand;

/**
 * What pulls of maps tell of how far the engine may go. A pull that gives no torque clears nothing, but keeps its knock and its limits,
 * unless the operator lifted them.
 */
final class TriedMaps {
    /** A logged advance this near to one that can be set was set to it, in resolutions. */
    private static final double MEANT = 0.2;
    /** Pulls that are in no plan's band may have reached any speed. */
    private static final SpeedBand ANY_SPEED = new SpeedBand(0, 100_000);

    private final DayView view;
    private final TimingPlan timing;
    private final Optional<SparkMap> present;

    TriedMaps(DayView view, TimingPlan timing, Optional<SparkMap> present) {
        this.view = view;
        this.timing = timing;
        this.present = present;
    }

    List<TriedPull> of(List<MeasuredPull> pulls) {
        List<TriedPull> tried = new ArrayList<>();
        Optional<SparkMap> last = present;
        for (MeasuredPull pull : pulls) {
            List<RowFigure> rows = pull.figures().map(Figures::rows).orElse(List.of()).stream()
                    .filter(row -> row.advance().isPresent())
                    .toList();
            Optional<SparkMap> spark = rows.isEmpty() ? guessed(pull, last) : Optional.of(logged(rows, timing));
            spark.ifPresent(map -> tried.add(tried(pull, map, rows)));
            last = rows.isEmpty() ? last : spark;
        }
        return tried;
    }

    private TriedPull tried(MeasuredPull pull, SparkMap spark, List<RowFigure> rows) {
        boolean isLifted = view.day().lifted().contains(pull.number());
        boolean metLimit = !isLifted && !pull.limitsMet().isEmpty();
        return new TriedPull(
                spark,
                MapDay.lambda(pull),
                rows.size() < 2
                        ? view.day().plan().band().map(Band::speeds).orElse(ANY_SPEED)
                        : new SpeedBand(rows.get(0).rpm(), rows.get(rows.size() - 1).rpm()),
                isLifted || !pull.knock().isHeard() ? List.of() : flags(),
                metLimit || !pull.isUsed());
    }

    private static List<KnockFlag> flags() {
        return List.of(KnockFlag.somewhere());
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

    /** Rows as a map: a value that is all but one that can be set was meant to be that. */
    static SparkMap logged(List<RowFigure> rows, TimingPlan timing) {
        double resolution = timing.step().resolution();
        return new SparkMap(rows.stream()
                .map(row -> {
                    double deg = row.advance().orElseThrow().deg();
                    double set = Math.rint(deg / resolution) * resolution;
                    double meant = Math.abs(deg - set) <= MEANT * resolution ? set : deg;
                    return new SparkMap.Cell(row.rpm(), Advance.ofDeg(meant));
                })
                .toList());
    }
}
