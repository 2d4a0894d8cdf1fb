package org.nextpull.window.start;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.report.Shown;

/** How one source is doing, in a sentence. */
final class SourceWatch {
    private static final double SILENT_S = 2;
    private static final double RATE_OVER_S = 2;

    private final boolean isFolder;
    private final Deque<Beat> beats = new ArrayDeque<>();
    private RawLine raw = new RawLine();
    private boolean isConnected;
    private String file = "";
    private String coming = "";
    private double lastS = Double.NEGATIVE_INFINITY;

    private record Beat(double seconds, long lines) {}

    SourceWatch(boolean isFolder) {
        this.isFolder = isFolder;
    }

    void see(Arrival arrival) {
        if (arrival instanceof Arrival.Connected) {
            isConnected = true;
        } else if (arrival instanceof Arrival.Lost || arrival instanceof Arrival.Trouble) {
            isConnected = isFolder && isConnected;
        }
    }

    /** Takes bytes, or the beginning of a file. */
    void raw(Arrival arrival) {
        if (arrival instanceof Arrival.FromFile from) {
            coming = from.file();
            raw = from.atByte() == 0 ? new RawLine() : raw;
            beats.clear();
        } else if (arrival instanceof Chunk chunk) {
            file = coming;
            raw.take(chunk.toArray());
            lastS = chunk.at().seconds();
            beats.addLast(new Beat(lastS, raw.lines()));
            while (beats.size() > 2 && lastS - beats.getFirst().seconds() > RATE_OVER_S) {
                beats.removeFirst();
            }
        }
    }

    String rawText() {
        return raw.text();
    }

    /** A folder is alive once a file was read; a port while lines come. */
    boolean isAlive(ArrivalTime now) {
        return isFolder ? !file.isEmpty() : isConnected && now.seconds() - lastS < SILENT_S;
    }

    String state(ArrivalTime now, boolean isReadable) {
        if (isFolder) {
            return file.isEmpty()
                    ? "No log in this folder yet; it is watched."
                    : "Read last: " + file + ", " + Shown.count(raw.lines(), "line") + ".";
        }
        if (!isConnected) {
            return "Not connected. Retrying.";
        }
        double silence = now.seconds() - lastS;
        if (Double.isInfinite(silence)) {
            return "Connected; nothing arrived yet.";
        }
        if (silence >= SILENT_S) {
            return "Connected, but silent for " + Shown.fixed(silence, 0) + " s.";
        }
        return isReadable
                ? "Values arrive, " + Shown.count(Math.rint(linesASecond()), "line") + " a second."
                : "Data received, but not readable yet: check baud and line format.";
    }

    private double linesASecond() {
        Beat first = beats.getFirst();
        Beat last = beats.getLast();
        double seconds = last.seconds() - first.seconds();
        return seconds <= 0 ? 0 : (last.lines() - first.lines()) / seconds;
    }

    /** The last whole line that a source sent, as it came, with signs that nobody can read written out. Counts the lines. */
    static final class RawLine {
        private static final int LONGEST = 400;

        private final byte[] line = new byte[LONGEST];
        private int length;
        private String last = "";
        private long lines;

        void take(byte[] bytes) {
            for (byte one : bytes) {
                if (one == '\n' || one == '\r') {
                    end();
                } else if (length < LONGEST) {
                    line[length++] = one;
                }
            }
        }

        private void end() {
            if (length > 0) {
                last = readable(new String(line, 0, length, StandardCharsets.UTF_8))
                        + (length == LONGEST ? " ..." : "");
                lines++;
            }
            length = 0;
        }

        private static String readable(String text) {
            StringBuilder readable = new StringBuilder();
            text.codePoints().forEach(point -> {
                if (point == '\t') {
                    readable.append('\u2192');
                } else if (Character.isISOControl(point) || point == '\ufffd') {
                    readable.append(String.format(Locale.ROOT, "<%02x>", point));
                } else {
                    readable.appendCodePoint(point);
                }
            });
            return readable.toString();
        }

        /** What came last; while no line has ended yet, what has come of it. */
        String text() {
            return last.isEmpty() ? readable(new String(line, 0, length, StandardCharsets.UTF_8)) : last;
        }

        long lines() {
            return lines;
        }
    }
}
