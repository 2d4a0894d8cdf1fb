package org.nextpull.simulator;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The truth behind a day on the model engine, as TOML: what is best, how the day scattered, and what its end left. */
final class DayTruth {
    private DayTruth() {}

    static String text(RigEngine rig, Debrief debrief, Map<String, Debrief> candidates) {
        List<String> remarks = List.of(
                LogText.INVENTED,
                "what is best in the air of that morning with warm oil, torque as in air of 99 kPa dry and 25 degC, [timing] at lambda "
                        + rig.startLambda().value());
        return TruthText.of(remarks, rig.seed(), rig.band(), rig.truth(), more(rig, debrief, candidates));
    }

    private static List<String> more(RigEngine rig, Debrief debrief, Map<String, Debrief> candidates) {
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
}
