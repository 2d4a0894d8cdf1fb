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
import org.nextpull.channel.RowCount;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.LineList;
import org.nextpull.intake.SampleRows;

/** Reads a log block by block. A source that breaks off in the middle gives the rows before the break, and a finding. */
final class CsvBlockReader implements BlockReader {
    private final CsvLog log;
    private final SampleRows rows;
    private final RowHandler handler;
    private final TidyReader text;
    private final CloseableIterator<Boolean> records;
    private boolean ended;
    private boolean cutShort;

    CsvBlockReader(CsvLog log) throws IOException {
        this.log = log;
        this.rows = new SampleRows(log.name(), log.columns(), log.head().style(), log.sampleHz());
        boolean firstIsText = log.columns().mapped().stream()
                .anyMatch(
                        column -> column.index() == 0 && column.channel().role().isText());
        this.handler = new RowHandler(log.head(), rows, log.columnReader(), firstIsText);
        InputStream bytes = log.source().open();
        try {
            this.text = new TidyReader(log.encoding().reader(bytes), log.head().separator());
        } catch (IOException e) {
            bytes.close();
            throw e;
        }
        this.records = CsvText.stream(text, log.head().separator(), handler);
    }

    @Override
    public SourceDescription description() {
        return log.description();
    }

    @Override
    public Optional<Block> next() {
        try {
            while (!ended && !rows.isFull()) {
                ended = !records.hasNext() || !records.next();
            }
        } catch (UncheckedIOException | CsvParseException e) {
            ended = true;
            cutShort = true;
        }
        return rows.take();
    }

    @Override
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(log.findings());
        findings.addAll(rows.findings());
        addLines(findings, FindingCode.QUOTE_NOT_CLOSED, text.unclosedQuotes());
        addLines(findings, FindingCode.HEADER_REPEATED, handler.headersAgain());
        if (handler.changedLine() > 0) {
            findings.add(Finding.warning(FindingCode.HEADER_CHANGES, Place.atLine(log.name(), handler.changedLine())));
        }
        if (cutShort) {
            findings.add(
                    Finding.warning(FindingCode.FILE_CUT_SHORT, Place.inFile(log.name()), Detail.of("rows", (double)
                            rowCount().good())));
        }
        if (ended && rowCount().good() == 0) {
            findings.add(Finding.error(FindingCode.FILE_WITHOUT_VALUES, Place.inFile(log.name())));
        }
        return findings;
    }

    private void addLines(List<Finding> findings, FindingCode code, LineList lines) {
        if (!lines.isEmpty()) {
            findings.add(Finding.note(code, Place.atLine(log.name(), lines.firstLine()), lines.details()));
        }
    }

    @Override
    public RowCount rowCount() {
        return rows.rowCount();
    }

    @Override
    public void close() throws IOException {
        records.close();
        text.close();
    }
}
