package org.nextpull.simulator;

import java.util.List;
import java.util.Locale;
import org.nextpull.engine.bench.Truth;
import org.nextpull.unit.Span;

/** Writes the truth behind a log as TOML: what a sweep of it should find. */
final class TruthText {
    private TruthText() {}

    /**
     * The text.
     *
     * @param remarks lines before it, written behind a hash sign
     * @param seed seed of the log
     * @param band band of the answer in rpm
     * @param truth what is true
     * @param more further tables, as they are to stand
     */
    public static String of(List<String> remarks, long seed, Span band, Truth truth, List<String> more) {
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
        for (Truth.Row row : truth.rows()) {
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
