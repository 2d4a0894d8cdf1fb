package org.nextpull.report;

import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.advice.AnswerRow;
import org.nextpull.advice.MapState;
import org.nextpull.channel.SparkMap;

/** The sentences of a day whose ignition holds a map. */
public final class MapText {
    private static final double LEAST_CHANGE_DEG = 1e-6;

    private MapText() {}

    /** A map in a few words: {@code map of 18.0 to 27.5 deg}. */
    static String range(SparkMap map) {
        double[] deg = inOrder(map);
        if (deg[0] == deg[deg.length - 1]) {
            return "map of " + Shown.fixed(deg[0], 1) + " deg at every speed";
        }
        return "map of " + Shown.fixed(deg[0], 1) + " to " + Shown.fixed(deg[deg.length - 1], 1) + " deg";
    }

    private static double[] inOrder(SparkMap map) {
        return map.cells().stream()
                .mapToDouble(cell -> cell.advance().deg())
                .sorted()
                .toArray();
    }

    /** Every cell: {@code 3500 rpm 18.0 deg, 4000 rpm 20.5 deg}. */
    public static String cells(SparkMap map) {
        return map.cells().stream()
                .map(cell -> Shown.fixed(cell.rpm(), 0) + " rpm "
                        + Shown.fixed(cell.advance().deg(), 1) + " deg")
                .collect(Collectors.joining(", "));
    }

    /** How well the map is known: {@code Map, 14 speeds: 12 answered, ...}. */
    public static String standing(MapState state) {
        long answered =
                state.rows().stream().filter(row -> row.answer().isPresent()).count();
        long bracketed = state.rows().stream().filter(AnswerRow::isBracketed).count();
        return "Map, " + Shown.count(state.rows().size(), "speed") + ": " + answered + " answered, peak bracketed at "
                + bracketed + ". Torque still to find: about "
                + percent(state.leftAtPeak().expectedPercent()) + " at the map of the peaks, "
                + percent(state.leftAtLeast().expectedPercent()) + " at the map of MBT"
                + state.leftByLeave()
                        .map(left -> ", " + percent(left.expectedPercent()) + " at the final map")
                        .orElse("")
                + state.gainOverFlat()
                        .map(gain -> ". The best map gains " + gain(gain) + " over the best single number")
                        .orElse("")
                + ". Repeatability " + percent(state.scatterPercent()) + ", drift "
                + signedPercent(state.driftPercent()) + " per pull.";
    }

    /** What a map would gain over the number that stays, knock not looked at. */
    public static String wouldGain(MapState.Gain gain) {
        return "A map would gain " + gain(gain) + " over this one number, if no speed knocks at its own best.";
    }

    private static String gain(MapState.Gain gain) {
        return "about " + percent(gain.percent()) + " (90 % CI "
                + Shown.fixed(gain.interval().low(), 2) + " to "
                + percent(gain.interval().high()) + ")";
    }

    /** What decides a speed, or why it has no answer. */
    public static String decidedBy(AnswerRow row) {
        if (row.answer().isEmpty()) {
            return row.runDeg().isEmpty() ? "not run" : "not bracketed";
        }
        return switch (row.by()) {
            case PEAK -> "peak";
            case KNOCK_LIMIT -> "knock";
            case PLAN_LIMIT -> "plan's limit";
            case HIGHEST_TRIED -> "highest tried";
        };
    }

    /** The change of a cell; empty where it stays, or where the last map has no such cell. */
    public static String change(SparkMap next, int cell, SparkMap last) {
        SparkMap.Cell there = next.cells().get(cell);
        double by = there.advance().deg() - last.degAt(there.rpm());
        return Math.abs(by) < LEAST_CHANGE_DEG ? "" : AdviceText.signed(by);
    }

    /** By how much the whole map moves, where it moves as one: {@code the whole map by +2.0 deg}. */
    public static Optional<String> shift(SparkMap next, SparkMap last) {
        return shiftDeg(next, last).map(by -> "the whole map by " + by + " deg");
    }

    /** The same as a number alone: {@code +2.0}. */
    static Optional<String> shiftDeg(SparkMap next, SparkMap last) {
        return next.shiftFrom(last).stream()
                .filter(by -> Math.abs(by) >= LEAST_CHANGE_DEG)
                .mapToObj(AdviceText::signed)
                .findFirst();
    }

    static String percent(double value) {
        return Shown.fixed(value, 2) + " %";
    }

    private static String signedPercent(double value) {
        return (value >= 0 ? "+" : "") + Shown.fixed(value, 2) + " %";
    }
}
