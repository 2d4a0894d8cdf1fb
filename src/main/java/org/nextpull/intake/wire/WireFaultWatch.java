package org.nextpull.intake.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/**
 * Recognises what is wrong with a wire from what arrives: silence, no text, no line ends, wrong checksums, lines that cannot be read.
 * Says each once, and that all is well again.
 */
final class WireFaultWatch {
    static final double SILENT_AFTER_S = 2;
    static final int NO_END_BYTES = 2048;

    private static final double NO_END_S = 3;
    private static final int NO_END_LEAST_BYTES = 32;
    private static final double NOT_TEXT_SHARE = 0.3;
    private static final int TEXT_LEAST_BYTES = 64;
    private static final int TEXT_WINDOW_BYTES = 512;
    private static final int LAST_LINES = 20;
    private static final int WRONG_CHECKSUMS = 3;
    private static final int BROKEN_LINES = 5;
    private static final int GOOD_LINES_TO_BE_WELL = 5;
    private static final double NS_A_SECOND = 1e9;
    private static final int SHOWN_CHARACTERS = 40;

    private final String source;
    private final String settings;
    private final List<Finding> news = new ArrayList<>();
    private final LineParser.Result[] last = new LineParser.Result[LAST_LINES];
    private Optional<FindingCode> said = Optional.empty();
    private String brokenLine = "";
    private boolean connected;
    private long lastByteNs;
    private long sinceEnd;
    private long sinceEndFromNs;
    private double bytes;
    private double noText;
    private int lines;
    private int goodInARow;

    WireFaultWatch(String source, String settings) {
        this.source = source;
        this.settings = settings;
    }

    void connected(ArrivalTime at) {
        connected = true;
        lastByteNs = at.sessionNs();
        sinceEnd = 0;
        bytes = 0;
        noText = 0;
        lines = 0;
        goodInARow = 0;
    }

    /** The source went away, which is said elsewhere. */
    void lost() {
        connected = false;
        said = Optional.empty();
    }

    void bytes(Chunk chunk) {
        byte[] raw = chunk.raw();
        lastByteNs = chunk.at().sessionNs();
        if (sinceEnd == 0) {
            sinceEndFromNs = lastByteNs;
        }
        sinceEnd += raw.length;
        for (byte b : raw) {
            bytes++;
            noText += isText(b) ? 0 : 1;
            if (bytes >= TEXT_WINDOW_BYTES) {
                bytes /= 2;
                noText /= 2;
            }
        }
    }

    /** A byte as loggers send them: printing characters, line ends and tabs; others are rare even where units are written in UTF-8. */
    private static boolean isText(byte b) {
        return (b >= ' ' && b < 0x7f) || b == '\n' || b == '\r' || b == '\t';
    }

    void line(LineParser.Result result, LineFields values, int bytesAfter) {
        sinceEnd = bytesAfter;
        sinceEndFromNs = lastByteNs;
        if (result == LineParser.Result.PASSED_OVER) {
            return;
        }
        boolean good = result == LineParser.Result.VALUES;
        goodInARow = good ? goodInARow + 1 : 0;
        last[lines++ % LAST_LINES] = result;
        if (result == LineParser.Result.BROKEN) {
            brokenLine = values.readable(SHOWN_CHARACTERS);
        }
    }

    /** Judges what has come until now. */
    void judge(ArrivalTime now) {
        Optional<FindingCode> trouble = trouble(now);
        if (trouble.isPresent() && !trouble.equals(said)) {
            said = trouble;
            news.add(finding(trouble.get(), now));
        } else if (trouble.isEmpty() && said.isPresent() && goodInARow >= GOOD_LINES_TO_BE_WELL) {
            said = Optional.empty();
            news.add(Finding.note(FindingCode.WIRE_WELL_AGAIN, place()));
        }
    }

    List<Finding> takeNews() {
        List<Finding> result = List.copyOf(news);
        news.clear();
        return result;
    }

    private Optional<FindingCode> trouble(ArrivalTime now) {
        if (!connected) {
            return Optional.empty();
        }
        if (silentS(now) >= SILENT_AFTER_S) {
            return Optional.of(FindingCode.WIRE_SILENT);
        }
        if (bytes >= TEXT_LEAST_BYTES && noText / bytes >= NOT_TEXT_SHARE) {
            return Optional.of(FindingCode.WIRE_NOT_TEXT);
        }
        double unfinishedS = (now.sessionNs() - sinceEndFromNs) / NS_A_SECOND;
        if (sinceEnd >= NO_END_BYTES || (sinceEnd >= NO_END_LEAST_BYTES && unfinishedS >= NO_END_S)) {
            return Optional.of(FindingCode.WIRE_NO_LINE_ENDS);
        }
        if (count(LineParser.Result.WRONG_CHECKSUM) >= WRONG_CHECKSUMS) {
            return Optional.of(FindingCode.WIRE_CHECKSUMS_WRONG);
        }
        return count(LineParser.Result.BROKEN) >= BROKEN_LINES
                ? Optional.of(FindingCode.WIRE_LINES_BROKEN)
                : Optional.empty();
    }

    private Finding finding(FindingCode code, ArrivalTime now) {
        Detail set = Detail.of("settings", settings);
        return switch (code) {
            case WIRE_SILENT -> Finding.warning(code, place(), Detail.of("seconds", silentS(now)));
            case WIRE_NOT_TEXT -> Finding.warning(code, place(), Detail.of("percent", 100 * noText / bytes), set);
            case WIRE_NO_LINE_ENDS -> Finding.warning(code, place(), Detail.of("bytes", (double) sinceEnd), set);
            case WIRE_CHECKSUMS_WRONG ->
                Finding.warning(
                        code,
                        place(),
                        Detail.of("count", count(LineParser.Result.WRONG_CHECKSUM)),
                        Detail.of("lines", Math.min(lines, LAST_LINES)));
            default ->
                Finding.warning(
                        code,
                        place(),
                        Detail.of("count", count(LineParser.Result.BROKEN)),
                        Detail.of("lines", Math.min(lines, LAST_LINES)),
                        Detail.of("line", brokenLine));
        };
    }

    private double silentS(ArrivalTime now) {
        return (now.sessionNs() - lastByteNs) / NS_A_SECOND;
    }

    private int count(LineParser.Result wanted) {
        int count = 0;
        for (int index = 0; index < Math.min(lines, LAST_LINES); index++) {
            count += last[index] == wanted ? 1 : 0;
        }
        return count;
    }

    private Place place() {
        return Place.inFile(source);
    }
}
