package org.nextpull.intake.wire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.ColumnReader;
import org.nextpull.plan.WireFacts;

/** The lines of one source, from bytes to samples. */
final class SourceLines implements LineFramer.Lines {
    private static final int LINES_WITHOUT_HEADER = 20;
    private static final double NS_A_SECOND = 1e9;
    private static final String NO_COLUMN = "-";

    private final String source;
    private final WireSource.LineSettings settings;
    private final ColumnReader reader;
    private final LogHints hints;
    private final LineFramer framer = new LineFramer();
    private final LineParser parser;
    private final WireFaultWatch watch;
    private final LineFields values = new LineFields();
    private final LineParser.Names names = new LineParser.Names();
    private final Map<String, LineDecoder> tracks = new LinkedHashMap<>();
    private final List<RowMerger.TrackRows> ready = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private ArrivalTime at = new ArrivalTime(0, 0);
    private long number;
    private boolean maybeHalf;
    private int withoutHeader;
    private int differing;
    /** Of one header it is said once: noise has lines of the right length now and then. */
    private boolean isDifferenceSaid;

    SourceLines(
            String source, WireSource.LineSettings settings, String settingsText, ColumnReader reader, LogHints hints) {
        this.source = source;
        this.settings = settings;
        this.reader = reader;
        this.hints = hints;
        this.watch = new WireFaultWatch(source, settingsText);
        this.parser = switch (settings.kind()) {
            case SEPARATED -> new SeparatedLines();
            case PAIRS -> new PairLines();
            case SENTENCE -> new SentenceFrame.Lines();
        };
        declare();
    }

    private void declare() {
        String address = "";
        List<String> columns = new ArrayList<>();
        for (String column : settings.columns()) {
            if (settings.kind() == WireFacts.Lines.SENTENCE && column.startsWith("$")) {
                declare(address, columns);
                address = column.substring(1);
                columns.clear();
            } else {
                columns.add(column.isBlank() ? NO_COLUMN : column);
            }
        }
        declare(address, columns);
    }

    private void declare(String address, List<String> columns) {
        if (!columns.isEmpty() && settings.kind() != WireFacts.Lines.PAIRS) {
            track(address).headers(columns);
        }
    }

    private LineDecoder track(String address) {
        return tracks.computeIfAbsent(address, key -> new LineDecoder(source, settings.delayS(), reader, hints));
    }

    /** How many make-ups of lines are known to come. */
    int declaredTracks() {
        return Math.max(1, tracks.size());
    }

    /** The source can be read from here on; half a line may come first. */
    void connected(ArrivalTime now) {
        framer.restart();
        learnAgain();
        maybeHalf = settings.kind() != WireFacts.Lines.SENTENCE;
        watch.connected(now);
    }

    private void learnAgain() {
        tracks.values().forEach(LineDecoder::settle);
        collect();
        tracks.values().forEach(LineDecoder::learnAgain);
    }

    /** A file begins, so the first line is a whole one. */
    void begins(ArrivalTime now) {
        connected(now);
        maybeHalf = false;
    }

    void lost() {
        framer.restart();
        watch.lost();
    }

    void bytes(Chunk chunk) {
        at = chunk.at();
        watch.bytes(chunk);
        framer.feed(chunk, this);
        watch.judge(at);
        collect();
    }

    void judge(ArrivalTime now) {
        watch.judge(now);
    }

    /** Nothing more will come: what is held back is read. */
    void finish() {
        tracks.values().forEach(LineDecoder::settle);
        collect();
    }

    List<RowMerger.TrackRows> takeRows() {
        List<RowMerger.TrackRows> result = List.copyOf(ready);
        ready.clear();
        return result;
    }

    List<Finding> takeFindings() {
        List<Finding> result = new ArrayList<>(findings);
        findings.clear();
        tracks.values().forEach(track -> result.addAll(track.takeFindings()));
        result.addAll(watch.takeNews());
        return result;
    }

    List<SourceDescription.Column> described() {
        return tracks.values().stream()
                .flatMap(track -> track.described().stream())
                .toList();
    }

