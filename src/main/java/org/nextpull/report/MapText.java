package org.nextpull.report;

import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.MapRow;
import org.nextpull.advice.MapState;
import org.nextpull.advice.Reason;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.TorqueLeft;

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

    static String first(Reason.FirstMap first) {
        String from = first.shiftDeg() == 0
                ? "the map that stands in the engine"
                : "the present map moved by " + AdviceText.signed(first.shiftDeg()) + " deg";
        return "The first pull is " + from + "; all that follows counts from it.";
    }

    static String search(Reason.MapSearch search) {
        String aim = switch (search.purpose()) {
            case CLIMB -> "Torque still rises with advance, so each speed goes on by a step, no more.";
            case BRACKET_BELOW -> "A map below the best shows how torque falls to that side.";
            case BRACKET_ABOVE -> "A map a little above the best shows where torque begins to fall.";
            case EXPLORE -> "This map and mixture together leave least in doubt.";
            case LOOK_AGAIN ->
                "One knock flag stands alone and the plan has look_again on, so its speed is run again: listen, and lift off at once if it knocks.";
            case PROVE -> "This is the map that would stay in the engine; it is run to prove it.";
        };
        String listen =
                search.listen() ? " Knock is not measured: listen during this pull and mark what you hear." : "";
        return aim + " After " + Shown.count(search.pulls(), "pull") + " about "
                + percent(search.left().expectedPercent()) + " of torque is still to be had by knowing the map better"
                + ", at a scatter from pull to pull of " + percent(search.scatterPercent()) + "." + listen;
    }

    static String ended(AdviceCode code, Reason.MapEnded end) {
        String pulls = "After " + Shown.count(end.pulls(), "pull") + " ";
        String why = switch (code) {
            case SETTLED -> pulls + "what is left to gain is below what a pull can show.";
            case SCATTER_LIMITED ->
                pulls + "another pull would tell no more at a scatter from pull to pull of "
                        + percent(end.scatterPercent()) + ".";
            case KNOCK_LIMITED -> pulls + "knock limits the advance before the best torque at some speeds.";
            case PLAN_LIMIT -> pulls + "the plan's limit is reached at some speeds and torque still rises there.";
            case BUDGET -> pulls + "the plan's budget of pulls is used up and the answer is not settled.";
            default -> pulls + "the sweep ends.";
        };
        return why + " " + left(end.left());
    }

    private static String left(TorqueLeft left) {
        return "At the map of most torque about " + percent(left.expectedPercent())
                + " may be left, and the chance of leaving over half a percent is "
                + percent(100 * left.chanceOfMuch()) + ".";
    }

    /** How well the map is known: {@code Map, 14 speeds: 12 answered, ...}. */
    public static String standing(MapState state) {
        long answered =
                state.rows().stream().filter(row -> row.answer().isPresent()).count();
        long bracketed = state.rows().stream().filter(MapRow::isBracketed).count();
        return "Map, " + Shown.count(state.rows().size(), "speed") + ": " + answered
                + " answered, the peak itself bracketed at "
                + bracketed + ". The map of most torque leaves about "
                + percent(state.leftAtPeak().expectedPercent()) + ", the least that is near enough "
                + percent(state.leftAtLeast().expectedPercent())
                + state.leftByLeave()
                        .map(left -> ", the one that was run and stays " + percent(left.expectedPercent()))
                        .orElse("")
                + "; scatter from pull to pull "
                + percent(state.scatterPercent()) + ", drift " + signedPercent(state.driftPercent()) + " a pull.";
    }

    /** What decides a speed, or why it has no answer. */
    public static String decidedBy(MapRow row) {
        if (row.answer().isEmpty()) {
            return "not known yet";
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

    private static String percent(double value) {
        return Shown.fixed(value, 2) + " %";
    }

    private static String signedPercent(double value) {
        return (value >= 0 ? "+" : "") + Shown.fixed(value, 2) + " %";
    }
}
