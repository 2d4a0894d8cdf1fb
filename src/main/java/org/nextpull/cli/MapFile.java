package org.nextpull.cli;

import java.nio.file.Path;
import java.util.List;
import org.nextpull.advice.Verdict;
import org.nextpull.app.WrittenFiles;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.report.csv.MapCsv;
import org.nextpull.session.SessionResult;

/**
 * Writes the map of an advice.
 *
 * @param name file to write; a dash for standard output
 * @param console where it goes, or where it is said
 */
record MapFile(String name, Console console) {
    private static final String STANDARD_OUTPUT = "-";

    boolean isStandardOutput() {
        return name.equals(STANDARD_OUTPUT);
    }

    /**
     * Writes it, or gives up where the advice is no map.
     *
     * @param read files that the result comes from, which are not written over
     */
    void write(SessionResult result, List<Path> read) {
        String text = result.verdict()
                .map(Verdict::advice)
                .flatMap(MapCsv::of)
                .orElseThrow(() ->
                        new Program.BadInput(List.of(Finding.error(FindingCode.NO_MAP_TO_WRITE, Place.inFile(name)))));
        if (isStandardOutput()) {
            console.out().print(text);
        } else {
            Path file = TextFile.path(name);
            TextFile.require(WrittenFiles.of(file), read);
            TextFile.write(file, text, console);
        }
    }
}
