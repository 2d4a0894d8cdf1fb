package org.nextpull.intake.csv;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.CsvRecordHandler;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;

/** The one place where the CSV library is set up. */
final class CsvText {
    /** A line is cut at a million characters before it gets here; a quoted field spans a few lines at most. */
    private static final int MOST_RECORD_CHARS = 1 << 23;

    private static final char QUOTE = '"';

    private CsvText() {}

    /** Lines of a short text whose quotes do not go with a separator. */
    static long strayQuotes(String text, Separator separator) {
        if (text.indexOf(QUOTE) < 0) {
            return 0;
        }
        TidyReader tidy = new TidyReader(new StringReader(text), separator);
        try {
            tidy.transferTo(Writer.nullWriter());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return tidy.unclosedQuotes().count();
    }

    /**
     * Reads all rows of a short text; blank lines are left out. Its length alone bounds the fields of a row.
     */
    static List<TextRow> rows(String text, Separator separator) {
        List<TextRow> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = builder(separator)
                .build(
                        CsvRecordHandler.of(rules -> rules.maxFields(text.length() + 1)),
                        new TidyReader(new StringReader(text), separator))) {
            reader.forEach(row -> rows.add(new TextRow(row.getStartingLineNumber(), row.getFields())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    /** Reads a text of any length through a handler, one step a row. */
    static <T> CloseableIterator<T> stream(Reader text, Separator separator, CsvCallbackHandler<T> handler) {
        return builder(separator).build(handler, text).iterator();
    }

    private static CsvReader.CsvReaderBuilder builder(Separator separator) {
        return CsvReader.builder()
                .fieldSeparator(separator.sign())
                .quoteCharacter(QUOTE)
                .commentStrategy(CommentStrategy.NONE)
                .skipEmptyLines(true)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .maxBufferSize(MOST_RECORD_CHARS);
    }
}
