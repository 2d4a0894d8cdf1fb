package org.nextpull.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/**
 * Makes samples in the project's units of rows of fields, from whatever source. A row with a cell that is neither a number nor absent, or
 * whose time cannot be used, is broken: it is left out, counted and remembered by its line. Not for use by several threads.
 *
 * <p>Give whole pieces to {@link #add}, or call {@link #begin}, then {@link #field} for each field, then {@link #end}; take the samples with
 * {@link #take} when {@link #isFull} or at the end.
 */
public final class SampleRows {
    private static final double STANDARD_AIR_PA = 101_325;

    private final String name;
    private final Columns columns;
    private final NumberStyle style;
    private final WrittenRows written;
    private final List<Channel> channels;
    private final List<ColumnCells> words = new ArrayList<>();
    private final List<ColumnCells> times = new ArrayList<>();
    /** Whether some column is a pressure above that of the air; the barometers are then read first. */
    private final boolean isGauge;

    private final List<ColumnCells> barometers = new ArrayList<>();
    private final List<ColumnCells> cells = new ArrayList<>();
    private final Optional<TimeLine> timeLine;
    private final OptionalDouble rate;
    private final LineNumbers broken = new LineNumbers();
    private final SamplesBuilder builder;
    private Optional<String> label = Optional.empty();
    private Optional<String> fuel = Optional.empty();
    private double airPressure = STANDARD_AIR_PA;
    /** Times of the rows that are added. */
    private double[] seconds = {};

    private long rowsSeen;
    private long good;
    private long groupedCells;

    /**
     * Prepares to read rows.
     *
     * @param name name of the source, for findings
     * @param columns its columns
     * @param style how it writes numbers
     * @param sampleHz rate of its rows, used where it has no time
     */
    public SampleRows(String name, Columns columns, NumberStyle style, OptionalDouble sampleHz) {
        this.name = name;
        this.columns = columns;
        this.style = style;
        this.written = piece();
        boolean hasTime = columns.has(Role.TIME);
        this.rate = hasTime ? OptionalDouble.empty() : sampleHz;
        this.channels = new ArrayList<>(columns.numericChannels());
        if (rate.isPresent()) {
            channels.add(Channel.of(Role.TIME));
        }
        this.isGauge = columns.mapped().stream().anyMatch(column -> column.reading() == MappedColumn.Reading.ABOVE_AIR);
        sort(columns.mapped());
        this.timeLine = hasTime
                ? Optional.of(new TimeLine(columns.mapped().stream()
                        .anyMatch(column -> column.channel().role() == Role.TIME
                                && column.unit().isEmpty())))
                : Optional.empty();
        this.builder = Samples.builder(channels);
    }

    private void sort(List<MappedColumn> mapped) {
        for (int place = 0; place < mapped.size(); place++) {
            MappedColumn column = mapped.get(place);
            Role role = column.channel().role();
            List<ColumnCells> kind = switch (role) {
                case TIME -> times;
                case BAROMETER -> isGauge ? barometers : cells;
                default -> role.isText() ? words : cells;
            };
            kind.add(new ColumnCells(column, place, channels.indexOf(column.channel())));
        }
    }

    /** Rows to read a piece of the source into, at the same time as other pieces. */
    public WrittenRows piece() {
        return new WrittenRows(columns.mapped(), style);
    }

    /** Starts a row at a line of the source. */
    public void begin(long line) {
        written.begin(line);
    }

    /** Takes the field of a column, from 0. */
    public void field(int index, char[] buffer, int offset, int length) {
        written.field(index, buffer, offset, length);
    }

    /** Marks the row as broken, whatever its fields hold. */
    public void reject() {
        written.reject();
    }

    /** Ends the row. A row without any number is passed over. */
    public void end() {
        written.end();
        written.settle();
        add(written, 0, written.rows());
        ended(written);
        written.clear();
    }

    /**
     * Takes rows of a piece, in the order of the source.
     *
     * @param first the first of them, from 0
     * @param end behind the last
     */
    public void add(WrittenRows piece, int first, int end) {
        if (seconds.length < end - first) {
            seconds = new double[end - first];
        }
        int begun = first;
        for (int row = first; row < end; row++) {
            int follow = following(piece, row, end, row - begun);
            rowsSeen += follow;
            row += follow;
            if (row == end) {
                break;
            }
            rowsSeen++;
            if (piece.isBroken(row) || !timeIsUsable(piece, row)) {
                broken.add(piece.lines()[row]);
                keep(piece, begun, row);
                begun = row + 1;
            } else {
                seconds[row - begun] = timeLine.isPresent()
                        ? timeLine.get().seconds()
                        : rate.isPresent() ? (rowsSeen - 1) / rate.getAsDouble() : 0;
            }
        }
        keep(piece, begun, end);
    }

