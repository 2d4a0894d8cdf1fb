package org.nextpull.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredCurve;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.RowFigure;

/**
 * The speeds that a brake was told to hold. It holds a few revolutions beside them, and plateaus that far apart are one row: only then can
 * the spark settings that were run there be held against each other.
 */
final class HeldSpeeds {
    /** Plateaus no further from the next than this share of their speed were meant to be at one speed. */
    private static final double ONE_SPEED = 0.01;

    private static final double ROUND_RPM = 10;

    private HeldSpeeds() {}

    /** The pulls with each held row at the speed that its plateaus have in common, to 10 rpm. */
    static List<MeasuredCurve> alike(List<MeasuredCurve> measured) {
        Map<Double, Double> meant = meant(measured.stream()
                .flatMap(one -> rows(one.pull()).stream())
                .filter(row -> row.heldAtS().isPresent())
                .map(RowFigure::rpm)
                .sorted()
                .toList());
        return measured.stream()
                .map(one -> one.withPull(moved(one.pull(), meant)))
                .toList();
    }

    private static List<RowFigure> rows(MeasuredPull pull) {
        return pull.figures().map(Figures::rows).orElse(List.of());
    }

    private static Map<Double, Double> meant(List<Double> rising) {
        Map<Double, Double> meant = new TreeMap<>();
        List<Double> together = new ArrayList<>();
        for (double rpm : rising) {
            if (!together.isEmpty() && rpm - together.get(together.size() - 1) > ONE_SPEED * rpm) {
                close(together, meant);
            }
            together.add(rpm);
        }
        close(together, meant);
        return meant;
    }

    private static void close(List<Double> together, Map<Double, Double> meant) {
        double mean =
                together.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        together.forEach(rpm -> meant.put(rpm, Math.rint(mean / ROUND_RPM) * ROUND_RPM));
        together.clear();
    }

    private static MeasuredPull moved(MeasuredPull pull, Map<Double, Double> meant) {
        List<RowFigure> rows = rows(pull);
        return rows.stream().noneMatch(row -> row.heldAtS().isPresent())
                ? pull
                : pull.withRows(rows.stream()
                        .map(row ->
                                row.heldAtS().isPresent() ? row.atRpm(meant.getOrDefault(row.rpm(), row.rpm())) : row)
                        .toList());
    }
}
