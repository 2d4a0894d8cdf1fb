package org.nextpull.intake.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SourceDescription;
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
 * first lines, which are held back for it.
 */
final class LineDecoder {
    private static final int BROKEN_UNTIL_LOST = 20;
    private static final int MOST_NAMES = 100;
    private static final int MOST_UNWANTED = 1000;
    /** Place of a value that no column is for. */
    private static final int UNWANTED = Integer.MAX_VALUE;

    private final String source;
    private final ColumnReader reader;
    private final LogHints hints;
    private final LineTimes times;
    private final List<Finding> findings = new ArrayList<>();
    private final List<String> headers = new ArrayList<>();
    private final List<String> units = new ArrayList<>();
    private final HeldLines probe = new HeldLines();
    private final Set<String> unwanted = new HashSet<>();
    private Optional<SampleRows> rows = Optional.empty();
    private List<SourceDescription.Column> described = List.of();
    private MissedColumns missed = MissedColumns.none();
    private int[] places = new int[0];
    private int brokenInARow;

    LineDecoder(String source, double delayS, ColumnReader reader, LogHints hints) {
        this.source = source;
        this.reader = reader;
        this.hints = hints;
        this.times = new LineTimes(delayS);
    }

    /** The headers of its columns; empty while none are known. */
    List<String> headers() {
        return Collections.unmodifiableList(headers);
    }

    /** How its columns were understood; empty before. */
    List<SourceDescription.Column> described() {
        return described;
    }

    /** Sets new headers; what was understood of earlier ones is forgotten. */
    void headers(List<String> newHeaders) {
        headers.clear();
        headers.addAll(newHeaders);
        units.clear();
        learnAgain();
    }

    /** Forgets how the columns were understood, but not their headers: what came may have been noise. Take the rows first. */
    void learnAgain() {
        probe.clear();
        rows = Optional.empty();
        missed = MissedColumns.none();
        brokenInARow = 0;
    }

    /** Whether so many lines in a row did not fit what was understood that it must be wrong. */
    boolean isLost() {
        return brokenInARow >= BROKEN_UNTIL_LOST || missed.isFound();
    }

    /** Whether the columns are still to be understood, so that what comes now decides how the rest is read. */
    boolean isLearning() {
        return rows.isEmpty();
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
    boolean line(long number, double arrivedS, LineFields values) {
        for (int field = places.length; field < values.count(); field++) {
            places = Arrays.copyOf(places, field + 1);
        }
        for (int field = 0; field < values.count(); field++) {
            places[field] = field;
        }
        return take(number, arrivedS, values);
    }

    /** A line whose values have names; false when it cannot be read. */
    boolean named(long number, double arrivedS, LineFields values, List<String> names) {
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
            probe.add(number, arrivedS, values, places, headers.size());
            understand();
            probe.removeLast();
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
        boolean wanted = means(name);
        if (!wanted && unwanted.size() < MOST_UNWANTED) {
            unwanted.add(name);
        }
        return wanted;
    }

    private boolean means(String header) {
        return reader.knownNames(List.of(header)) > 0 || hints.headers().containsValue(header);
    }

    private boolean take(long number, double arrivedS, LineFields values) {
        if (rows.isEmpty()) {
            probe.add(number, arrivedS, values, places, headers.size());
            if (probe.isEnough(arrivedS)) {
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
        times.remember(number, arrivedS);
        boolean readable = into.rowCount().bad() == broken;
        brokenInARow = readable ? 0 : brokenInARow + 1;
        missed.line(values, places);
        return readable;
    }

    /** Understands the columns from the lines that came so far, and reads those. */
    void settle() {
        if (rows.isPresent() || probe.isEmpty()) {
            return;
        }
        SampleRows into = understand();
        for (HeldLines.Held held : probe.lines()) {
            into.begin(held.number());
            for (int place = 0; place < held.cells().size(); place++) {
                char[] cell = held.cells().get(place).toCharArray();
                into.field(place, cell, 0, cell.length);
            }
            into.end();
            times.remember(held.number(), held.arrivedS());
        }
    }

    private SampleRows understand() {
        NumberStyle style = probe.style();
        List<ProbeColumn> probes = probe.probes(headers.size(), style);
        Columns columns = reader.read(new ColumnTable(source, 1, headers, units, probes), hints);
        described = columns.described();
        missed = MissedColumns.of(this::means, described, probes, style);
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

    /** The rows since the last call, with the time at which they were measured; none while the columns are not understood. */
    Optional<Samples> take() {
        Optional<Samples> taken = rows.flatMap(SampleRows::take).map(block -> times.timed(block.samples()));
        times.forget();
        return taken;
    }

    /** What was found since this was asked last. */
    List<Finding> takeFindings() {
        List<Finding> result = List.copyOf(findings);
        findings.clear();
        return result;
    }

    /** Whether so many rows wait that they must be taken before the next line. */
    boolean isFull() {
        return rows.map(SampleRows::isFull).orElse(false);
    }
}
