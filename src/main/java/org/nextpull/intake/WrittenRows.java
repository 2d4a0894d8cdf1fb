package org.nextpull.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
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
    private static final Set<String> YES =
            Set.of("yes", "y", "true", "on", "x", "ja", "oui", "si", "s\u00ed", "s\u00ec", "heard");
    private static final int FIRST_CAPACITY = 64;
    private static final double[] NOT_READ = {};
    /** So many digits and marks of a cell fit in an int. */
    private static final int MOST_SIGNS = 9;

    private final WrittenColumn[] columns;
    private final NumberReader numbers;
    /** Which of the columns a field of the row belongs to; negative for one that is not read. */
    private final int[] columnOf;

    private final boolean[] isText;
    private final boolean hasText;
    /** The cells of each field's column, as they are written; none for a field that is not read. */
    private final double[][] cells;
    /** Behind the row of the cell that a column has had last. */
    private final int[] filledTo;

    private final List<Optional<String>> words = new ArrayList<>();
    private long[] lines = new long[FIRST_CAPACITY];
    private final BitSet broken = new BitSet();
    private int rows;
    private long groupedBefore;
    private boolean isOpen;
    private boolean filled;

    /**
     * Prepares to read rows.
     *
     * @param columns those that are read
     * @param style how numbers are written
     */
    public WrittenRows(List<MappedColumn> columns, NumberStyle style) {
        this.columns = columns.stream()
                .map(column -> new WrittenColumn(column, FIRST_CAPACITY))
                .toArray(WrittenColumn[]::new);
        this.numbers = new NumberReader(style);
        this.columnOf =
                new int[columns.stream().mapToInt(MappedColumn::index).max().orElse(-1) + 1];
        this.isText = new boolean[columns.size()];
        this.filledTo = new int[columns.size()];
        Arrays.fill(columnOf, -1);
        for (int column = 0; column < isText.length; column++) {
            columnOf[columns.get(column).index()] = column;
            isText[column] = columns.get(column).channel().role().isText();
        }
        this.hasText =
                columns.stream().anyMatch(column -> column.channel().role().isText());
        this.cells = new double[columnOf.length][];
        lookUpCells();
    }

    private void lookUpCells() {
        for (int index = 0; index < cells.length; index++) {
            cells[index] = columnOf[index] < 0 ? NOT_READ : columns[columnOf[index]].written();
        }
    }

    /** Starts a row at a line of the source. */
    public void begin(long line) {
        if (isOpen) {
            drop();
        }
        if (rows == lines.length) {
            grow();
        }
        lines[rows] = line;
        isOpen = true;
        filled = false;
    }

    private void grow() {
        lines = Arrays.copyOf(lines, 2 * rows);
        for (WrittenColumn column : columns) {
            column.grow();
        }
        lookUpCells();
    }

    /**
     * Takes rows one after the other, as long as each cell that is read is empty or a plain number and the others are ASCII without quotes.
     *
     * @param line of the first row
     * @param buffer in which a line feed stands at the end
     * @param start where the first row begins
     * @param end where reading stops
     * @return the start of the first row that was not taken, such as a blank one, or the end
     */
    public int plainRows(long line, byte[] buffer, int start, int end, Shape shape) {
        if (isOpen) {
            drop();
        }
        int at = start;
        long next = line;
        while (at < end && !hasText) {
            if (rows == lines.length) {
                grow();
            }
            int lineEnd = plainRow(buffer, at, shape);
            if (lineEnd < 0) {
                drop();
                return at;
            }
            lines[rows++] = next++;
            at = lineEnd + (buffer[lineEnd] == '\r' && buffer[lineEnd + 1] == '\n' ? 2 : 1);
        }
        return Math.min(at, end);
    }

    /**
     * What rows look like.
     *
     * @param separator what stands between fields
     * @param leastFields fewest fields of a row
     * @param mostFields most fields of a row
     */
    public record Shape(byte separator, int leastFields, int mostFields) {}

    /** Where the line of a row ends that was taken; negative where it is no plain one. */
    private int plainRow(byte[] buffer, int start, Shape shape) {
        byte separator = shape.separator();
        byte decimal = numbers.decimal();
        double[][] written = cells;
        int row = rows;
        boolean number = false;
        int at = start;
        for (int index = 0; index < shape.mostFields(); index++) {
            double[] into = index < written.length ? written[index] : NOT_READ;
            // a few digits, as most cells have, are put together here: to call for them takes as long
            int after = at;
            int digits = 0;
            byte sign = buffer[after];
            for (; sign >= '0' && sign <= '9'; sign = buffer[++after]) {
                digits = digits * 10 + (sign - '0');
            }
            boolean hasDigit = after > at;
            int behindMark = after;
            if (sign == decimal) {
                behindMark++;
                for (sign = buffer[++after]; sign >= '0' && sign <= '9'; sign = buffer[++after]) {
                    digits = digits * 10 + (sign - '0');
                }
            }
            if (!hasDigit || after - at > MOST_SIGNS || !isFieldEnd(sign, separator)) {
                after = other(index, buffer, at, separator);
                number |= into.length > 0 && after > at;
            } else if (into.length > 0) {
                into[row] = numbers.shifted(digits, after - behindMark);
                number = true;
            }
            if (after < 0) {
                return -1;
            }
            if (buffer[after] != separator) {
                for (int missing = index + 1; missing < cells.length; missing++) {
                    absent(missing);
                }
                return number && index + 1 >= shape.leastFields() ? after : -1;
            }
            at = after + 1;
        }
        return -1;
    }

    /** Where a field ends that is no short number, or negative: a first one that is not read must be a number, else it may be a header. */
    private int other(int index, byte[] buffer, int start, byte separator) {
        boolean isRead = index < cells.length && cells[index].length > 0;
        if (!isRead && index > 0) {
            return unread(buffer, start, separator);
        }
        if (isRead && isFieldEnd(buffer[start], separator)) {
            absent(index);
            return start;
        }
        int after = numbers.plain(buffer, start, separator);
        if (isRead && after >= 0) {
            cells[index][rows] = numbers.value();
        }
        return after;
    }

    private void absent(int index) {
        if (columnOf[index] >= 0) {
            columns[columnOf[index]].absent(rows);
        }
    }

    /** Where a field ends that is not read; negative where it has a quote, a control character or a letter beyond ASCII. */
    private static int unread(byte[] buffer, int start, byte separator) {
        int at = start;
        while (!isFieldEnd(buffer[at], separator)) {
            if (buffer[at] == '"' || (buffer[at] < ' ' && buffer[at] != '\t')) {
                return -1;
            }
            at++;
        }
        return at;
    }

    private static boolean isFieldEnd(byte sign, byte separator) {
        return sign == separator || sign == '\n' || sign == '\r';
    }

    /** Forgets what was taken of a row that did not end. */
    private void drop() {
        isOpen = false;
        broken.clear(rows);
        Arrays.fill(filledTo, 0);
        for (WrittenColumn column : columns) {
            column.drop(rows);
        }
    }

    /** Takes the field of a column, from 0. */
    public void field(int index, char[] buffer, int offset, int length) {
        int column = place(index);
        if (column < 0 || broken.get(rows)) {
            return;
        }
        NumberReader.Kind kind = isText[column] ? NumberReader.Kind.TEXT : numbers.read(buffer, offset, length);
        if (kind == NumberReader.Kind.NUMBER) {
            number(column);
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
     * @param buffer as {@link NumberReader#plain} asks for
     * @param start where the field begins
     * @return where the field ends; -1 where it has to be found and given to {@link #field}
     */
    public int plainField(int index, byte[] buffer, int start, byte separator) {
        int column = place(index);
        if (column < 0 || isText[column]) {
            return -1;
        }
        if (isFieldEnd(buffer[start], separator)) {
            return start;
        }
        int after = numbers.plain(buffer, start, separator);
        if (after >= 0) {
            number(column);
        }
        return after;
    }

    /** Whether a column is read. */
    public boolean isRead(int index) {
        return place(index) >= 0;
    }

    private int place(int index) {
        return index < columnOf.length ? columnOf[index] : -1;
    }

    private void number(int column) {
        columns[column].number(rows, numbers.value());
        filledTo[column] = rows + 1;
        filled = true;
    }

    private void settled(int column, double value) {
        columns[column].settled(rows, value);
        filledTo[column] = rows + 1;
    }

    /** A cell that is no number: absent, a word, a time of a clock, or yes and no; anything else breaks the row. */
    private void other(int column, String text, NumberReader.Kind kind) {
        Role role = columns[column].column().channel().role();
        boolean isYesNo = role == Role.KNOCK_EVENTS || role == Role.KNOCK_LEVEL || role == Role.USED;
        if (isText[column]) {
            settled(column, words.size());
            words.add(Optional.of(text.strip()).filter(word -> !word.isEmpty()));
        } else if (isYesNo && ProbeColumn.isYesNo(text)) {
            settled(column, YES.contains(text.strip().toLowerCase(Locale.ROOT)) ? 1 : 0);
            filled = true;
        } else if (kind == NumberReader.Kind.TEXT) {
            OptionalDouble seconds = role == Role.TIME ? TimeText.seconds(text) : OptionalDouble.empty();
            seconds.ifPresent(time -> settled(column, time));
            filled |= seconds.isPresent();
            broken.set(rows, seconds.isEmpty());
        }
    }

    /** Marks the row as broken, whatever its fields hold. */
    public void reject() {
        broken.set(rows);
    }

    /** Ends the row. A row without any number is passed over. */
    public void end() {
        if (!filled && !broken.get(rows)) {
            return;
        }
        isOpen = false;
        for (int column = 0; column < filledTo.length; column++) {
            if (filledTo[column] <= rows) {
                columns[column].absent(rows);
            }
        }
        rows++;
    }

    /** Turns all cells into the project's units, before anybody asks for them. */
    public void settle() {
        for (WrittenColumn column : columns) {
            column.settle(rows);
        }
    }

    /** Says on which line the piece begins: lines are counted from 1 in it, and behind so many. */
    public void follow(long before) {
        for (int row = 0; row < rows; row++) {
            lines[row] += before;
        }
    }

    /** Rows that have ended. */
    public int rows() {
        return rows;
    }

    /** Starts again without rows. */
    public void clear() {
        rows = 0;
        isOpen = false;
        groupedBefore = numbers.groupedCells();
        words.clear();
        broken.clear();
        Arrays.fill(filledTo, 0);
        for (WrittenColumn column : columns) {
            column.clear();
        }
    }

    /** Cells that had marks between thousands. */
    long groupedCells() {
        return numbers.groupedCells() - groupedBefore;
    }

    /** The lines of the rows. */
    long[] lines() {
        return lines;
    }

    /** The first row from there on, at the latest an end, that cannot be used. */
    int nextBroken(int row, int end) {
        return WrittenColumn.next(broken, row, end);
    }

    /** Whether it cannot be used. */
    boolean isBroken(int row) {
        return broken.get(row);
    }

    /** One of the columns, by its place among those that are read. */
    WrittenColumn column(int place) {
        return columns[place];
    }

    /** The text of a cell that holds one; empty where it is blank. */
    Optional<String> word(int row, int column) {
        return words.get((int) columns[column].value(row));
    }
}