    /** How many rows from there on have nothing about their time to be looked at. */
    private int following(WrittenRows piece, int row, int end, int at) {
        if (timeLine.isEmpty()) {
            return 0;
        }
        WrittenColumn time = piece.column(times.get(0).place());
        int whole = Math.min(time.nextGap(row, end), piece.nextBroken(row, end));
        return timeLine.get().follow(time.written(), row, whole, seconds, at);
    }

    private boolean timeIsUsable(WrittenRows piece, int row) {
        if (timeLine.isEmpty()) {
            return true;
        }
        ColumnCells time = times.get(0);
        return time.see(piece, row) && timeLine.get().accept(time.value(), piece.lines()[row]);
    }

    /** Keeps rows one after the other, the first of them at the first of the times. */
    private void keep(WrittenRows piece, int first, int end) {
        if (first == end) {
            return;
        }
        good += end - first;
        int at = builder.rows();
        if (words.isEmpty()) {
            builder.rows(piece.lines(), first, end);
        }
        for (int row = first; row < end && !words.isEmpty(); row++) {
            for (ColumnCells word : words) {
                remember(piece, row, word);
            }
            builder.row(piece.lines()[row], label, fuel);
        }
        if (rate.isPresent()) {
            builder.set(at, channels.size() - 1, seconds, 0, end - first);
        } else if (timeLine.isPresent()) {
            builder.set(at, times.get(0).channelIndex(), seconds, 0, end - first);
        }
        double[] air = isGauge ? airPressures(piece, first, end, at) : new double[0];
        for (ColumnCells column : cells) {
            column.put(piece, first, end, air, builder);
        }
    }

    private void remember(WrittenRows piece, int row, ColumnCells column) {
        if (!piece.column(column.place()).isPresent(row)) {
            return;
        }
        Optional<String> word = piece.word(row, column.place());
        if (column.role() == Role.LABEL) {
            label = word.equals(label) ? label : word;
        } else {
            fuel = word.equals(fuel) ? fuel : word;
        }
    }

    /** What the barometers show in each row; the last one counts, and where none shows anything what was shown before. */
    private double[] airPressures(WrittenRows piece, int first, int end, int at) {
        double[] air = new double[end - first];
        for (int row = first; row < end; row++) {
            for (ColumnCells barometer : barometers) {
                if (barometer.see(piece, row)) {
                    airPressure = barometer.value();
                    builder.set(at + row - first, barometer.channelIndex(), airPressure);
                }
            }
            air[row - first] = airPressure;
        }
        return air;
    }

    /** Counts the marks between thousands of a piece of which no more rows are added. */
    public void ended(WrittenRows piece) {
        groupedCells += piece.groupedCells();
    }

    /** How many more rows go into a block. */
    public int room() {
        return Block.MOST_ROWS - builder.rows();
    }

    /** Whether the rows gathered fill a block. */
    public boolean isFull() {
        return room() <= 0;
    }

    /** The rows gathered since the last call; empty when there are none. */
    public Optional<Block> take() {
        if (builder.rows() == 0) {
            return Optional.empty();
        }
        return Optional.of(new Block(builder.take()));
    }

    public BlockReader.RowCount rowCount() {
        return new BlockReader.RowCount(good, broken.count());
    }

    /** What was found on rows so far. */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        timeLine.ifPresent(times -> findings.addAll(times.findings(name)));
        if (!broken.isEmpty()) {
            findings.add(
                    Finding.warning(FindingCode.ROWS_BROKEN, Place.atLine(name, broken.firstLine()), broken.details()));
        }
        if (groupedCells > 0) {
            findings.add(Finding.note(
                    FindingCode.NUMBERS_WITH_THOUSANDS_MARKS, Place.inFile(name), Detail.of("count", (double)
                            groupedCells)));
        }
        Stream.of(times, barometers, cells)
                .flatMap(List::stream)
                .sorted(Comparator.comparingInt(ColumnCells::place))
                .forEach(column -> column.finding(name).ifPresent(findings::add));
        return findings;
    }
}
