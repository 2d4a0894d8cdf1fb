package org.nextpull.intake;

import java.nio.CharBuffer;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/** One column's cell of the present row, reused from row to row. Not for use by several threads. */
final class RowCell {
    private static final Set<String> YES = Set.of("yes", "y", "true", "on", "x", "ja", "oui", "si", "s\u00ed", "heard");

    private final MappedColumn column;
    private final Role role;
    private final ValueRange possible;
    private final int channelIndex;
    private final LineList impossible = new LineList();
    private boolean written;
    private boolean present;
    private double value;
    private OptionalDouble total = OptionalDouble.empty();
    private Optional<String> word = Optional.empty();

    /**
     * Prepares a cell.
     *
     * @param column its column
     * @param channelIndex place of its channel among the numeric ones; negative for words
     */
    RowCell(MappedColumn column, int channelIndex) {
        this.column = column;
        this.role = column.channel().role();
        this.possible = column.possible();
        this.channelIndex = channelIndex;
    }

    MappedColumn column() {
        return column;
    }

    Role role() {
        return role;
    }

    int channelIndex() {
        return channelIndex;
    }

    boolean isText() {
        return channelIndex < 0;
    }

    /** Whether the cell holds anything, possible or not. */
    boolean isFilled() {
        return written || present;
    }

    /** Whether it holds a value; known once {@link #settle} was called. */
    boolean isPresent() {
        return present;
    }

    /** The number in the project's unit; only where it is present. */
    double value() {
        return value;
    }

    Optional<String> word() {
        return word;
    }

    void clear() {
        written = false;
        present = false;
    }

    void word(char[] buffer, int offset, int length) {
        if (word.isEmpty() || !word.get().contentEquals(CharBuffer.wrap(buffer, offset, length))) {
            word = Optional.of(new String(buffer, offset, length).strip()).filter(text -> !text.isEmpty());
        }
    }

    /** Takes a number as written. Nothing comes of it before {@link #settle}, so that a row may be broken off and read again. */
    void number(double number) {
        value = number;
        written = true;
    }

    /** Makes a value of the number of a good row; one that no engine can have leaves the cell absent. */
    void settle(long line) {
        if (!written) {
            return;
        }
        written = false;
        double si = column.toSi(value);
        if (!possible.holds(si)) {
            impossible.add(line);
            return;
        }
        present = true;
        value = column.reading() == MappedColumn.Reading.RUNNING_TOTAL ? sinceRowBefore(si) : si;
    }

    private double sinceRowBefore(double newTotal) {
        double added = total.isEmpty() ? 0 : newTotal - total.getAsDouble();
        total = OptionalDouble.of(newTotal);
        return added < 0 ? newTotal : added;
    }

    /** Whether a cell that is no number may stand here: absent, a time of a clock, or yes and no. */
    boolean other(String text, NumberReader.Kind kind) {
        if (isYesNoColumn() && ProbeColumn.isYesNo(text)) {
            present = true;
            value = YES.contains(text.strip().toLowerCase(Locale.ROOT)) ? 1 : 0;
            return true;
        }
        if (kind == NumberReader.Kind.ABSENT) {
            return true;
        }
        OptionalDouble seconds = role() == Role.TIME ? TimeText.seconds(text) : OptionalDouble.empty();
        present = seconds.isPresent();
        value = seconds.orElse(0);
        return present;
    }

    private boolean isYesNoColumn() {
        return role() == Role.KNOCK_EVENTS || role() == Role.KNOCK_LEVEL || role() == Role.USED;
    }

    /** The impossible values of the column so far. */
    Optional<Finding> finding(String name) {
        return impossible.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.warning(
                        FindingCode.VALUES_IMPOSSIBLE,
                        Place.atLine(name, impossible.firstLine()).withKey(column.header()),
                        impossible.details(
                                Detail.of("header", column.header()),
                                Detail.of("channel", column.channel().id()))));
    }
}
