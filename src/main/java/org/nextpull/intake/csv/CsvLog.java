package org.nextpull.intake.csv;

import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Recording;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Finding;
import org.nextpull.intake.ByteSource;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.Columns;
import org.nextpull.intake.Encoding;

/**
 * A log in separated text, understood and ready to be read any number of times.
 *
 * @param source its bytes
 * @param encoding its character set
 * @param head its form
 * @param columns its columns
 * @param columnReader knows names of channels
 * @param sampleHz rate of its rows, where it has no time
 * @param findings what was found before its rows are read
 */
record CsvLog(
        ByteSource source,
        Encoding encoding,
        Head head,
        Columns columns,
        ColumnReader columnReader,
        OptionalDouble sampleHz,
        List<Finding> findings)
        implements Recording {
    CsvLog {
        findings = List.copyOf(findings);
    }

    @Override
    public String name() {
        return source.name();
    }

    @Override
    public BlockReader open() throws IOException {
        return new CsvBlockReader(this);
    }

    SourceDescription description() {
        return new SourceDescription(
                name(), encoding.name(), head.separator().shown(), head.style().decimal(), columns.described());
    }
}
