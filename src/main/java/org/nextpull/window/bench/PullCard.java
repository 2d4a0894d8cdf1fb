package org.nextpull.window.bench;

import java.util.List;
import org.nextpull.window.look.Tone;

/**
 * One pull in the strip.
 *
 * @param number its number over the day
 * @param setting what it was run with, a line each
 * @param response its response with unit, or why it has none
 * @param change its response against the first pull that counts; empty where there is no such figure
 * @param tone how it stands
 * @param mark its standing and what was met in a word or two; empty for a clean pull that counts
 * @param remarks findings and notes on it, in sentences
 */
record PullCard(
        int number,
        List<String> setting,
        String response,
        String change,
        Tone tone,
        String mark,
        List<Remark> remarks) {
    public PullCard {
        setting = List.copyOf(setting);
        remarks = List.copyOf(remarks);
    }

    /** The card in one line, for whoever does not see it. */
    public String spoken() {
        StringBuilder line = new StringBuilder("Pull " + number);
        setting.forEach(part -> line.append(", ").append(part));
        line.append(", ").append(response);
        if (!change.isEmpty()) {
            line.append(", ").append(change);
        }
        if (!mark.isEmpty()) {
            line.append(", ").append(mark);
        }
        remarks.forEach(remark -> line.append(". ").append(remark.sentence()));
        return line.toString();
    }
}
