package org.nextpull.window.past;

import java.util.List;
import java.util.Optional;
import org.nextpull.chart.SweepPlot;

/**
 * One session, in words and data.
 *
 * @param id its number
 * @param heading what it was
 * @param answer what the day says, the most important first
 * @param hand what was done by hand, a line each
 * @param advised what was advised at the time, a line each
 * @param sweep the response against the factor that was swept last
 */
record PastSession(
        long id,
        String heading,
        List<String> answer,
        List<String> hand,
        List<String> advised,
        Optional<SweepPlot> sweep) {
    PastSession {
        answer = List.copyOf(answer);
        hand = List.copyOf(hand);
        advised = List.copyOf(advised);
    }

    /** All sentences, a line each. */
    String text() {
        StringBuilder text = new StringBuilder();
        part(text, "", answer);
        part(text, "Done by hand", hand);
        part(text, "Advised at the time", advised);
        return text.toString().stripTrailing();
    }

    private static void part(StringBuilder text, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            text.append(title.isEmpty() ? "" : title + "\n");
            lines.forEach(line -> text.append(line).append('\n'));
            text.append('\n');
        }
    }
}
