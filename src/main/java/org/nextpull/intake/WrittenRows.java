package org.nextpull.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.nextpull.channel.Role;

/**
 * Rows of fields as they are written, which say nothing of the rows before them: pieces of a log can be read at the same time, each into
 * rows of its own, before {@link SampleRows} makes samples of them in order. Not for use by several threads at once.
 *
 * <p>Call {@link #begin}, then {@link #field} or {@link #plainField} for each field, then {@link #end}; without an end the row is dropped.
 */
public final class WrittenRows {
    private static final Set<String> YES = Set.of("yes", "y", "true", "on", "x", "ja", "oui", "si", "s\u00ed", "heard");
    private static final int FIRST_CAPACITY = 64;

    /** What a cell holds. */
    static final byte ABSENT = 0;
    /** A number as written. */
    static final byte NUMBER = 1;
    /** A value in the project's unit: a time of a clock, yes or no. */
    static final byte VALUE = 2;
    /** Text, by its place among the words. */
    static final byte WORD = 3;

    private final List<MappedColumn> columns;
    private final NumberReader numbers;
    /** Which of the columns a field of the row belongs to; negative for one that is not read. */
    private final int[] columnOf;

    private final boolean[] isText;
    private final int width;
    private final List<Optional<String>> words = new ArrayList<>();
    private double[] values;
    private byte[] kinds;
    private long[] lines = new long[FIRST_CAPACITY];
    private boolean[] broken = new boolean[FIRST_CAPACITY];
    private int rows;
    private long linesBefore;
    private long groupedBefore;
    private boolean filled;

    /**
     * Prepares to read rows.
     *
     * @param columns those that are read
     * @param style how numbers are written
     */
    public WrittenRows(List<MappedColumn> columns, NumberStyle style) {
        this.columns = List.copyOf(columns);
        this.numbers = new NumberReader(style);
        this.width = columns.size();
        this.columnOf =
                new int[columns.stream().mapToInt(MappedColumn::index).max().orElse(-1) + 1];
        this.isText = new boolean[width];
        Arrays.fill(columnOf, -1);
        for (int column = 0; column < width; column++) {
            columnOf[columns.get(column).index()] = column;
            isText[column] = columns.get(column).channel().role().isText();
        }
        this.values = new double[width * FIRST_CAPACITY];
        this.kinds = new byte[width * FIRST_CAPACITY];
    }

    /** Starts a row at a line of the source. */
    public void begin(long line) {
        if (rows == lines.length) {
            lines = Arrays.copyOf(lines, 2 * rows);
            broken = Arrays.copyOf(broken, 2 * rows);
            values = Arrays.copyOf(values, 2 * rows * width);
            kinds = Arrays.copyOf(kinds, 2 * rows * width);
        }
        lines[rows] = line;
        broken[rows] = false;
        filled = false;
        Arrays.fill(kinds, rows * width, (rows + 1) * width, ABSENT);
    }

    /** Takes the field of a column, from 0. */
    public void field(int index, char[] buffer, int offset, int length) {
        int column = column(index);
        if (column < 0 || broken[rows]) {
            return;
        }
        NumberReader.Kind kind = isText[column] ? NumberReader.Kind.TEXT : numbers.read(buffer, offset, length);
        if (kind == NumberReader.Kind.NUMBER) {
            put(column, NUMBER, numbers.value());
        } else {
            other(column, new String(buffer, offset, length), kind);
        }
    }

    /** Takes the field of a column, from 0. */
    public void field(int index, String text) {
        field(index, text.toCharArray(), 0, text.length());
    }

    /**
     * Takes the field of a column if it is empty or a plain number, which most are.
     *
     * @param start where the field begins
     * @param end where reading stops at the latest
     * @return where the field ends; -1 where it has to be found and given to {@link #field}
     */
    public int plainField(int index, byte[] buffer, int start, int end, byte separator) {
        int column = column(index);
        if (column < 0 || isText[column]) {
            return -1;
        }
        byte first = buffer[start];
        if (first == separator || first == '\n' || first == '\r') {
            return start;
        }
        int after = numbers.plain(buffer, start, end, separator);
        if (after >= 0) {
            put(column, NUMBER, numbers.value());
        }
        return after;
    }

    /** Whether a column is read. */
    public boolean isRead(int index) {
        return column(index) >= 0;
    }

    private int column(int index) {
        return index < columnOf.length ? columnOf[index] : -1;
    }

    private void put(int column, byte kind, double value) {
        kinds[rows * width + column] = kind;
        values[rows * width + column] = value;
        filled |= kind != WORD;
    }

    /** A cell that is no number: absent, a word, a time of a clock, or yes and no; anything else breaks the row. */
    private void other(int column, String text, NumberReader.Kind kind) {
        Role role = columns.get(column).channel().role();
        boolean isYesNo = role == Role.KNOCK_EVENTS || role == Role.KNOCK_LEVEL || role == Role.USED;
        if (isText[column]) {
            put(column, WORD, words.size());
            words.add(Optional.of(text.strip()).filter(word -> !word.isEmpty()));
        } else if (isYesNo && ProbeColumn.isYesNo(text)) {
            put(column, VALUE, YES.contains(text.strip().toLowerCase(Locale.ROOT)) ? 1 : 0);
        } else if (kind == NumberReader.Kind.TEXT) {
            OptionalDouble seconds = role == Role.TIME ? TimeText.seconds(text) : OptionalDouble.empty();
            seconds.ifPresent(time -> put(column, VALUE, time));
            broken[rows] = seconds.isEmpty();
        }
    }

    /** Marks the row as broken, whatever its fields hold. */
    public void reject() {
        broken[rows] = true;
    }

    /** Ends the row. A row without any number is passed over. */
    public void end() {
        if (broken[rows] || filled) {
            rows++;
        }
    }

    /** Says on which line the piece begins: lines are counted from 1 in it, and behind so many. */
    public void follow(long lines) {
        linesBefore = lines;
    }

    /** Rows that have ended. */
    public int rows() {
        return rows;
    }

    /** Starts again without rows. */
    public void clear() {
        rows = 0;
        groupedBefore = numbers.groupedCells();
        words.clear();
    }

    /** Cells that had marks between thousands. */
    long groupedCells() {
        return numbers.groupedCells() - groupedBefore;
    }

    long line(int row) {
        return linesBefore + lines[row];
    }

    /** Whether it cannot be used. */
    boolean isBroken(int row) {
        return broken[row];
    }

    /** What a cell holds, by the place of its column among those that are read. */
    byte kind(int row, int column) {
        return kinds[row * width + column];
    }

    /** The number or value of a cell that holds one. */
    double value(int row, int column) {
        return values[row * width + column];
    }

    /** The text of a cell that holds one; empty where it is blank. */
    Optional<String> word(int row, int column) {
        return words.get((int) values[row * width + column]);
    }
}
