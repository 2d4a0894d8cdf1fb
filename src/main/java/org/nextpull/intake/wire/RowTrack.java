package org.nextpull.intake.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.nextpull.channel.Block;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Column;
import org.nextpull.channel.Hints;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.ColumnTable;
import org.nextpull.intake.Columns;
import org.nextpull.intake.NumberStyle;
import org.nextpull.intake.ProbeColumn;
import org.nextpull.intake.SampleRows;

/**
 * Lines of one make-up, turned into samples whose time is that of the session. The columns are understood from their headers and the
 * first lines, which are held back for it: {@link #PROBE_LINES}, or what comes in {@link #PROBE_S}.
 */
final class RowTrack {
    static final int PROBE_LINES = 30;
    static final double PROBE_S = 1;

    private static final double LEAST_STEP_S = 1e-6;
    private static final int BROKEN_UNTIL_LOST = 20;
    private static final int MOST_NAMES = 100;
    private static final int MOST_UNWANTED = 1000;
    /** Place of a value that no column is for. */
    private static final int UNWANTED = Integer.MAX_VALUE;

    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+");
    private static final Pattern DECIMAL_POINT = Pattern.compile("[+-]?\\d*\\.\\d+");

    private final String source;
    private final double delayS;
    private final ColumnReader reader;
    private final Hints hints;
    private final LoggerClock clock = new LoggerClock();
    private final List<Finding> findings = new ArrayList<>();
    private final List<String> headers = new ArrayList<>();
    private final List<String> units = new ArrayList<>();
    private final List<Held> probe = new ArrayList<>();
    private final Set<String> unwanted = new HashSet<>();
    private Optional<SampleRows> rows = Optional.empty();
    private List<Column> described = List.of();
    private int[] places = new int[0];
    private long[] lines = new long[64];
    private double[] arrivals = new double[64];
    private int waiting;
    private int brokenInARow;
    private double lastS = Double.NEGATIVE_INFINITY;

    RowTrack(String source, double delayS, ColumnReader reader, Hints hints) {
        this.source = source;
        this.delayS = delayS;
        this.reader = reader;
        this.hints = hints;
    }

    /** The headers of its columns; empty while none are known. */
    List<String> headers() {
        return Collections.unmodifiableList(headers);
    }

    /** How its columns were understood; empty before. */
    List<Column> described() {
        return described;
    }

    /** Sets new headers; what was understood of earlier ones is forgotten. */
    void headers(List<String> newHeaders) {
        headers.clear();
        headers.addAll(newHeaders);
        units.clear();
        probe.clear();
        rows = Optional.empty();
    }

    /** Forgets how the columns were understood, but not their headers: what came may have been noise. Take the rows first. */
    void learnAgain() {
        probe.clear();
        rows = Optional.empty();
        brokenInARow = 0;
    }

    /** Whether so many lines in a row could not be read that what was understood must be wrong. */
    boolean isLost() {
        return brokenInARow >= BROKEN_UNTIL_LOST;
    }

    /** Whether the next line is the first below the header. */
    boolean mayBeUnits() {
        return probe.isEmpty() && rows.isEmpty() && units.isEmpty();
    }

    /** Takes a row of units, if it is one. */
    boolean isUnits(List<String> fields) {
        long known = fields.stream().filter(reader::isUnit).count();
        boolean isRow = 2 * known >= fields.size()
                && fields.stream().allMatch(field -> reader.isUnit(field) || !field.matches(".*\\d.*"));
        if (isRow) {
            units.addAll(fields);
        }
        return isRow;
    }

    /** A line whose values stand in the order of the headers; false when it cannot be read. */
    boolean line(long number, double arrivedS, Fields values) {
        for (int field = places.length; field < values.count(); field++) {
            places = Arrays.copyOf(places, field + 1);
        }
        for (int field = 0; field < values.count(); field++) {
            places[field] = field;
        }
        return take(number, arrivedS, values);
    }

    /** A line whose values have names; false when it cannot be read. */
    boolean named(long number, double arrivedS, Fields values, List<String> names) {
        if (places.length < values.count()) {
            places = new int[values.count()];
        }
        boolean isNew = false;
        for (int field = 0; field < values.count(); field++) {
            int place = headers.indexOf(names.get(field));
            if (place < 0 && isWanted(names.get(field))) {
                place = headers.size();
                headers.add(names.get(field));
                isNew = true;
            }
            places[field] = place < 0 ? UNWANTED : place;
        }
        if (isNew && rows.isPresent()) {
            probe.add(held(number, arrivedS, values));
            understand();
            probe.remove(probe.size() - 1);
        }
        return take(number, arrivedS, values);
    }

    /**
     * Whether a name that was not seen before becomes a column: it means something, and a noisy wire has not filled the columns already.
     */
    private boolean isWanted(String name) {
        if (headers.size() >= MOST_NAMES || unwanted.contains(name)) {
            return false;
        }
        boolean wanted = reader.knownNames(List.of(name)) > 0 || hints.headers().containsValue(name);
        if (!wanted && unwanted.size() < MOST_UNWANTED) {
            unwanted.add(name);
        }
        return wanted;
    }

