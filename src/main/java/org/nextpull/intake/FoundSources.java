package org.nextpull.intake;

import java.nio.file.Path;
import java.util.List;
import org.nextpull.finding.Finding;

/**
 * Byte sources found from the names that a user gave.
 *
 * @param sources in a stable order: that of the arguments, and natural order within a folder, a glob or a zip
 * @param findings names that led nowhere, and files that were passed over
 * @param files the files that the sources are read from
 */
public record FoundSources(List<ByteSource> sources, List<Finding> findings, List<Path> files) {
    public FoundSources {
        sources = List.copyOf(sources);
        findings = List.copyOf(findings);
        files = List.copyOf(files);
    }
}
