package org.nextpull.intake.csv;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.ByteSource;
import org.nextpull.intake.LineNumbers;
import org.nextpull.intake.SampleRows;

/**
 * Reads a log block by block: plain rows on the fast lane, all from the first odd line on through the CSV library. A source that breaks off
 * in the middle gives the rows before the break, and a finding.
 */
final class CsvBlockReader implements BlockReader {
    private final CsvLog log;
    private final SampleRows rows;
    private final boolean firstIsText;
    private final PlainRows plain;
    private Optional<Library> library = Optional.empty();
    private boolean ended;
    private Optional<? extends Throwable> brokenBy = Optional.empty();

    /** The CSV library at work. */
    private record Library(TidyReader text, RowHandler handler, CloseableIterator<Boolean> records) {}

    CsvBlockReader(CsvLog log) throws IOException {
        this.log = log;
        this.rows = new SampleRows(log.name(), log.columns(), log.head().style(), log.sampleHz());
        this.firstIsText = log.columns().mapped().stream()
                .anyMatch(
                        column -> column.index() == 0 && column.channel().role().isText());
        InputStream bytes = log.source().open();
        try {
            bytes.skipNBytes(log.encoding().markBytes());
        } catch (IOException e) {
            bytes.close();
            throw e;
        }
        this.plain = new PlainRows(bytes, log.head(), rows, firstIsText);
        if (!log.encoding().holdsAscii()) {
            withoutFastLane();
        }
    }

    /** The same through the CSV library alone. */
    CsvBlockReader withoutFastLane() {
        library = Optional.of(library());
        return this;
    }

    private Library library() {
        TidyReader rest = new TidyReader(
                log.encoding().readerBehindMark(plain.rest()), log.head().separator(), plain.lines());
        RowHandler handler = new RowHandler(log.head(), rows, log.columnReader(), firstIsText, plain.lines());
        return new Library(rest, handler, CsvText.stream(rest, log.head().separator(), handler));
    }

    @Override
    public SourceDescription description() {
        return log.description();
    }

    @Override
    public Optional<Block> next() {
        try {
            while (!ended && !rows.isFull()) {
                ended = library.isPresent() ? isLast(library.get().records()) : !plain.next();
                if (ended && library.isEmpty()) {
                    brokenBy = plain.failure();
                    library = plain.isOdd() ? Optional.of(library()) : library;
                    ended = !plain.isOdd();
                }
            }
        } catch (UncheckedIOException | CsvParseException e) {
            ended = true;
            brokenBy = Optional.of(e.getCause() instanceof ByteSource.OverpackedException bomb ? bomb : e);
        }
        return rows.take();
    }

    private static boolean isLast(CloseableIterator<Boolean> records) {
        return !records.hasNext() || !records.next();
    }

    @Override
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(log.findings());
        findings.addAll(rows.findings());
        library.ifPresent(used -> {
            addLines(findings, FindingCode.QUOTE_NOT_CLOSED, used.text().unclosedQuotes());
            LineNumbers odd = used.text().oddLines();
            if (!odd.isEmpty()) {
                findings.add(Finding.warning(
                        FindingCode.CONTROL_CHARACTERS, Place.atLine(log.name(), odd.firstLine()), odd.details()));
            }
            LineNumbers tooLong = used.text().tooLong();
            if (!tooLong.isEmpty()) {
                findings.add(Finding.warning(
                        FindingCode.LINE_TOO_LONG,
                        Place.atLine(log.name(), tooLong.firstLine()),
                        Detail.of("most", TidyReader.LONGEST_LINE)));
            }
            addLines(findings, FindingCode.HEADER_REPEATED, used.handler().headersAgain());
            long changed = used.handler().changedLine();
            if (changed > 0) {
                findings.add(Finding.warning(FindingCode.HEADER_CHANGES, Place.atLine(log.name(), changed)));
            }
        });
        brokenBy.ifPresent(why -> findings.add(Finding.warning(
                why instanceof ByteSource.OverpackedException
                        ? FindingCode.FILE_OVERPACKED
                        : FindingCode.FILE_CUT_SHORT,
                Place.inFile(log.name()),
                Detail.of("rows", (double) rowCount().good()),
                Detail.of("times", ByteSource.OverpackedException.MOST_TIMES))));
        if (ended && rowCount().good() == 0) {
            findings.add(Finding.error(FindingCode.FILE_WITHOUT_VALUES, Place.inFile(log.name())));
        }
        return findings;
    }

    private void addLines(List<Finding> findings, FindingCode code, LineNumbers lines) {
        if (!lines.isEmpty()) {
            findings.add(Finding.note(code, Place.atLine(log.name(), lines.firstLine()), lines.details()));
        }
    }

    @Override
    public BlockReader.RowCount rowCount() {
        return rows.rowCount();
    }

    @Override
    public void close() throws IOException {
        plain.close();
    }
}