    @Override
    public void line(byte[] buffer, int start, int end, int bytesAfter) {
        number++;
        LineParser.Result result = parser.parse(buffer, start, end, values, names);
        double arrivedS = Math.max(0, at.sessionNs() - bytesAfter * settings.byteNs()) / NS_A_SECOND;
        boolean half = maybeHalf;
        maybeHalf = false;
        if (result == LineParser.Result.VALUES) {
            result = switch (settings.kind()) {
                case SEPARATED -> separated(arrivedS, half);
                case PAIRS -> half ? LineParser.Result.PASSED_OVER : pairs(arrivedS);
                case SENTENCE -> sentence(arrivedS);
            };
        } else if (half) {
            result = LineParser.Result.PASSED_OVER;
        }
        watch.line(result, values, bytesAfter);
    }

    @Override
    public void overlong() {
        maybeHalf = false;
    }

    private LineParser.Result separated(double arrivedS, boolean half) {
        LineDecoder track = track("");
        if (settings.columns().isEmpty()) {
            List<String> header = headerLine();
            if (!header.isEmpty()) {
                if (!header.equals(track.headers())) {
                    collect();
                    track.headers(header);
                    isDifferenceSaid = false;
                }
                return LineParser.Result.PASSED_OVER;
            }
        }
        if (half) {
            return LineParser.Result.PASSED_OVER;
        }
        if (track.headers().isEmpty()) {
            withoutHeader++;
            if (withoutHeader == LINES_WITHOUT_HEADER) {
                findings.add(Finding.warning(FindingCode.WIRE_WITHOUT_HEADER, Place.inFile(source)));
            }
            return LineParser.Result.PASSED_OVER;
        }
        int columns = track.headers().size();
        boolean endsWithSeparator = values.count() == columns + 1 && values.length(columns) == 0;
        if (values.count() != columns && !endsWithSeparator) {
            return differs(columns);
        }
        differing = 0;
        if (track.isLearning() && !values.isPrinting()) {
            // noise must not decide what the columns are
            return LineParser.Result.BROKEN;
        }
        if (track.mayBeUnits() && track.isUnits(values.all())) {
            return LineParser.Result.PASSED_OVER;
        }
        return taken(track.line(number, arrivedS, values), track);
    }

    private LineParser.Result differs(int columns) {
        differing++;
        if (differing >= LINES_WITHOUT_HEADER && values.count() > 1 && !isDifferenceSaid) {
            isDifferenceSaid = true;
            findings.add(Finding.warning(
                    FindingCode.WIRE_FIELDS_DIFFER,
                    Place.inFile(source),
                    Detail.of("fields", values.count()),
                    Detail.of("columns", columns)));
        }
        return LineParser.Result.BROKEN;
    }

    /** The names in a line that is a header: no numbers, and at least one name of a channel; empty for any other line. */
    private List<String> headerLine() {
        if (!values.isPrinting()) {
            return List.of();
        }
        for (int field = 0; field < values.count(); field++) {
            if (values.length(field) > 0 && isDigit(values.charAt(values.start(field)))) {
                return List.of();
            }
        }
        char first = values.count() == 0 || values.length(0) == 0 ? '0' : values.charAt(values.start(0));
        if (first == '-' || first == '+' || first == '.') {
            return List.of();
        }
        List<String> texts = values.all();
        return reader.knownNames(texts) > 0 ? texts : List.of();
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private LineParser.Result pairs(double arrivedS) {
        LineDecoder track = track("");
        return taken(track.named(number, arrivedS, values, names.all()), track);
    }

    private LineParser.Result sentence(double arrivedS) {
        Optional<LineDecoder> track =
                Optional.ofNullable(tracks.get(names.address())).or(() -> Optional.ofNullable(tracks.get("")));
        if (track.isEmpty()) {
            return LineParser.Result.PASSED_OVER;
        }
        if (values.count() < track.get().headers().size()) {
            return LineParser.Result.BROKEN;
        }
        return taken(track.get().line(number, arrivedS, values), track.get());
    }

    private LineParser.Result taken(boolean readable, LineDecoder track) {
        if (track.isLost()) {
            learnAgain();
        } else if (track.isFull()) {
            collect();
        }
        return readable ? LineParser.Result.VALUES : LineParser.Result.BROKEN;
    }

    private void collect() {
        tracks.forEach((address, track) -> track.take()
                .ifPresent(samples -> ready.add(
                        new RowMerger.TrackRows(address.isEmpty() ? source : source + " $" + address, samples))));
    }
}
