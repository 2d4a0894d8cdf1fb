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
            return "The first pull is the start setting of the plan, from the retarded and rich side; all that follows counts from it.";
        }
        String from = first.shiftDeg() == 0
                ? "the map that stands in the engine"
                : "the present map moved by " + AdviceText.signed(first.shiftDeg()) + " deg";
        return "The first pull is " + from + "; all that follows counts from it.";
    }

    static String search(Reason.Searching search) {
        boolean isMap = search.ignition().isMap();
        String aim = switch (search.purpose()) {
            case CLIMB ->
                "Torque still rises with advance, so " + (isMap ? "each speed goes" : "go") + " on by a step, no more.";
            case BRACKET_BELOW ->
                (isMap ? "A map" : "An advance") + " below the best shows how torque falls to that side.";
            case BRACKET_ABOVE ->
                (isMap ? "A map" : "An advance") + " a little above the best shows where torque begins to fall.";
            case EXPLORE -> explore(search.ignition());
            case LOOK_AGAIN ->
                "One knock flag stands alone and the plan has look_again on, so its speed is run again: listen, and lift off at once if it knocks.";
            case PROVE ->
                "This is the " + (isMap ? "map" : "setting") + " that would stay in the engine; it is run to prove it.";
        };
        String listen =
                search.listen() ? " Knock is not measured: listen during this pull and mark what you hear." : "";
        return aim + " After " + Shown.count(search.pulls(), "pull") + " about "
                + percent(search.left().expectedPercent()) + " of torque is still to be had by knowing "
                + sought(search.ignition()) + " better, at a scatter from pull to pull of "
                + percent(search.scatterPercent()) + "." + listen;
    }

    private static String explore(Ignition ignition) {
        return switch (ignition) {
            case MAP -> "This map and mixture together leave least in doubt.";
            case FLAT, OFFSET -> "This spark and mixture together leave least in doubt.";
            case STANDING -> "This mixture leaves least in doubt.";
        };
    }

    private static String sought(Ignition ignition) {
        return switch (ignition) {
            case MAP -> "the map";
            case FLAT, OFFSET -> "the best setting";
            case STANDING -> "the best mixture";
        };
    }

    static String ended(AdviceCode code, Reason.Ended end) {
        String where = end.ignition().isMap() ? " at some speeds" : "";
        String pulls = "After " + Shown.count(end.pulls(), "pull") + " ";
        String why = switch (code) {
            case SETTLED -> pulls + "what is left to gain is below what a pull can show.";
            case SCATTER_LIMITED ->
                pulls + "another pull would tell no more at a scatter from pull to pull of "
                        + percent(end.scatterPercent()) + ".";
            case KNOCK_LIMITED ->
                end.ignition() == Ignition.STANDING
                        ? pulls + "knock limits the mixture before the best torque."
                        : pulls + "knock limits the advance before the best torque" + where + ".";
            case PLAN_LIMIT -> pulls + "the plan's limit is reached" + where + "; torque may still rise beyond it.";
            case BUDGET -> pulls + "the plan's budget of pulls is used up and the answer is not settled.";
            default -> pulls + "the sweep ends.";
        };
        return why + " " + left(code, end);
    }

    private static String left(AdviceCode code, Reason.Ended end) {
        String permits = code == AdviceCode.KNOCK_LIMITED
                ? " that knock leaves"
                : code == AdviceCode.PLAN_LIMIT ? " that the plan allows" : "";
        return "At the " + (end.ignition().isMap() ? "map" : "setting") + " of most torque" + permits + " about "
                + percent(end.left().expectedPercent())
                + " may be left, and the chance of leaving over half a percent is "
                + percent(100 * end.left().chanceOfMuch()) + ".";
    }

    static String nothing(AdviceCode code, Reason.Nothing end) {
        return "After " + Shown.count(end.pulls(), "pull")
                + (code == AdviceCode.BUDGET
                        ? " the plan's budget of pulls is used up, and none gave torque."
                        : " nothing that the plan allows is left to run.");
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
                + state.gainOverFlat()
                        .map(gain -> "; the best map gains " + gain(gain) + " over the best single number")
                        .orElse("")
                + "; scatter from pull to pull "
                + percent(state.scatterPercent()) + ", drift " + signedPercent(state.driftPercent()) + " a pull.";
    }

    /** What a map would gain over the number that stays, knock not looked at. */
    public static String wouldGain(MapGain gain) {
        return "A map would gain " + gain(gain) + " over this one number, if no speed knocks at its own best.";
    }

    private static String gain(MapGain gain) {
        return "about " + percent(gain.percent()) + " (90 % interval "
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
