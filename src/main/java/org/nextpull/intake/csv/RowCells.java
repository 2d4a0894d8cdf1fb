package org.nextpull.intake.csv;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.nextpull.channel.KnockMark;
import org.nextpull.intake.NumberReader;

/** Reads the cells of one row as numbers, words and marks, and remembers the first that could not be read. */
final class RowCells {
    private static final List<String> KNOCK_WORDS = List.of("yes", "knock", "heard", "light", "heavy");

    private static final Set<String> YES =
            Set.of("yes", "y", "true", "x", "1", "ja", "oui", "si", "s\u00ed", "s\u00ec", "heard", "on", "ok");
    private static final Set<String> NO = Set.of("no", "n", "false", "0", "nein", "non", "none", "off");

    /** Events that a pull can hold. */
    private static final double MOST_KNOCK = 1e6;

    private final TextRow row;
    private final NumberReader numbers;
    private OptionalInt broken = OptionalInt.empty();

    RowCells(TextRow row, NumberReader numbers) {
        this.row = row;
        this.numbers = numbers;
    }

    /** Column of the first cell that could not be read. */
    OptionalInt broken() {
        return broken;
    }

    /** Marks a cell as one that cannot be used. */
    void breakAt(int index) {
        if (broken.isEmpty()) {
            broken = OptionalInt.of(index);
        }
    }

    OptionalDouble number(OptionalInt index) {
        if (index.isEmpty()) {
            return OptionalDouble.empty();
        }
        NumberReader.Kind kind = numbers.read(row.field(index.getAsInt()));
        if (kind == NumberReader.Kind.TEXT) {
            breakAt(index.getAsInt());
        }
        return kind == NumberReader.Kind.NUMBER ? OptionalDouble.of(numbers.value()) : OptionalDouble.empty();
    }

    /** A whole number, not negative. */
    OptionalInt whole(OptionalInt index) {
        OptionalDouble number = number(index);
        if (number.isEmpty()) {
            return OptionalInt.empty();
        }
        double value = number.getAsDouble();
        if (value != Math.rint(value) || value < 0 || value > Integer.MAX_VALUE) {
            breakAt(index.orElseThrow());
            return OptionalInt.empty();
        }
        return OptionalInt.of((int) value);
    }

    Optional<String> word(OptionalInt index) {
        return index.isEmpty()
                ? Optional.empty()
                : Optional.of(row.field(index.getAsInt()).strip()).filter(word -> !word.isEmpty());
    }

    /** Yes or no, empty when blank; a number above zero is a yes. */
    Optional<Boolean> yesNo(OptionalInt index) {
        Optional<String> word = word(index).map(text -> text.toLowerCase(Locale.ROOT));
        if (word.isEmpty() || YES.contains(word.get()) || NO.contains(word.get())) {
            return word.map(YES::contains);
        }
        return number(index).stream().mapToObj(value -> value > 0).findFirst();
    }

    private static boolean isCount(OptionalDouble count) {
        return count.orElse(0) >= 0 && count.orElse(0) <= MOST_KNOCK;
    }

    /** A word for knock, with whatever stands behind it, is knock; what is no word for it breaks the row; a count that cannot be tells nothing. */
    KnockMark knock(OptionalInt index) {
        String word = word(index).orElse("").toLowerCase(Locale.ROOT);
        if (KNOCK_WORDS.stream().anyMatch(word::startsWith)) {
            return KnockMark.HEARD;
        }
        boolean isWord = word.isEmpty() || YES.contains(word) || NO.contains(word);
        return yesNo(index)
                .filter(heard -> isWord || isCount(number(index)))
                .map(heard -> heard ? KnockMark.HEARD : KnockMark.NONE)
                .orElse(KnockMark.NOT_MEASURED);
    }
}
