package org.nextpull.intake.csv;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import java.util.ArrayList;
import java.util.List;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.LineNumbers;
import org.nextpull.intake.SampleRows;

/** Hands the fields of each row on without making text of them, and sees rows that are no data: the header again, comments. */
final class RowHandler extends AbstractBaseCsvCallbackHandler<Boolean> {
    private final Head head;
    private final SampleRows rows;
    private final ColumnReader columns;
    private final LineNumbers headersAgain = new LineNumbers();
    private final List<String> words = new ArrayList<>();
    private final boolean firstIsText;
    private final long linesBefore;
    private long line;
    private long changedLine;
    private boolean data;
    private boolean likeHeader;
    private boolean likeUnits;
    private boolean comment;
    private int fields;
    private boolean tooWide;

    /**
     * Prepares to take rows.
     *
     * @param firstIsText whether the first column holds words
     * @param linesBefore lines of the source before those that the CSV library counts
     */
    RowHandler(Head head, SampleRows rows, ColumnReader columns, boolean firstIsText, long linesBefore) {
        this.head = head;
        this.rows = rows;
        this.columns = columns;
        this.firstIsText = firstIsText;
        this.linesBefore = linesBefore;
    }

    /** Lines on which the header stands again. */
    LineNumbers headersAgain() {
        return headersAgain;
    }

    /** Line on which another header starts; 0 while there is none. */
    long changedLine() {
        return changedLine;
    }

    @Override
    protected void handleBegin(long countedLine) {
        line = linesBefore + countedLine;
        data = line > head.lastHeadLine();
        likeHeader = true;
        likeUnits = true;
        comment = false;
        tooWide = false;
        fields = 0;
        words.clear();
        if (data) {
            rows.begin(line);
        }
    }

    @Override
    protected void handleField(int index, char[] buffer, int offset, int length, boolean quoted) {
        if (!data) {
            return;
        }
        fields = index + 1;
        likeHeader = likeHeader && equal(head.header().field(index), buffer, offset, length);
        likeUnits = likeUnits && equal(head.units().field(index), buffer, offset, length);
        if (index == 0) {
            comment = length > 0
                    && (buffer[offset] == '#' || (length > 1 && buffer[offset] == '/' && buffer[offset + 1] == '/'));
        }
        if ((index == 0 && !firstIsText && startsWithLetter(buffer, offset, length)) || !words.isEmpty()) {
            words.add(new String(buffer, offset, length));
        }
        if (index >= head.header().fields().size()) {
            tooWide |= !new String(buffer, offset, length).isBlank();
        }
        rows.field(index, buffer, offset, length);
    }

    @Override
    protected Boolean buildRecord() {
        if (!data
                || fields == 0
                || comment
                || (likeUnits && !head.units().fields().isEmpty())
                || changedLine > 0) {
            return Boolean.TRUE;
        }
        if (likeHeader) {
            headersAgain.add(line);
            return Boolean.TRUE;
        }
        if (words.size() >= 2 && isOtherHeader()) {
            changedLine = line;
            return Boolean.FALSE;
        }
        if (tooWide || fields < head.leastFields()) {
            rows.reject();
        }
        rows.end();
        return Boolean.TRUE;
    }

    private boolean isOtherHeader() {
        int known = columns.knownNames(words);
        return known >= 2 && 2 * known >= words.size();
    }

    private static boolean startsWithLetter(char[] buffer, int offset, int length) {
        return length > 0 && Character.isLetter(buffer[offset]);
    }

    private static boolean equal(String wanted, char[] buffer, int offset, int length) {
        if (wanted.length() != length) {
            return false;
        }
        for (int at = 0; at < length; at++) {
            if (wanted.charAt(at) != buffer[offset + at]) {
                return false;
            }
        }
        return true;
    }
}
