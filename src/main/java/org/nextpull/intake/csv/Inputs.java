package org.nextpull.intake.csv;

import java.nio.file.Path;
import java.util.List;
import org.nextpull.finding.Finding;

/**
 * What was read from the files that a user named.
 *
 * @param good usable sources, in a stable order
 * @param findings files that could not be used, each an error that names the file, and what was said aloud about the choice
 * @param files the files that were opened, of good sources and of others
 */
public record Inputs(List<Input> good, List<Finding> findings, List<Path> files) {
    public Inputs {
        good = List.copyOf(good);
        findings = List.copyOf(findings);
        files = List.copyOf(files);
    }

    /** The logs among them. */
    public List<Input.Log> logs() {
        return good.stream()
                .filter(Input.Log.class::isInstance)
                .map(Input.Log.class::cast)
                .toList();
    }

    /** The tables of results among them. */
    public List<Input.Table> tables() {
        return good.stream()
                .filter(Input.Table.class::isInstance)
                .map(Input.Table.class::cast)
                .toList();
    }

    /** Whether some source that the user named could not be used. */
    public boolean someFailed() {
        return findings.stream().anyMatch(Finding::isError);
    }
}