    private boolean take(long number, double arrivedS, Fields values) {
        if (rows.isEmpty()) {
            probe.add(held(number, arrivedS, values));
            if (probe.size() >= PROBE_LINES || arrivedS - probe.get(0).arrivedS() >= PROBE_S) {
                settle();
            }
            return true;
        }
        SampleRows into = rows.get();
        long broken = into.rowCount().bad();
        into.begin(number);
        for (int field = 0; field < values.count(); field++) {
            into.field(places[field], values.text(), values.start(field), values.length(field));
        }
        into.end();
        remember(number, arrivedS);
        boolean readable = into.rowCount().bad() == broken;
        brokenInARow = readable ? 0 : brokenInARow + 1;
        return readable;
    }

    /** Understands the columns from the lines that came so far, and reads those. */
    void settle() {
        if (rows.isPresent() || probe.isEmpty()) {
            return;
        }
        SampleRows into = understand();
        for (Held held : probe) {
            into.begin(held.number());
            for (int place = 0; place < held.cells().size(); place++) {
                char[] cell = held.cells().get(place).toCharArray();
                into.field(place, cell, 0, cell.length);
            }
            into.end();
            remember(held.number(), held.arrivedS());
        }
    }

    private SampleRows understand() {
        NumberStyle style = style();
        List<ProbeColumn> probes = IntStream.range(0, headers.size())
                .mapToObj(place -> ProbeColumn.of(
                        probe.stream().map(held -> held.cell(place)).toList(), style))
                .toList();
        Columns columns = reader.read(new ColumnTable(source, 1, headers, units, probes), hints);
        described = columns.described();
        findings.addAll(columns.findings());
        if (columns.mapped().isEmpty()) {
            findings.add(Finding.warning(
                    FindingCode.WIRE_WITHOUT_CHANNELS,
                    Place.inFile(source),
                    Detail.of("columns", String.join(", ", headers))));
        }
        SampleRows into = new SampleRows(source, columns, style, OptionalDouble.empty());
        rows = Optional.of(into);
        return into;
    }

    private NumberStyle style() {
        boolean comma = false;
        for (Held held : probe) {
            for (String cell : held.cells()) {
                comma |= DECIMAL_COMMA.matcher(cell).matches();
                if (DECIMAL_POINT.matcher(cell).matches()) {
                    return NumberStyle.point();
                }
            }
        }
        return comma ? NumberStyle.comma() : NumberStyle.point();
    }

    /** The rows since the last call, with the time at which they were measured; none while the columns are not understood. */
    Optional<Samples> take() {
        Optional<Block> block = rows.flatMap(SampleRows::take);
        int count = waiting;
        waiting = 0;
        return block.map(found -> timed(found.samples(), count));
    }

    private Samples timed(Samples written, int count) {
        Channel time = Channel.of(Role.TIME);
        List<Channel> channels = new ArrayList<>(written.channels());
        channels.remove(time);
        channels.add(0, time);
        Samples.Builder result = Samples.builder(channels);
        int at = 0;
        for (int row = 0; row < written.rows(); row++) {
            while (at < count - 1 && lines[at] < written.line(row)) {
                at++;
            }
            result.appendRow(written, row);
            result.set(0, measured(written.find(time, row), arrivals[at]));
        }
        return result.build();
    }

    private double measured(OptionalDouble writtenS, double arrivedS) {
        double session = writtenS.isPresent() ? clock.session(writtenS.getAsDouble(), arrivedS) : arrivedS;
        lastS = Math.max(session - delayS, lastS + LEAST_STEP_S);
        return lastS;
    }

    /** What was found since this was asked last. */
    List<Finding> takeFindings() {
        List<Finding> result = List.copyOf(findings);
        findings.clear();
        return result;
    }

    private void remember(long number, double arrivedS) {
        if (waiting == lines.length) {
            lines = Arrays.copyOf(lines, 2 * waiting);
            arrivals = Arrays.copyOf(arrivals, 2 * waiting);
        }
        lines[waiting] = number;
        arrivals[waiting++] = arrivedS;
    }

    private Held held(long number, double arrivedS, Fields values) {
        String[] cells = new String[headers.size()];
        Arrays.fill(cells, "");
        for (int field = 0; field < values.count(); field++) {
            if (places[field] < cells.length) {
                cells[places[field]] = values.field(field);
            }
        }
        return new Held(number, arrivedS, List.of(cells));
    }

    /** Whether so many rows wait that they must be taken before the next line. */
    boolean isFull() {
        return rows.map(SampleRows::isFull).orElse(false);
    }

    private record Held(long number, double arrivedS, List<String> cells) {
        String cell(int place) {
            return place < cells.size() ? cells.get(place) : "";
        }
    }
}
