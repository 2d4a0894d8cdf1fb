package org.nextpull.intake.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.nextpull.channel.LogHints;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.ByteSource;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.SourceFinder;

/**
 * Reads whatever files a user names: logs and tables of results, plain, gzipped or zipped, each told by its content. A file that cannot
 * be used is a finding and does not spoil the others.
 *
 * <p>Immutable; one serves any number of files.
 */
public final class LogFiles {
    private final ColumnReader columns = new ColumnReader();
    private final LogHints hints;

    public LogFiles(LogHints hints) {
        this.hints = hints;
    }

    /**
     * Reads the files behind names.
     *
     * @param arguments files, folders and globs
     * @return the usable ones in a stable order, and findings on the others
     */
    public Inputs read(List<String> arguments) {
        SourceFinder.Found found = SourceFinder.find(arguments);
        List<Input> good = new ArrayList<>();
        List<Finding> findings = new ArrayList<>(found.findings());
        for (ByteSource source : found.sources()) {
            Outcome<Input> outcome = read(source);
            outcome.value().ifPresent(good::add);
            findings.addAll(outcome.findings());
        }
        return new Inputs(good, findings, found.files());
    }

    /**
     * Reads one source.
     *
     * @param source its bytes
     * @return the input, or why there is none; findings on the rows of a usable log are those of its reader
     */
    public Outcome<Input> read(ByteSource source) {
        try {
            return FirstPart.of(source).then(part -> new Understanding(source, part, columns, hints).input());
        } catch (ByteSource.OverpackedException bomb) {
            return Outcome.failed(Finding.error(
                    FindingCode.FILE_OVERPACKED,
                    Place.inFile(source.name()),
                    Detail.of("rows", 0.0),
                    Detail.of("times", ByteSource.OverpackedException.MOST_TIMES)));
        } catch (IOException | UncheckedIOException e) {
            return Outcome.failed(Finding.error(FindingCode.FILE_UNREADABLE, Place.inFile(source.name())));
        }
    }
}
