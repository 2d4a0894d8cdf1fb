package org.nextpull.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Block;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.RowCount;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/**
 * Gathers rows of fields, from whatever source, into samples in the project's units. A row with a cell that is neither a number nor
 * absent, or whose time cannot be used, is broken: it is left out, counted and remembered by its line. Not for use by several threads.
 *
 * <p>Call {@link #begin}, then {@link #field} for each field, then {@link #end}; take the samples with {@link #take} when
 * {@link #isFull} or at the end.
 */
public final class SampleRows {
    private static final double STANDARD_AIR_PA = 101_325;

    private final String name;
    private final NumberReader numbers;
    private final List<Channel> channels;
    private final RowCell[] cells;
    /** Those of the cells that are read. */
    private final RowCell[] read;

    private final Optional<TimeLine> timeLine;
    private final OptionalDouble rate;
    private final LineList broken = new LineList();
    private final Samples.Builder builder;
    private Optional<String> label = Optional.empty();
    private Optional<String> fuel = Optional.empty();
    private double airPressure = STANDARD_AIR_PA;
    private long line;
    private boolean bad;
    private long rowsSeen;
    private long good;

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
        this.numbers = new NumberReader(style);
        boolean hasTime = columns.has(Role.TIME);
        this.rate = hasTime ? OptionalDouble.empty() : sampleHz;
        this.channels = new ArrayList<>(columns.numericChannels());
        if (rate.isPresent()) {
            channels.add(Channel.of(Role.TIME));
        }
        this.cells = cells(columns.mapped());
        this.read = Arrays.stream(cells).filter(Objects::nonNull).toArray(RowCell[]::new);
        this.timeLine = hasTime
                ? Optional.of(new TimeLine(columns.mapped().stream()
                        .anyMatch(column -> column.channel().role() == Role.TIME
                                && column.unit().isEmpty())))
                : Optional.empty();
        this.builder = Samples.builder(channels);
    }

    private RowCell[] cells(List<MappedColumn> columns) {
        int width = columns.stream().mapToInt(MappedColumn::index).max().orElse(-1) + 1;
        RowCell[] byIndex = new RowCell[width];
        for (MappedColumn column : columns) {
            byIndex[column.index()] = new RowCell(column, channels.indexOf(column.channel()));
        }
        return byIndex;
    }

    /** Starts a row at a line of the source. */
    public void begin(long newLine) {
        line = newLine;
        bad = false;
        for (RowCell cell : read) {
            cell.clear();
        }
    }

    /** Takes the field of a column, from 0. */
    public void field(int index, char[] buffer, int offset, int length) {
        if (index >= cells.length || bad) {
            return;
        }
        RowCell cell = cells[index];
        if (cell == null) {
            return;
        }
        if (cell.isText()) {
            cell.word(buffer, offset, length);
            return;
        }
        NumberReader.Kind kind = numbers.read(buffer, offset, length);
        if (kind == NumberReader.Kind.NUMBER) {
            cell.number(numbers.value());
        } else if (!cell.other(new String(buffer, offset, length), kind)) {
            bad = true;
        }
    }

    /**
     * Takes the field of a column if it is a plain number, which most are.
     *
     * @param start where the field begins
     * @param end where reading stops at the latest
     * @return where the field ends; -1 where it has to be found and given to {@link #field}
     */
    public int plainField(int index, char[] buffer, int start, int end, char separator) {
        RowCell cell = index < cells.length ? cells[index] : null;
        if (cell == null || cell.isText()) {
            return -1;
        }
        int after = numbers.plain(buffer, start, end, separator);
        if (after >= 0) {
            cell.number(numbers.value());
        }
        return after;
    }

    /** Marks the row as broken, whatever its fields hold. */
    public void reject() {
        bad = true;
    }

    /** Ends the row. A row without any number is passed over. */
    public void end() {
        boolean anything = false;
        for (RowCell cell : read) {
            anything |= cell.isFilled();
        }
        if (!bad && !anything) {
            return;
        }
        rowsSeen++;
        if (bad || !timeIsUsable()) {
            broken.add(line);
        } else {
            keep();
        }
    }

    private void keep() {
        for (RowCell cell : read) {
            cell.settle(line);
            if (cell.isText()) {
                remember(cell);
            } else if (cell.role() == Role.BAROMETER && cell.isPresent()) {
                airPressure = cell.value();
            }
        }
        builder.row(line, label, fuel);
        for (RowCell cell : read) {
            if (cell.isPresent() && !cell.isText()) {
                double above = cell.column().reading() == MappedColumn.Reading.ABOVE_AIR ? airPressure : 0;
                builder.set(cell.channelIndex(), cell.role() == Role.TIME ? time() : cell.value() + above);
            }
        }
        if (rate.isPresent()) {
            builder.set(channels.size() - 1, (rowsSeen - 1) / rate.getAsDouble());
        }
        good++;
    }

    private void remember(RowCell cell) {
        if (cell.role() == Role.LABEL) {
            label = cell.word();
        } else {
            fuel = cell.word();
        }
    }

    private boolean timeIsUsable() {
        if (timeLine.isEmpty()) {
            return true;
        }
        for (RowCell cell : read) {
            if (cell.role() == Role.TIME) {
                cell.settle(line);
                return cell.isPresent() && timeLine.get().accept(cell.value(), line);
            }
        }
        return true;
    }

    private double time() {
        return timeLine.orElseThrow().seconds();
    }

    /** Whether the rows gathered fill a block. */
    public boolean isFull() {
        return builder.rows() >= Block.MOST_ROWS;
    }

    /** The rows gathered since the last call; empty when there are none. */
    public Optional<Block> take() {
        if (builder.rows() == 0) {
            return Optional.empty();
        }
        return Optional.of(new Block(builder.take()));
    }

    public RowCount rowCount() {
        return new RowCount(good, broken.count());
    }

    /** What was found on rows so far. */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        timeLine.ifPresent(times -> findings.addAll(times.findings(name)));
        if (!broken.isEmpty()) {
            findings.add(
                    Finding.warning(FindingCode.ROWS_BROKEN, Place.atLine(name, broken.firstLine()), broken.details()));
        }
        if (numbers.groupedCells() > 0) {
            findings.add(Finding.note(
                    FindingCode.NUMBERS_WITH_THOUSANDS_MARKS, Place.inFile(name), Detail.of("count", (double)
                            numbers.groupedCells())));
        }
        for (RowCell cell : read) {
            cell.finding(name).ifPresent(findings::add);
        }
        return findings;
    }
}
