package org.nextpull.live;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.nextpull.Await;
import org.nextpull.intake.serial.Port;

/** The lines of a day on the model engine, and how a logger sends them: at the pace of the time in them, or so many times faster. */
final class ModelDay {
    private static final double NS = 1e9;

    private final List<String> lines = new ArrayList<>();
    private final List<Double> times = new ArrayList<>();
    private String header = "";

    /** Takes the text of a log whose first column is the time in s. */
    ModelDay(String log) {
        for (String line : log.lines().toList()) {
            if (line.startsWith("#") || line.isBlank()) {
                continue;
            }
            if (header.isEmpty()) {
                header = line;
            } else if (Character.isDigit(line.charAt(0))) {
                lines.add(line);
                times.add(Double.valueOf(line.substring(0, line.indexOf(','))));
            }
        }
    }

    String header() {
        return header;
    }

    List<String> lines() {
        return List.copyOf(lines);
    }

    /** Sends the lines from one to another. */
    void send(Port port, int from, int to, int faster) throws IOException {
        port.write((header + "\n").getBytes(StandardCharsets.US_ASCII));
        long start = System.nanoTime();
        double jumped = 0;
        for (int line = from; line < to; line++) {
            double step = line == from ? 0 : times.get(line) - times.get(line - 1);
            jumped += Math.max(0, step - 1);
            double sinceS = times.get(line) - times.get(from) - jumped;
            long due = start + (long) (sinceS / faster * NS);
            Await.moment(due);
            // its own time is left out: between two pulls of a log may lie minutes, which nobody waits for here
            String text = lines.get(line);
            port.write((text.substring(text.indexOf(',') + 1) + "\n").getBytes(StandardCharsets.US_ASCII));
        }
    }

    /** The same header without its time. */
    ModelDay withoutTime() {
        ModelDay day = new ModelDay("");
        day.lines.addAll(lines);
        day.times.addAll(times);
        day.header = header.substring(header.indexOf(',') + 1);
        return day;
    }
}
