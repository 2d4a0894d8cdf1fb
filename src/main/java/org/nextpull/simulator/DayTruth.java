package org.nextpull.simulator;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.nextpull.engine.bench.TruthFinder;
import org.nextpull.unit.Span;

/** The truth behind a day on the model engine, as TOML: what is best, how the day scattered, and what its end left. */
final class DayTruth {
    private DayTruth() {}

    static String text(SimulatedEngine rig, Debrief debrief, Map<String, Debrief> candidates) {
        List<String> remarks = List.of(
                LogText.INVENTED,
                "what is best in the air of that morning with warm oil, torque as in air of 99 kPa dry and 25 degC, [timing] at lambda "
                        + rig.startLambda().value());
        return sheet(remarks, rig.seed(), rig.band(), rig.truth(), more(rig, debrief, candidates));
    }

    private static List<String> more(SimulatedEngine rig, Debrief debrief, Map<String, Debrief> candidates) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("[day]");
        lines.add("pulls = " + debrief.pulls());
        lines.add("knocking_pulls = " + debrief.knockingPulls());
        lines.add(number("scatter_percent", debrief.scatterPercent(), 3));
        lines.add(number(
                "drift_percent_per_pull", 100 * rig.day().scatter().drift().perPull(), 4));
        if (rig.setsOffset()) {
            lines.add(number("present_map_deg", rig.presentMapDeg(), 1));
        }
        debrief.left().ifPresent(left -> {
            lines.add("");
            lines.add("[left]");
            lines.add(number("advance_deg", left.advanceDeg(), 1));
            lines.add(number("lambda", left.lambda(), 3));
            debrief.torqueLeftPercent().ifPresent(percent -> lines.add(number("torque_left_percent", percent, 3)));
        });
        double reference = candidates.values().stream()
                .findFirst()
                .map(first -> first.truth().torqueNm())
                .orElse(1.0);
        candidates.forEach((label, truth) -> {
            lines.add("");
            lines.add("[[candidate]]");
            lines.add("label = \"" + label + "\"");
            lines.add(number("peak_deg", truth.truth().timing().peakDeg(), 2));
            lines.add(number("good_deg", truth.truth().timing().goodDeg(), 2));
            lines.add(number("best_lambda", truth.truth().lambda(), 3));
            lines.add(number("torque_nm", truth.truth().torqueNm(), 2));
            lines.add(number("gain_percent", 100 * (truth.truth().torqueNm() / reference - 1), 3));
            truth.torqueLeftPercent().ifPresent(percent -> lines.add(number("torque_left_percent", percent, 3)));
        });
        return lines;
    }

    private static String number(String key, double value, int decimals) {
        return key + " = " + String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /**
     * The text.
     *
     * @param remarks lines before it, written behind a hash sign
     * @param seed seed of the log
     * @param band band of the answer in rpm
     * @param truth what is true
     * @param more further tables, as they are to stand
     */
    public static String sheet(List<String> remarks, long seed, Span band, TruthFinder.Truth truth, List<String> more) {
        StringBuilder text = new StringBuilder();
        remarks.forEach(line -> text.append("# ").append(line).append('\n'));
        text.append("seed = ").append(seed).append('\n');
        text.append("\n[band]\n");
        line(text, "from_rpm", band.low(), 0);
        line(text, "to_rpm", band.high(), 0);
        text.append("\n[timing]\n");
        line(text, "peak_deg", truth.peak().deg(), 2);
        line(text, "best_deg", truth.near().deg(), 2);
        truth.onset().ifPresent(deg -> line(text, "knock_onset_deg", deg, 2));
        line(text, "torque_nm", truth.torque().newtonMetres(), 2);
        text.append("\n[mixture]\n");
        line(text, "peak_lambda", truth.mixture().value(), 4);
        for (TruthFinder.Truth.Row row : truth.rows()) {
            text.append("\n[[row]]\n");
            line(text, "rpm", row.rpm(), 0);
            line(text, "peak_deg", row.peak().deg(), 2);
            line(text, "torque_nm", row.torque().newtonMetres(), 2);
        }
        more.forEach(line -> text.append(line).append('\n'));
        return text.toString();
    }

    private static void line(StringBuilder text, String key, double value, int decimals) {
        text.append(key)
                .append(" = ")
                .append(String.format(Locale.ROOT, "%." + decimals + "f", value))
                .append('\n');
    }
}
