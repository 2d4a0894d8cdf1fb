package org.nextpull.report;

import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.Ignition;
import org.nextpull.advice.MapGain;
import org.nextpull.advice.MapRow;
import org.nextpull.advice.MapState;
import org.nextpull.advice.Reason;
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

    static String first(Reason.First first) {
        if (!first.ignition().isMap()) {
            return "Baseline: the plan's start setting.";
        }
        String moved = first.shiftDeg() == 0 ? "" : " moved by " + AdviceText.signed(first.shiftDeg()) + " deg";
        return "Baseline: the present map" + moved + ".";
    }

    static String search(Reason.Searching search) {
        boolean isMap = search.ignition().isMap();
        String aim = switch (search.purpose()) {
            case CLIMB -> (isMap ? "Each speed one step up" : "One step up") + ": torque still rises with advance.";
            case BRACKET_BELOW ->
                (isMap ? "A map" : "An advance") + " below the best, to see torque fall on that side.";
            case BRACKET_ABOVE ->
                (isMap ? "A map" : "An advance") + " just above the best, to see where torque begins to fall.";
            case EXPLORE -> explore(search.ignition());
            case LOOK_AGAIN ->
                "One knock flag stands alone, so its speed is run again: listen, and close the throttle at once if it knocks.";
            case PROVE -> "Confirm the final " + (isMap ? "map." : "setting.");
        };
        String listen = search.listen() ? " Knock is not measured: listen during this pull, and mark it." : "";
        return aim + " About " + percent(search.left().expectedPercent()) + " of torque still to find after "
                + Shown.count(search.pulls(), "pull") + "; repeatability " + percent(search.scatterPercent()) + "."
                + listen;
    }

    private static String explore(Ignition ignition) {
        return switch (ignition) {
            case MAP -> "This map and mixture tell most about the peak.";
            case FLAT, OFFSET -> "This spark and mixture tell most about the peak.";
            case STANDING -> "This mixture tells most about the peak.";
        };
    }

    static String ended(AdviceCode code, Reason.Ended end) {
        String where = end.ignition().isMap() ? " at some speeds" : "";
        String left = "About " + percent(end.left().expectedPercent()) + " of torque still to find";
        String why = switch (code) {
            case SETTLED -> left + ": less than a pull can show.";
            case SCATTER_LIMITED ->
                "Repeatability of " + percent(end.scatterPercent())
                        + " hides the rest. Find why pulls differ before you run more. " + left + ".";
            case KNOCK_LIMITED ->
                (end.ignition() == Ignition.STANDING
                                ? "Knock limits the mixture. "
                                : "Knock-limited" + where + ": MBT is further advanced; do not chase it. ")
                        + left + " within what knock leaves.";
            case PLAN_LIMIT ->
                "At the plan's limit" + where + ": torque may still rise beyond it. " + left
                        + " within what the plan allows.";
            case BUDGET -> "Out of pulls (" + end.pulls() + "): the answer is not settled. " + left + ".";
            default -> "The sweep ends. " + left + ".";
        };
        return why + " Chance of more than 0.5 % left after " + Shown.count(end.pulls(), "pull") + ": "
                + chance(end.left().chanceOfMuch()) + ".";
    }

    private static String chance(double share) {
        double hundredths = 100 * share;
        return (hundredths < 1 ? "under 1" : Shown.fixed(hundredths, 0)) + " in 100";
    }

    static String nothing(AdviceCode code, Reason.Nothing end) {
        return code == AdviceCode.BUDGET
                ? "Out of pulls (" + end.pulls() + "): none gave torque."
                : "After " + Shown.count(end.pulls(), "pull") + " nothing that the plan allows is left to run.";
    }

    /** How well the map is known: {@code Map, 14 speeds: 12 answered, ...}. */
    public static String standing(MapState state) {
        long answered =
                state.rows().stream().filter(row -> row.answer().isPresent()).count();
        long bracketed = state.rows().stream().filter(MapRow::isBracketed).count();
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
    public static String wouldGain(MapGain gain) {
        return "A map would gain " + gain(gain) + " over this one number, if no speed knocks at its own best.";
    }

    private static String gain(MapGain gain) {
        return "about " + percent(gain.percent()) + " (90 % CI "
                + Shown.fixed(gain.interval().low(), 2) + " to "
                + percent(gain.interval().high()) + ")";
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
