package org.nextpull.intake.wire;

import java.util.BitSet;
import java.util.List;
import java.util.function.Predicate;
import org.nextpull.channel.SourceDescription;
import org.nextpull.intake.NumberReader;
import org.nextpull.intake.NumberStyle;
import org.nextpull.intake.ProbeColumn;

/**
 * Columns with the name of a channel that were left out because the first lines held no numbers there: noise on the wire, or a sensor
 * that says a word until it is warm. Once numbers come in such a column, line after line, it must be understood anew.
 */
final class MissedColumns {
    static final int NUMBERS_UNTIL_FOUND = 30;

    private final NumberReader numbers;
    private final BitSet missed;
    private final int[] inARow;
    private boolean found;

    private MissedColumns(NumberStyle style, BitSet missed) {
        this.numbers = new NumberReader(style);
        this.missed = missed;
        this.inARow = new int[missed.length()];
    }

    static MissedColumns none() {
        return new MissedColumns(NumberStyle.point(), new BitSet());
    }

    /**
     * Those among the columns of a source.
     *
     * @param means whether a header is the name of a channel
     * @param described how each column was understood
     * @param probes what the first lines held, in the same order
     * @param style how the source writes numbers
     */
    static MissedColumns of(
            Predicate<String> means,
            List<SourceDescription.Column> described,
            List<ProbeColumn> probes,
            NumberStyle style) {
        BitSet missed = new BitSet();
        for (int place = 0; place < described.size(); place++) {
            SourceDescription.Column column = described.get(place);
            missed.set(
                    place, column.channel().isEmpty() && !probes.get(place).isNumeric() && means.test(column.header()));
        }
        return new MissedColumns(style, missed);
    }

    /** Looks at a line whose values belong to these columns. */
    void line(LineFields values, int[] places) {
        if (missed.isEmpty()) {
            return;
        }
        for (int field = 0; field < values.count(); field++) {
            int place = places[field];
            if (place < inARow.length && missed.get(place)) {
                boolean isNumber = numbers.read(values.text(), values.start(field), values.length(field))
                        == NumberReader.Kind.NUMBER;
                inARow[place] = isNumber ? inARow[place] + 1 : 0;
                found |= inARow[place] >= NUMBERS_UNTIL_FOUND;
            }
        }
    }

    /** Whether numbers came in one of them. */
    boolean isFound() {
        return found;
    }
}
