package org.nextpull.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;

/**
 * The speeds that a brake was told to hold. It holds a few revolutions beside them, and plateaus that far apart are one row: only then can
 * the spark settings that were run there be held against each other. The pull that proves their map is held against them.
 */
final class HeldSpeeds {
    /** Plateaus no further from the next than this share of their speed were meant to be at one speed. */
    private static final double ONE_SPEED = 0.01;

    private static final double ROUND_RPM = 10;

    /** Near best torque so little advance turns less than the repeatability of a pull. */
    private static final double ONE_ADVANCE_DEG = 1.5;

    private HeldSpeeds() {}

    /** The pulls with each held row at the speed that its plateaus have in common, to 10 rpm. */
    static List<MeasuredPull.Curve> alike(List<MeasuredPull.Curve> measured) {
        Map<Double, Double> meant = meant(measured.stream()
                .flatMap(one -> rows(one.pull()).stream())
                .filter(row -> row.heldAtS().isPresent())
                .map(Figures.AtSpeed::rpm)
                .sorted()
                .toList());
        return measured.stream()
                .map(one -> one.withPull(moved(one.pull(), meant)))
                .toList();
    }

    /** What share of the torque at held speeds the last pull over the band made, at about its advance; empty where there are not both. */
    static Optional<Finding> provedBy(List<MeasuredPull> pulls) {
        List<MeasuredPull> used = pulls.stream().filter(MeasuredPull::isUsed).toList();
        return used.stream()
                .filter(pull -> !pull.isHeld())
                .reduce((before, pull) -> pull)
                .flatMap(pull -> {
                    OptionalDouble share = used.stream()
                            .filter(MeasuredPull::isHeld)
                            .flatMap(held -> rows(held).stream())
                            .flatMapToDouble(plateau -> share(rows(pull), plateau).stream())
                            .average();
                    return share.isPresent()
                            ? Optional.of(Finding.note(
                                    FindingCode.HELD_AGAINST_PULL,
                                    Place.ofPull(pull.number()),
                                    Detail.of("percent", 100 * share.getAsDouble())))
                            : Optional.empty();
                });
    }

    /** Torque of a pull between its rows over that of a plateau, where both stood at about one advance. */
    private static OptionalDouble share(List<Figures.AtSpeed> rows, Figures.AtSpeed plateau) {
        for (int next = 1; next < rows.size(); next++) {
            Figures.AtSpeed low = rows.get(next - 1);
            Figures.AtSpeed high = rows.get(next);
            boolean around = low.rpm() <= plateau.rpm() && plateau.rpm() <= high.rpm();
            if (around
                    && Stream.of(low, high, plateau)
                            .allMatch(row -> row.advance().isPresent())) {
                double part = (plateau.rpm() - low.rpm()) / (high.rpm() - low.rpm());
                double deg = between(
                        low, high, part, row -> row.advance().orElseThrow().deg());
                return Math.abs(deg - plateau.advance().orElseThrow().deg()) <= ONE_ADVANCE_DEG
                        ? OptionalDouble.of(
                                between(low, high, part, row -> row.torque().newtonMetres())
                                        / plateau.torque().newtonMetres())
                        : OptionalDouble.empty();
            }
        }
        return OptionalDouble.empty();
    }

    private static double between(
            Figures.AtSpeed low, Figures.AtSpeed high, double part, ToDoubleFunction<Figures.AtSpeed> figure) {
        return (1 - part) * figure.applyAsDouble(low) + part * figure.applyAsDouble(high);
    }

    private static List<Figures.AtSpeed> rows(MeasuredPull pull) {
        return pull.figures().map(Figures::rows).orElse(List.of());
    }

    /** Whether a brake that was told to hold one speed may have held both, in rpm. */
    static boolean isOne(double rpm, double otherRpm) {
        return Math.abs(rpm - otherRpm) <= ONE_SPEED * Math.max(rpm, otherRpm);
    }

    private static Map<Double, Double> meant(List<Double> rising) {
        Map<Double, Double> meant = new TreeMap<>();
        List<Double> together = new ArrayList<>();
        for (double rpm : rising) {
            if (!together.isEmpty() && !isOne(together.get(together.size() - 1), rpm)) {
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
        List<Figures.AtSpeed> rows = rows(pull);
        return rows.stream().noneMatch(row -> row.heldAtS().isPresent())
                ? pull
                : pull.withRows(rows.stream()
                        .map(row ->
                                row.heldAtS().isPresent() ? row.atRpm(meant.getOrDefault(row.rpm(), row.rpm())) : row)
                        .toList());
    }
}
